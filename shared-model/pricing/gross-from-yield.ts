import { failed, ok, type Result } from '../outcome'
import { divideRatio, type Ratio } from '../units'
import { firstProblem, MOST_AMOUNT, outsideExact } from './bounds'
import type { PricingProblem } from './codes'

/**
 * What must be started for a net amount to come out good: gross = net / yield, yield = 1 - scrap share.
 * Yield 0.01 to 1. Never added on top of a cut list, whose waste is real.
 *
 * @source yield-percent
 */
export function grossFromYield(net: Ratio, yieldShare: Ratio): Result<Ratio, PricingProblem> {
  const problem = firstProblem([
    outsideExact('net', net, 0, MOST_AMOUNT),
    outsideExact('yieldShare', yieldShare, 0.01, 1)
  ])
  return problem === null ? ok(divideRatio(net, yieldShare)) : failed(problem)
}
