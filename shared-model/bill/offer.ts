import type { PricedOffer } from '../cutting'

/** What a bill line is about; with the part's id it names one thing to buy. */
export type NeedKind =
  | 'stock'
  | 'sheet'
  | 'closure'
  | 'cup'
  | 'riser-cup'
  | 'plant-collar'
  | 'sealant'
  | 'cement'
  | 'support'
  | 'opening-fitting'
  | 'feed'
  | 'label'
  | 'packing'
  | 'medium'
  | 'coupling'

/** One way to buy a thing: a pack of `packSize` of its unit, cheaper from some number of packs on. */
export interface PackOffer {
  readonly id: string
  readonly need: NeedKind
  /** The part it is an offer for; empty for the shop's own consumables. */
  readonly partId: string
  readonly name: string
  readonly packSize: number
  readonly offer: PricedOffer
  /** From this many packs on, each pack of the order at this price; a seller takes several orders, so a dearer break never binds. */
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[]
  /** Least order in packs; 0 and 1 mean the same. */
  readonly leastPacks: number
  /** ISO 4217; left out: the shop's own. */
  readonly currency?: string
}

/** On the shelf already, left from an earlier batch. */
export interface ShelfItem {
  readonly need: NeedKind
  readonly partId: string
  readonly amount: number
  /** What that amount was bought for; left out: paid for already, worth nothing to this batch. */
  readonly worthMinor?: number
}
