import { failed, ok, type Result } from '../outcome'
import { addRatio, divideRatio, multiplyRatio, type Ratio, subtractRatio } from '../units'
import { firstProblem, LEAST_POSITIVE, MOST_AMOUNT, outsideExact } from './bounds'
import type { PricingProblem } from './codes'
import { ONE } from './percent'

/**
 * Markup is profit as a share of the cost, margin is profit as a share of the price.
 *
 * markup = (price - cost) / cost; margin = (price - cost) / price. Amounts above 0 in any one unit of money.
 *
 * @source markup-margin
 */
export function markupAndMargin(
  cost: Ratio,
  price: Ratio
): Result<{ readonly markupOnCost: Ratio; readonly marginOnPrice: Ratio }, PricingProblem> {
  const problem = firstProblem([
    outsideExact('cost', cost, LEAST_POSITIVE, MOST_AMOUNT),
    outsideExact('price', price, LEAST_POSITIVE, MOST_AMOUNT)
  ])
  if (problem !== null) return failed(problem)
  const profit = subtractRatio(price, cost)
  return ok({ markupOnCost: divideRatio(profit, cost), marginOnPrice: divideRatio(profit, price) })
}

/**
 * price = cost * (1 + markup). Markup as a share of the cost, 0 to 100.
 *
 * @source markup-price
 */
export function priceFromMarkup(cost: Ratio, markupOnCost: Ratio): Result<Ratio, PricingProblem> {
  const problem = firstProblem([
    outsideExact('cost', cost, 0, MOST_AMOUNT),
    outsideExact('markupOnCost', markupOnCost, 0, MOST_MARKUP)
  ])
  return problem === null ? ok(multiplyRatio(cost, addRatio(ONE, markupOnCost))) : failed(problem)
}

/** A hundredfold: far above any trade's, a slip of the decimal mark below it. */
const MOST_MARKUP = 100

/**
 * The cost that leaves a margin at a given price: cost = price * (1 - margin). Margin as a share of the price, 0 to 1.
 *
 * @source target-cost
 */
export function targetCost(price: Ratio, marginOnPrice: Ratio): Result<Ratio, PricingProblem> {
  const problem = firstProblem([
    outsideExact('price', price, 0, MOST_AMOUNT),
    outsideExact('marginOnPrice', marginOnPrice, 0, 1)
  ])
  return problem === null ? ok(multiplyRatio(price, subtractRatio(ONE, marginOnPrice))) : failed(problem)
}
