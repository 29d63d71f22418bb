export interface UnitCost {
  readonly materialMinor: number
  readonly labourMinor: number
  readonly toolWearMinor: number
  readonly overheadMinor: number
  readonly scrapMinor: number
  readonly packRestMinor: number
  readonly totalMinor: number
  readonly batchMinor: number
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
  readonly marginShare: number
  readonly markupShare: number
  readonly profitPerHourMinor: number
  readonly breakEvenUnits: number | null
}

export interface LadderStep {
  readonly units: number
  readonly unitCostMinor: number
  readonly priceMinor: number | null
  readonly bars: number
  readonly opensStock: boolean
}

export interface PricePlan {
  readonly currency: string
  readonly digits: number
  readonly cost: UnitCost | null
  readonly ways: readonly WayPrice[]
  /** Filled by a worker, one step at a time; empty in a plain evaluation. */
  readonly ladder: readonly LadderStep[]
  readonly sensitivity: readonly { readonly input: string; readonly changeMinor: number }[]
  readonly parcel: {
    readonly sidesMm: readonly [number, number, number]
    readonly massG: number
    readonly billedG: number
    readonly lengthPlusGirthMm: number
  } | null
}
