import { breakEvenCrossings } from './break-even'
import type { Crossing, UnitCost } from './price-plan'
import type { WayOfSelling } from './selling'
import type { PricedWay } from './way-price'

export interface Stepped {
  readonly way: Pick<WayOfSelling, 'fixedPerBatchMinor' | 'postageChargedMinor' | 'postageCostMinor'>
  readonly price: Pick<PricedWay, 'priceMinor' | 'feesMinor' | 'postingMinor' | 'toolsMinor'>
  readonly cost: UnitCost
  /** Units of a batch. */
  readonly quantity: number
}

/**
 * Profit of so many units sold when they are made in whole batches: each batch and its fee are paid before its first unit is
 * sold, the tools once.
 *
 * profit = units * taken of one - tools - ceil(units / batch) * (cost of a batch without tool wear + its fee); with none sold the
 * first batch is made. Whole minor units.
 *
 * @source break-even
 */
export function steppedProfit({ way, price, cost, quantity }: Stepped): (units: number) => number {
  const taken = price.priceMinor + way.postageChargedMinor - way.postageCostMinor - price.postingMinor - price.feesMinor
  const batch = cost.batchMinor - cost.batch.toolWearMinor + way.fixedPerBatchMinor
  return (units) => taken * units - price.toolsMinor - Math.max(1, Math.ceil(units / quantity)) * batch
}

/** Every number of units sold, up to 10,000, at which that profit crosses nought. */
export function batchCrossings(stepped: Stepped): readonly Crossing[] {
  const crossings = breakEvenCrossings(steppedProfit(stepped))
  return crossings.ok ? crossings.value : []
}
