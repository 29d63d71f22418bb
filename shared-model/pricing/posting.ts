import { divideRatio, multiplyRatio, ratio, ratioFromDecimal, roundRatio } from '../units'
import type { PricingSetup, WayOfSelling } from './selling'

export interface Posting {
  readonly labourMinor: number
  /** Labour and its overhead. */
  readonly totalMinor: number
}

/**
 * What the time to post one costs: time * hourly rate, and time * overhead rate, each half up to whole minor units. Never learned.
 *
 * @source job-cost
 */
export function postingOf(of: {
  readonly way: Pick<WayOfSelling, 'postPerUnitS'>
  readonly setup: Pick<PricingSetup, 'hourlyRateMinor' | 'overheadPerHourMinor'>
}): Posting {
  const time = divideRatio(ratioFromDecimal(of.way.postPerUnitS ?? 0), ratio(3600))
  const worth = (rate: number): number => roundRatio(multiplyRatio(time, ratioFromDecimal(rate)), 'half-up')
  const labourMinor = worth(of.setup.hourlyRateMinor)
  return { labourMinor, totalMinor: labourMinor + worth(of.setup.overheadPerHourMinor) }
}
