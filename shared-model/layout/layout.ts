/**
 * The sill seen from above: x runs along it from its left end, y from its front edge (room side) towards the glass,
 * z up from its face. All in millimetres.
 */
export interface Sill {
  /** The reveal measured at several places; the least rules. */
  readonly lengthsMm: readonly number[]
  readonly depthsMm: readonly number[]
  readonly clearHeightMm: number
  /** Rise per metre towards the right end (negative: the right end is the low one). */
  readonly fallAlongMmPerM: number
  /** Rise per metre towards the glass. */
  readonly fallAcrossMmPerM: number
  /** Fit clearance kept at each end and at the front and back. */
  readonly clearanceMm: number
  /** The user's own figure only. */
  readonly loadLimitKg: number | null
  readonly obstacles: readonly Obstacle[]
}

export interface Obstacle {
  readonly id: string
  readonly name: string
  readonly xMm: number
  readonly yMm: number
  readonly lengthMm: number
  readonly depthMm: number
  readonly heightMm: number
}

/** Which way the channel runs from its datum end, anticlockwise from +x. */
export type Heading = 0 | 90 | 180 | 270

export interface Channel {
  readonly id: string
  readonly name: string
  readonly profileId: string
  /** Lies on its other side: width and height change places. */
  readonly turned: boolean
  /** The datum end (the cut end of the profile, before its closure goes on), at the centre line. */
  readonly xMm: number
  readonly yMm: number
  readonly heading: Heading
  /** Cut length of the profile. */
  readonly lengthMm: number
  readonly datumClosureId: string
  readonly farClosureId: string
  readonly supports: readonly Support[]
  readonly sites: readonly Site[]
  readonly openings: readonly ServiceOpening[]
  /** Level the grower fills to, as a share of the inside height at the deepest point. */
  readonly fillShare: number
}

/** A foot or block under the channel; with none the sill carries it along its length. */
export interface Support {
  readonly id: string
  readonly atMm: number
  readonly alongMm: number
  readonly acrossMm: number
  readonly heightMm: number
}

export interface Site {
  readonly id: string
  /** From the datum end to the hole's centre. */
  readonly atMm: number
  readonly seatId: string
  readonly cropId: string | null
  /** Kept where it is when sites are spread or matched. */
  readonly locked: boolean
}

export type OpeningKind = 'fill-port' | 'overflow' | 'drain' | 'level-sight' | 'vent' | 'plug'

export interface ServiceOpening {
  readonly id: string
  readonly kind: OpeningKind
  /** Front is to the right of the way the channel runs from its datum end: the room side of one that runs with the sill. */
  readonly face: 'top' | 'front' | 'back' | 'bottom' | 'datum-end' | 'far-end'
  /** From the datum end; of no meaning on an end face. */
  readonly atMm: number
  /** Centre above the inside floor, for a side or end face. */
  readonly heightMm: number
  readonly diameterMm: number
  /** null: drilled with a twist drill of that diameter. */
  readonly sawId: string | null
  readonly closure: 'plug' | 'grommet' | 'bulkhead' | 'cap' | 'screen' | 'clear-strip' | 'float-stick' | 'none'
}
