import type { HoleSaw } from '../parts'

export interface Drill {
  readonly id: string
  readonly name: string
  readonly kind: 'hand' | 'press'
}

/** A saw the maker owns, and what a hole with it costs. */
export interface OwnedSaw {
  readonly saw: HoleSaw
  readonly priceMinor: number | null
  readonly salvageMinor: number
  readonly lifeHoles: number | null
}

/** Times of the shop in seconds: a set-up once a batch, and a run time for each. Learned values may be written back. */
export interface StepTimes {
  readonly setUpS: number
  readonly markPerPieceS: number
  readonly cutPerPieceS: number
  readonly stopSettingS: number
  readonly deburrPerEndS: number
  readonly markPerHoleS: number
  readonly pilotPerHoleS: number
  readonly sawPerHoleS: number
  /** Added per 25.4 mm of saw diameter above 25.4 mm. */
  readonly sawPerInchS: number
  readonly toolChangeS: number
  readonly mountS: number
  readonly collarS: number
  readonly boreCupS: number
  readonly cutRiserS: number
  readonly washPerChannelS: number
  readonly jointS: number
  readonly leakTestPerChannelS: number
  readonly labelPerChannelS: number
  readonly packPerUnitS: number
  /** Waits: elapsed, not worked. */
  readonly cureWaitS: number
  readonly leakWaitS: number
}
