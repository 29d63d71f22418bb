import type { NeedKind } from './offer'

/** What the batch needs of one thing, and how to buy it. Amounts are in `unit`. */
export interface BillLine {
  readonly id: string
  readonly need: NeedKind
  readonly partId: string
  readonly name: string
  readonly unit: 'piece' | 'mm' | 'g' | 'mL'
  readonly perUnit: number
  readonly needed: number
  readonly fromShelf: number
  readonly bought: number
  readonly left: number
  readonly packs: readonly {
    readonly offerId: string
    readonly name: string
    readonly supplier: string
    readonly packs: number
    readonly eachMinor: number
    readonly totalMinor: number
  }[]
  /** null: a price is missing. */
  readonly totalMinor: number | null
  /** What the batch's units carry of it at pack share. */
  readonly usedMinor: number | null
  readonly oldestPriceOn: string | null
}

export interface Bill {
  readonly lines: readonly BillLine[]
  readonly totalMinor: number | null
  readonly usedMinor: number | null
  readonly missing: readonly { readonly need: NeedKind; readonly partId: string; readonly name: string }[]
}
