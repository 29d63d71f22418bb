import type { BuyingTax } from '../bill'

/** Shares are percent as typed (6.5), turned into exact rationals before any sum. */
export interface WayOfSelling {
  readonly id: string
  readonly name: string
  readonly feePercent: number
  readonly fixedFeeMinor: number
  readonly feeOnTax: boolean
  readonly feeOnPostage: boolean
  readonly postageChargedMinor: number
  readonly postageCostMinor: number
  /** Worked time to post one (its label, the way to the counter), s; left out: none. */
  readonly postPerUnitS?: number
  /** Stall fee and the like: once a batch, not per unit. */
  readonly fixedPerBatchMinor: number
  /** A given price before tax; null: worked out from the margin. */
  readonly givenPriceMinor: number | null
}

export interface PricingSetup {
  readonly hourlyRateMinor: number
  readonly overheadPerHourMinor: number
  readonly marginPercent: number
  readonly taxPercent: number
  readonly taxKind: 'none' | 'sales-tax-on-top' | 'value-added-inside'
  readonly scrapPercent: number
  readonly priceEnding: { readonly everyMinor: number; readonly endsWithMinor: number }
  readonly learning: { readonly model: 'none' | 'cumulative-average' | 'unit'; readonly ratePercent: number }
  readonly chargePackRestTo: 'nobody' | 'batch'
  readonly ways: readonly WayOfSelling[]
  readonly ladder: readonly number[]
  readonly priceAgeDays: number
  /** Tax on what is bought; left out: prices of offers count as they stand. */
  readonly buyingTax?: BuyingTax
  /** Hours worked in a day, for lead times; left out: `USUAL_DAY_H`. */
  readonly workHoursADay?: number
  readonly parcel: ParcelSetup
}

/** Hours of a bench day where the workshop names none. Common practice, no source. */
export const USUAL_DAY_H = 8

export interface ParcelSetup {
  readonly paddingMm: number
  readonly packingMassG: number
  /** null: the carrier sets none. */
  readonly lengthLimitMm: number | null
  readonly lengthPlusGirthLimitMm: number | null
  readonly weightLimitG: number | null
  /** Dimensional weight: volume divided by this; null: not used. */
  readonly divisorMm3PerG: number | null
  readonly dimensionalAboveMm3: number
  readonly sideRoundingMm: number
  /** How sides are rounded to that step, where it is not 0; left out: to the nearest, midpoints up. */
  readonly sideRounding?: 'nearest' | 'up' | 'down'
  readonly weightRoundingG: number
}
