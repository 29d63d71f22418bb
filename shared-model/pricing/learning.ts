import { failed, ok, type Result } from '../outcome'
import { firstProblem, outside } from './bounds'
import type { PricingProblem } from './codes'

/** Most units a learning curve is summed over. */
export const MOST_LEARNED_UNITS = 1_000_000

/**
 * Cumulative average model: each doubling of the units brings the average time of all of them down to `rate` of what it was.
 *
 * average = first * n^b, b = log2(rate); total = n * average. Run time only: set-up, waits and posting are not learned.
 * Rate 0.5 to 1; units 1 to 1 000 000; times in any one unit.
 *
 * @source learning-average
 */
export function learningAverage(
  first: number,
  rate: number,
  units: number
): Result<{ readonly average: number; readonly total: number }, PricingProblem> {
  const problem = badCurve(first, rate, units)
  if (problem !== null) return failed(problem)
  const average = first * units ** Math.log2(rate)
  return ok({ average, total: average * units })
}

/**
 * Unit model: each doubling of the units brings the time of the last one down to `rate` of what it was.
 *
 * last = first * n^b, b = log2(rate); total = the sum of the times of units 1 to n, term by term.
 * Same ranges as the cumulative average model.
 *
 * @source learning-unit
 */
export function learningUnit(
  first: number,
  rate: number,
  unit: number
): Result<{ readonly last: number; readonly total: number }, PricingProblem> {
  const problem = badCurve(first, rate, unit)
  if (problem !== null) return failed(problem)
  const slope = Math.log2(rate)
  let shares = 0
  for (let k = unit; k >= 1; k -= 1) shares += k ** slope
  return ok({ last: first * unit ** slope, total: first * shares })
}

function badCurve(first: number, rate: number, units: number): PricingProblem | null {
  const whole = Number.isInteger(units) ? units : Number.isFinite(units) ? 0 : units
  return firstProblem([
    outside('first', first, 0, 1e12),
    outside('rate', rate, 0.5, 1),
    outside('units', whole, 1, MOST_LEARNED_UNITS)
  ])
}
