import { failed, ok, type Result } from '../outcome'
import { addRatio, divideRatio, multiplyRatio, type Ratio, ratioFromDecimal, roundRatio } from '../units'
import { firstProblem, MOST_AMOUNT, outside, outsideExact } from './bounds'
import type { PricingProblem } from './codes'
import { ONE } from './percent'

/**
 * Tax on top of a net amount: tax = net * rate, half up to a whole minor unit. Rate as a share, 0 to 1.
 *
 * @source sales-tax
 */
export function salesTax(netMinor: number, rate: Ratio): Result<number, PricingProblem> {
  const problem = badAmount('netMinor', netMinor, rate)
  return problem === null ? ok(roundRatio(multiplyRatio(ratioFromDecimal(netMinor), rate), 'half-up')) : failed(problem)
}

/**
 * The net inside a gross amount: net = gross / (1 + rate), half up to a whole minor unit; the tax is the rest of it.
 *
 * @source tax-inside
 */
export function netFromGross(grossMinor: number, rate: Ratio): Result<number, PricingProblem> {
  const problem = badAmount('grossMinor', grossMinor, rate)
  return problem === null
    ? ok(roundRatio(divideRatio(ratioFromDecimal(grossMinor), addRatio(ONE, rate)), 'half-up'))
    : failed(problem)
}

function badAmount(what: string, minor: number, rate: Ratio): PricingProblem | null {
  return firstProblem([outside(what, minor, 0, MOST_AMOUNT), outsideExact('rate', rate, 0, 1)])
}
