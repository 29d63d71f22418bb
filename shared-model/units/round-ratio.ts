import type { Ratio } from './ratio'

export type Rounding = 'half-up' | 'half-even' | 'up' | 'down'

/**
 * A rational to a whole number (of minor units, of graduations), by a named rule.
 * half-up: nearest, midpoints away from zero; half-even: nearest, midpoints to the even neighbour; up: away from zero; down: towards zero.
 * Throws where the result is too large for an exact integer.
 *
 * @source decimal-arithmetic
 */
export function roundRatio(value: Ratio, rule: Rounding): number {
  const negative = value.num < 0n
  const num = negative ? -value.num : value.num
  const whole = num / value.den
  const rest = num % value.den
  const rounded = Number(steps(whole, rest, value.den, rule) ? whole + 1n : whole)
  if (!Number.isSafeInteger(rounded)) throw new RangeError('rounded amount is beyond exact integers')
  return negative && rounded !== 0 ? -rounded : rounded
}

function steps(whole: bigint, rest: bigint, den: bigint, rule: Rounding): boolean {
  if (rest === 0n || rule === 'down') return false
  if (rule === 'up') return true
  const twice = rest * 2n
  if (twice !== den) return twice > den
  return rule === 'half-up' || whole % 2n === 1n
}
