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
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[]
  readonly leastPacks: number
}

/** On the shelf already, left from an earlier batch. */
export interface ShelfItem {
  readonly need: NeedKind
  readonly partId: string
  readonly amount: number
}
