import { failed, ok, type Result } from '../outcome'
import { divideRatio, multiplyRatio, type Ratio, subtractRatio } from '../units'
import { firstProblem, LEAST_POSITIVE, MOST_AMOUNT, outsideExact } from './bounds'
import type { PricingProblem } from './codes'

/**
 * What a hole or a cut wears off a tool: the units-of-production method.
 *
 * per unit = (cost - salvage) / life; charge = per unit * used. Amounts in any one unit of money; salvage not above the cost.
 *
 * @source tool-wear
 */
export function toolWear(tool: {
  readonly cost: Ratio
  readonly salvage: Ratio
  readonly lifeUnits: Ratio
  readonly used: Ratio
}): Result<{ readonly perUnit: Ratio; readonly charge: Ratio }, PricingProblem> {
  const worn = subtractRatio(tool.cost, tool.salvage)
  const problem = firstProblem([
    outsideExact('cost', tool.cost, 0, MOST_AMOUNT),
    outsideExact('salvage', tool.salvage, 0, MOST_AMOUNT),
    outsideExact('cost - salvage', worn, 0, MOST_AMOUNT),
    outsideExact('lifeUnits', tool.lifeUnits, LEAST_POSITIVE, MOST_AMOUNT),
    outsideExact('used', tool.used, 0, MOST_AMOUNT)
  ])
  if (problem !== null) return failed(problem)
  const perUnit = divideRatio(worn, tool.lifeUnits)
  return ok({ perUnit, charge: multiplyRatio(perUnit, tool.used) })
}
