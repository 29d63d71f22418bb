import { failed, ok, type Result } from '../outcome'
import { addRatio, compareRatio, divideRatio, type Ratio, ratioToNumber, roundRatio, subtractRatio } from '../units'
import { firstProblem, MOST_AMOUNT, outside, outsideExact } from './bounds'
import type { PricingProblem } from './codes'
import { ZERO } from './percent'
import type { Crossing } from './price-plan'

/**
 * Units to sell before the fixed cost is covered, and before a wanted profit is reached; always rounded up to whole units.
 *
 * units = (fixed + target) / (price - variable). Amounts in any one unit of money, 0 to 1e12.
 * A price that does not exceed the variable cost is the problem `contribution-not-positive`.
 *
 * @source break-even
 */
export function breakEven(of: {
  readonly price: Ratio
  readonly variableCost: Ratio
  readonly fixedCost: Ratio
  readonly targetProfit: Ratio
}): Result<{ readonly units: number; readonly targetUnits: number }, PricingProblem> {
  const fields = ['price', 'variableCost', 'fixedCost', 'targetProfit'] as const
  const problem = firstProblem(fields.map((field) => outsideExact(field, of[field], 0, MOST_AMOUNT)))
  if (problem !== null) return failed(problem)
  const contribution = subtractRatio(of.price, of.variableCost)
  if (compareRatio(contribution, ZERO) <= 0) {
    const figures = { what: 'price', contributionMinor: ratioToNumber(contribution) }
    return failed({ code: 'contribution-not-positive', figures, where: { field: 'price' } })
  }
  const upTo = (amount: Ratio) => divideRatio(amount, contribution)
  const target = upTo(addRatio(of.fixedCost, of.targetProfit))
  const beyond = outsideExact('units', target, 0, Number.MAX_SAFE_INTEGER)
  if (beyond !== null) return failed(beyond)
  return ok({ units: roundRatio(upTo(of.fixedCost), 'up'), targetUnits: roundRatio(target, 'up') })
}

/** Most units that are walked through for stepped costs. */
export const MOST_CROSSING_UNITS = 10_000

/**
 * Every number of units, 1 to `most`, at which the profit crosses zero when costs go up in steps (another bar, another pack,
 * another stall day). With none sold the fixed cost at 0 counts, so the first crossing is never missed.
 *
 * @param profitAt profit of so many units sold in whole minor units
 * @source break-even
 */
export function breakEvenCrossings(
  profitAt: (units: number) => number,
  most: number = MOST_CROSSING_UNITS
): Result<readonly Crossing[], PricingProblem> {
  const problem = outside('most', most, 1, MOST_CROSSING_UNITS)
  if (problem !== null) return failed(problem)
  const crossings: Crossing[] = []
  let before = profitAt(0)
  for (let units = 1; units <= most; units += 1) {
    const now = profitAt(units)
    if (!Number.isFinite(now)) return failed({ code: 'not-finite', figures: { what: 'profit' } })
    if (before < 0 && now >= 0) crossings.push({ units, direction: 'into-profit' })
    if (before >= 0 && now < 0) crossings.push({ units, direction: 'into-loss' })
    before = now
  }
  return ok(crossings)
}

/**
 * Share of the units sold that could stay unsold before break-even: (sold - break-even) / sold; negative below it.
 *
 * @source break-even
 */
export function marginOfSafety(sold: number, breakEvenUnits: number): Result<number, PricingProblem> {
  const problem = firstProblem([
    outside('sold', sold, 1, MOST_AMOUNT),
    outside('breakEvenUnits', breakEvenUnits, 0, Number.MAX_SAFE_INTEGER)
  ])
  return problem === null ? ok((sold - breakEvenUnits) / sold) : failed(problem)
}
