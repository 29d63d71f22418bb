import { failed, ok, type Result } from '../outcome'
import { addRatio, divideRatio, multiplyRatio, type Ratio } from '../units'
import { firstProblem, LEAST_POSITIVE, MOST_AMOUNT, outsideExact } from './bounds'
import type { PricingProblem } from './codes'

/**
 * Overhead for each hour of labour, and what a job of some hours carries of it.
 *
 * rate = overhead / labour hours; applied = rate * job hours. Amounts in any one unit of money, 0 to 1e12; labour hours above 0.
 *
 * @source overhead-by-hour
 */
export function overheadRate(of: {
  readonly overhead: Ratio
  readonly labourHours: Ratio
  readonly jobHours: Ratio
}): Result<{ readonly ratePerHour: Ratio; readonly applied: Ratio }, PricingProblem> {
  const problem = firstProblem([
    outsideExact('overhead', of.overhead, 0, MOST_AMOUNT),
    outsideExact('labourHours', of.labourHours, LEAST_POSITIVE, MOST_AMOUNT),
    outsideExact('jobHours', of.jobHours, 0, MOST_AMOUNT)
  ])
  if (problem !== null) return failed(problem)
  const ratePerHour = divideRatio(of.overhead, of.labourHours)
  return ok({ ratePerHour, applied: multiplyRatio(ratePerHour, of.jobHours) })
}

/**
 * Cost of one unit of a job: material and labour of a unit, and the job's overhead spread over its units.
 *
 * cost = material + labour + rate * hours / units. Amounts in any one unit of money; units above 0.
 *
 * @source job-cost
 */
export function jobUnitCost(job: {
  readonly material: Ratio
  readonly labour: Ratio
  readonly overheadRatePerHour: Ratio
  readonly hours: Ratio
  readonly units: Ratio
}): Result<Ratio, PricingProblem> {
  const problem = firstProblem([
    outsideExact('material', job.material, 0, MOST_AMOUNT),
    outsideExact('labour', job.labour, 0, MOST_AMOUNT),
    outsideExact('overheadRatePerHour', job.overheadRatePerHour, 0, MOST_AMOUNT),
    outsideExact('hours', job.hours, 0, MOST_AMOUNT),
    outsideExact('units', job.units, LEAST_POSITIVE, MOST_AMOUNT)
  ])
  if (problem !== null) return failed(problem)
  const overhead = divideRatio(multiplyRatio(job.overheadRatePerHour, job.hours), job.units)
  return ok(addRatio(addRatio(job.material, job.labour), overhead))
}
