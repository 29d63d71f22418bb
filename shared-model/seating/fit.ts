/** How a part sits in the opening below it. */
export type Hold =
  | 'hangs-on-rim'
  | 'wedges'
  | 'push-fit'
  | 'pressed-in'
  | 'stands-on-face'
  | 'drops-through'
  | 'does-not-enter'

/** One part in one opening. Heights are from the channel's inside floor. */
export interface Interface {
  readonly partId: string
  readonly kind: 'riser' | 'collar' | 'cup' | 'plant-collar'
  /** What it sits in: the face, or the id of the part below. */
  readonly on: string
  readonly openingMm: number
  /** Height of that opening's upper edge. */
  readonly openingAtMm: number
  readonly hold: Hold
  readonly landMm: number | null
  readonly playMm: number | null
  /** How far its rim or top stands above the opening's edge. */
  readonly proudMm: number
  readonly pressMm: number | null
  readonly undersideMm: number
  readonly topMm: number
  /** Held when turned over. */
  readonly held: boolean
  /** Kept from sliding sideways, by its own seat or by what hangs through it. */
  readonly located: boolean
}

/** A body of revolution that takes up room in the channel: what lies between two heights. Diameters in mm. */
export interface Solid {
  readonly fromMm: number
  readonly toMm: number
  readonly lowerOutsideMm: number
  readonly upperOutsideMm: number
  /** The part of it that solution enters, as a share of the inside. */
  readonly floodedShare: number
  readonly lowerInsideMm: number
  readonly upperInsideMm: number
  /** The inside begins this far above `fromMm` (a closed bottom's thickness). */
  readonly insideFromMm: number
}

export interface SeatFit {
  readonly siteId: string
  readonly seatId: string
  readonly holeMm: number
  readonly interfaces: readonly Interface[]
  /** Underside of the plant's cup. */
  readonly undersideMm: number
  readonly topMm: number
  readonly lowestMm: number
  readonly lowestPartId: string
  readonly floorClearanceMm: number
  readonly hold: Hold
  /** Seals when the channel is filled above the face's underside. */
  readonly seals: boolean
  /** Widest rim of the stack at or above the face: what neighbours must clear. */
  readonly widestMm: number
  readonly solids: readonly Solid[]
  /** Mass of the parts in the stack, dry, and the height of its centre above the inside floor. */
  readonly massG: number
  readonly massAtMm: number
}

export interface SawOption {
  readonly sawId: string
  readonly diameterMm: number
  readonly hold: Hold
  readonly landMm: number | null
  readonly playMm: number | null
  readonly undersideMm: number
}

/** What the saws at hand would do for a seat, and what diameter would do when none does. */
export interface SawAdvice {
  readonly seatId: string
  readonly options: readonly SawOption[]
  readonly wouldDoMm: { readonly least: number; readonly most: number } | null
}
