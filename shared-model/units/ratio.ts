/** An exact rational in lowest terms; the denominator is positive. Rates are kept so and rounded once, where they become an amount. */
export interface Ratio {
  readonly num: bigint
  readonly den: bigint
}

/** Throws on a zero denominator: a bug, never an entry. */
export function ratio(num: bigint | number, den: bigint | number = 1n): Ratio {
  const n = BigInt(num)
  const d = BigInt(den)
  if (d === 1n) return { num: n, den: d }
  if (d === 0n) throw new RangeError('ratio: zero denominator')
  const divisor = greatestCommonDivisor(n, d) * (d < 0n ? -1n : 1n)
  return { num: n / divisor, den: d / divisor }
}

/** The decimal as it is written (`'0.0825'`, `6.5`, `1e-7`), exactly. Throws where it is not a finite decimal. */
export function ratioFromDecimal(value: number | string): Ratio {
  if (Number.isSafeInteger(value)) return ratio(BigInt(value))
  const match = /^([+-]?)(\d*)(?:\.(\d*))?(?:e([+-]?\d+))?$/i.exec(String(value).trim())
  const whole = match?.[2] ?? ''
  const part = match?.[3] ?? ''
  if (match === null || whole + part === '') throw new RangeError(`ratio: not a decimal: ${value}`)
  const shift = Number(match[4] ?? 0) - part.length
  const digits = BigInt(whole + part) * (match[1] === '-' ? -1n : 1n)
  return shift >= 0 ? ratio(digits * 10n ** BigInt(shift)) : ratio(digits, 10n ** BigInt(-shift))
}

export const addRatio = (a: Ratio, b: Ratio): Ratio => ratio(a.num * b.den + b.num * a.den, a.den * b.den)
export const subtractRatio = (a: Ratio, b: Ratio): Ratio => ratio(a.num * b.den - b.num * a.den, a.den * b.den)
export const multiplyRatio = (a: Ratio, b: Ratio): Ratio => ratio(a.num * b.num, a.den * b.den)
/** Throws where `b` is zero. */
export const divideRatio = (a: Ratio, b: Ratio): Ratio => ratio(a.num * b.den, a.den * b.num)

/** Below zero, zero or above zero as `a` is less than, equal to or more than `b`. */
export function compareRatio(a: Ratio, b: Ratio): number {
  const difference = a.num * b.den - b.num * a.den
  return difference < 0n ? -1 : difference > 0n ? 1 : 0
}

/** The nearest double: for a figure that is shown or goes into geometry, never for an amount of money. */
export function ratioToNumber(value: Ratio): number {
  if (isSafe(value.num) && isSafe(value.den)) return Number(value.num) / Number(value.den)
  const whole = value.num / value.den
  // 20 more decimal digits than a double holds, so that the last rounding is the only one.
  const scale = 10n ** 20n
  const rest = ((value.num - whole * value.den) * scale) / value.den
  return Number(whole) + Number(rest) / Number(scale)
}

const isSafe = (value: bigint): boolean => value <= MOST_SAFE && value >= -MOST_SAFE
const MOST_SAFE = BigInt(Number.MAX_SAFE_INTEGER)

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let x = a < 0n ? -a : a
  let y = b < 0n ? -b : b
  // Division of bigints is slow, and most amounts and rates are exact as doubles after a step or two.
  while (y > MOST_SAFE || (x > MOST_SAFE && y !== 0n)) {
    const rest = x % y
    x = y
    y = rest
  }
  if (x > MOST_SAFE) return x
  return BigInt(safeDivisor(Number(x), Number(y)))
}

function safeDivisor(a: number, b: number): number {
  let x = a
  let y = b
  while (y !== 0) {
    const rest = x % y
    x = y
    y = rest
  }
  return x === 0 ? 1 : x
}
