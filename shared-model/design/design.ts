import type { Crop } from '../crops'
import type { AtBench } from '../cutting'
import type { Channel, Sill } from '../layout'
import type { Collar, Cup, EndClosure, HoleSaw, PlantCollar, Riser } from '../parts'
import type { Profile } from '../profile'
import type { WaterPlan } from '../reservoir'
import type { Seat } from '../seating'

export const DESIGN_SCHEMA = 1

/** What to build. It carries its own copy of every part it uses, so a design file opens anywhere. */
export interface Design {
  readonly schema: typeof DESIGN_SCHEMA
  readonly id: string
  readonly title: string
  /** Document number and revision for the title block (ISO 7200). */
  readonly number: string
  readonly revision: string
  readonly maker: string
  readonly remarks: string
  readonly sill: Sill
  readonly place: Place
  readonly channels: readonly Channel[]
  readonly seats: readonly Seat[]
  readonly parts: PartsUsed
  readonly crops: readonly Crop[]
  readonly water: WaterPlan
  /** Share of full growth at which canopies are drawn; loads count full growth. */
  readonly growthShare: number
  /** How many of this build to make. */
  readonly quantity: number
  readonly dimensions: readonly PinnedDimension[]
  readonly notes: readonly PinnedNote[]
  /** Pieces pinned to bars, and what is cut, drilled or spoiled already; left out: nothing yet. */
  readonly atBench?: AtBench
}

export interface PartsUsed {
  readonly profiles: readonly Profile[]
  readonly closures: readonly EndClosure[]
  readonly cups: readonly Cup[]
  readonly risers: readonly Riser[]
  readonly collars: readonly Collar[]
  readonly plantCollars: readonly PlantCollar[]
  readonly saws: readonly HoleSaw[]
}

export type YesNo = 'yes' | 'no' | 'unknown'

/** Where the build stands. Not known counts as the careful answer. */
export interface Place {
  readonly where: 'inside' | 'outside' | 'unknown'
  readonly overPublicWay: YesNo
  readonly exitWindow: YesNo
  readonly windowOpens: 'inward' | 'outward' | 'slides' | 'fixed' | 'unknown'
  readonly children: YesNo
  /** null: not known, counts as near. */
  readonly outletDistanceMm: number | null
  readonly liner: 'none' | 'food-contact' | 'other' | 'unknown'
  readonly stockOrigin: 'new' | 'reclaimed' | 'unknown'
}

export interface PinnedDimension {
  readonly id: string
  readonly from: Anchor
  readonly to: Anchor
  /**
   * How far the dimension line stands from what it measures, on the sill: towards the room for one along the sill, to the
   * right for one across it; negative the other way. Left out: beside it, in turn.
   */
  readonly offMm?: number
}

export type Anchor =
  | { readonly kind: 'sill'; readonly edge: 'left' | 'right' | 'front' | 'back' }
  | { readonly kind: 'channel'; readonly channelId: string; readonly end: 'datum' | 'far' }
  | { readonly kind: 'site'; readonly channelId: string; readonly siteId: string }

export interface PinnedNote {
  readonly id: string
  readonly xMm: number
  readonly yMm: number
  readonly text: string
}
