import type { BillUnit } from './bill-input'
import type { NeedKind } from './offer'

/** What was bought as one offer: whole packs, whole bars or whole sheets. */
export interface PackBought {
  readonly offerId: string
  readonly name: string
  readonly supplier: string
  /** Amount in one pack, in the line's unit. */
  readonly packSize: number
  readonly packs: number
  readonly eachMinor: number
  readonly totalMinor: number
  /** ISO date; empty: not known. */
  readonly pricedOn: string
  readonly taxInside: boolean
}

/** What the batch needs of one thing, and how to buy it. Amounts are in `unit`; needed + left = fromShelf + bought. */
export interface BillLine {
  readonly id: string
  readonly need: NeedKind
  readonly partId: string
  readonly name: string
  readonly unit: BillUnit
  readonly perUnit: number
  readonly needed: number
  readonly fromShelf: number
  readonly bought: number
  readonly left: number
  readonly packs: readonly PackBought[]
  /** Paid for this batch. null: a price is missing. */
  readonly totalMinor: number | null
  /** What the batch's units carry of it at pack share. */
  readonly usedMinor: number | null
  /** Worth of what is left over: total + worth from shelf or rack = used + rest, to the minor unit. */
  readonly restMinor: number | null
  readonly fromShelfMinor: number
  readonly oldestPriceOn: string | null
}

export interface Bill {
  readonly currency: string
  readonly quantity: number
  readonly lines: readonly BillLine[]
  /** Sums of the lines; null: a price is missing. */
  readonly totalMinor: number | null
  readonly usedMinor: number | null
  readonly restMinor: number | null
  readonly oldestPriceOn: string | null
  readonly missing: readonly { readonly need: NeedKind; readonly partId: string; readonly name: string }[]
}
