/** Cost of one unit, split over its causes without losing a minor unit: the parts add up to `totalMinor`. */
export interface UnitCost {
  readonly materialMinor: number
  readonly labourMinor: number
  readonly toolWearMinor: number
  readonly overheadMinor: number
  readonly scrapMinor: number
  readonly packRestMinor: number
  readonly totalMinor: number
  readonly batchMinor: number
  /** The same causes for the batch: they add up to `batchMinor`. */
  readonly batch: CostParts
  /** Worked time of the batch, learning counted in; waits are not worked. */
  readonly workedS: number
}

export interface CostParts {
  readonly materialMinor: number
  readonly labourMinor: number
  readonly toolWearMinor: number
  readonly overheadMinor: number
  readonly scrapMinor: number
  readonly packRestMinor: number
}

/** A number of units sold at which the profit crosses nought. */
export interface Crossing {
  readonly units: number
  /** into-profit: this many make no loss and one fewer did; into-loss: the other way round. */
  readonly direction: 'into-profit' | 'into-loss'
}

export interface WayPrice {
  readonly wayId: string
  readonly name: string
  /** Before tax. */
  readonly priceMinor: number
  /** What the buyer sees. */
  readonly shownMinor: number
  readonly taxMinor: number
  readonly feesMinor: number
  /** Labour and overhead of posting one. */
  readonly postingMinor: number
  readonly profitMinor: number
  readonly batchProfitMinor: number
  /** Profit as a share of the price before tax. */
  readonly marginShare: number
  /** Profit as a share of the cost, posting included; null where it costs nothing. */
  readonly markupShare: number | null
  /** Profit of the batch for each hour worked; null where none is. */
  readonly profitPerHourMinor: number | null
  /** Profit and labour for each hour worked: what the maker earns. */
  readonly earningPerHourMinor: number | null
  /** Units that pay for the batch's fee and the tools; null: a unit brings nothing towards them. */
  readonly breakEvenUnits: number | null
  /** Units that pay for the batch's fee alone, tools counted by their wear; null: a unit brings no profit. */
  readonly feeBreakEvenUnits: number | null
  /** Every crossing up to 10,000 units sold, where each batch is made and paid whole before its first unit is sold. */
  readonly crossings: readonly Crossing[]
  /** The batch's fee and the tools: what they cost less what they still bring. */
  readonly fixedMinor: number
  readonly toolsMinor: number
  /** What one unit brings towards the fixed cost: its profit with the tools' wear put back. */
  readonly contributionMinor: number
  /** Share of the batch that may stay unsold before the fixed cost is not covered; negative below break-even. */
  readonly safetyShare: number | null
}

/** What a batch buys of one offer: so many bars, sheets or packs. */
export interface Bought {
  readonly offerId: string
  readonly kind: 'bar' | 'pack'
  readonly name: string
  /** A bar's length in mm, else the amount of one pack. */
  readonly size: number
  readonly count: number
}

export interface LadderStep {
  readonly units: number
  /** null: a price is missing. */
  readonly unitCostMinor: number | null
  readonly priceMinor: number | null
  readonly bars: number
  readonly packs: number
  readonly toolChanges: number
  readonly workedS: number
  /** What was bought for it, by offer. */
  readonly bought: readonly Bought[]
  /** Offers of which it buys more than the step before; `count`: how many more. */
  readonly opens: readonly Bought[]
  /** Whether a bar, and whether a pack or sheet, is among them. */
  readonly opensStock: boolean
  readonly opensPack: boolean
}

export type SensitivityInput =
  | 'price'
  | 'material'
  | 'hourly-rate'
  | 'overhead-rate'
  | 'work-time'
  | 'fee-share'
  | 'fixed-fee'
  | 'postage-cost'
  | 'postage-charged'
  | 'scrap-share'
  | 'tax-share'
  | 'batch-fee'

/** What one unit more of an input does to the batch's profit, everything else held, the price the buyer sees included. */
export interface Sensitivity {
  readonly input: SensitivityInput
  /** The unit it was raised by: one of the currency's units, a percentage point, a minute for each unit made. */
  readonly by: 'currency-unit' | 'percentage-point' | 'minute'
  readonly changeMinor: number
}

export interface ParcelSize {
  readonly sidesMm: readonly [number, number, number]
  readonly massG: number
  readonly billedG: number
  readonly lengthPlusGirthMm: number
}

export interface PricePlan {
  readonly currency: string
  readonly digits: number
  readonly cost: UnitCost | null
  readonly ways: readonly WayPrice[]
  /** Filled by a worker, one step at a time; empty in a plain evaluation. */
  readonly ladder: readonly LadderStep[]
  /** For the first way of selling that has a price, largest change first. */
  readonly sensitivity: readonly Sensitivity[]
  readonly parcel: ParcelSize | null
}
