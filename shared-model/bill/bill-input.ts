import type { CutPlan, StockBar } from '../cutting'
import type { JointMethod } from '../parts'
import type { RingPlan, SheetStock } from '../rings'
import type { NeedKind, PackOffer, ShelfItem } from './offer'

export type BillUnit = 'piece' | 'mm' | 'g' | 'mL'

/** One thing the batch needs, before anything is bought. */
export interface Need {
  readonly id: string
  readonly need: NeedKind
  readonly partId: string
  readonly name: string
  readonly unit: BillUnit
  readonly perUnit: number
  readonly needed: number
}

/** So many of a part, in one channel or one unit. */
export interface CountedPart {
  readonly partId: string
  readonly name: string
  readonly count: number
}

/** One sealed joint of a channel: an end closure or a fitting. */
export interface JointNeed {
  readonly id: string
  readonly method: JointMethod
  /** Net wetted length of the joint: once around, less what is not sealed. */
  readonly wettedMm: number
  /** Outside diameter of the profile; of a rectangle, its outside perimeter divided by pi. */
  readonly outsideMm: number
}

/** What one channel of one unit takes. Parts cut from sheet are not listed here: the ring plan has them. */
export interface ChannelNeeds {
  readonly channelId: string
  readonly closures: readonly CountedPart[]
  readonly cups: readonly CountedPart[]
  /** The cups that are opened into risers: `partId` is the cup's. */
  readonly riserCups: readonly CountedPart[]
  /** Bought ones only. */
  readonly plantCollars: readonly CountedPart[]
  readonly supports: readonly CountedPart[]
  readonly fittings: readonly CountedPart[]
  readonly couplings: readonly CountedPart[]
  readonly joints: readonly JointNeed[]
}

/** What goes into the first fill of one unit, or medium into its cups. */
export interface AmountNeed {
  readonly need: 'feed' | 'medium'
  readonly partId: string
  readonly name: string
  readonly unit: 'g' | 'mL'
  readonly amount: number
}

/** Section of the sealant bead. */
export interface Bead {
  readonly widthMm: number
  readonly depthMm: number
}

/** What the bill reads of one profile's cut plan. */
export type BilledCuts = Pick<CutPlan, 'profileId' | 'bars' | 'uncut' | 'keptWorthMinor'>

/** All that the bill needs of the design, as plain data: plans for the whole batch, channels of one unit. */
export interface BillInput {
  readonly quantity: number
  readonly profiles: readonly { readonly id: string; readonly name: string }[]
  readonly cuts: readonly BilledCuts[]
  readonly rings: RingPlan | null
  readonly channels: readonly ChannelNeeds[]
  readonly amounts: readonly AmountNeed[]
  readonly bead: Bead
  /** Solvent cement is used with a primer. */
  readonly primer: boolean
  readonly labelsPerUnit: number
  /** Boxes, padding and the like for one unit. */
  readonly packing: readonly CountedPart[]
}

/** What the shop offers, and how its prices are read. */
export interface BillShop {
  readonly currency: string
  readonly stock: readonly StockBar[]
  readonly sheets: readonly SheetStock[]
  readonly offers: readonly PackOffer[]
  readonly shelf: readonly ShelfItem[]
  /** ISO date of the plan. */
  readonly on: string
  readonly priceAgeDays: number
  /** Tax on what is bought. Left out: prices count as they stand. */
  readonly buyingTax?: BuyingTax
  /** Stated worth of a kept piece of sheet, in per cent of its share of the sheet's price by area; left out: none. */
  readonly sheetWorthPercent?: number
}

/** Rate of tax on purchases, and whether the maker gets it back. */
export interface BuyingTax {
  readonly percent: number
  readonly reclaimed: boolean
}
