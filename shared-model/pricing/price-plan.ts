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

export interface WayPrice {
  readonly wayId: string
  readonly name: string
  /** Before tax. */
  readonly priceMinor: number
  /** What the buyer sees. */
  readonly shownMinor: number
  readonly taxMinor: number
  readonly feesMinor: number
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
  /** null: a unit brings nothing towards the fixed cost. */
  readonly breakEvenUnits: number | null
  /** Tools and the batch's fee. */
  readonly fixedMinor: number
  readonly contributionMinor: number
  /** Share of the batch that may stay unsold before the fixed cost is not covered; negative below break-even. */
  readonly safetyShare: number | null
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
  /** More bars, more packs than the step before. */
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
