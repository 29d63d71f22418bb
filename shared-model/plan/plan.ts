import type { BenchPlan } from '../bench'
import type { Bill } from '../bill'
import type { Caution } from '../cautions'
import type { CutPlan, Piece } from '../cutting'
import type { ChannelLayout, SillSize } from '../layout'
import type { PricePlan } from '../pricing'
import type { ChannelWater, FirstFill } from '../reservoir'
import type { RingPlan } from '../rings'
import type { SawAdvice, SeatFit } from '../seating'
import type { ChannelLoad, SillLoad } from '../structure'
import type { PlanFinding, PlanProblem } from './codes'
import type { RestPlan } from './rest'

export const PLAN_SCHEMA = 1

/** All that follows from a Design and a Workshop on a day; never stored, never edited. Fields are added, not renamed. */
export interface Plan {
  readonly schema: typeof PLAN_SCHEMA
  /** ISO date. */
  readonly on: string
  readonly designId: string
  readonly quantity: number
  readonly sill: SillSize
  readonly channels: readonly ChannelPlan[]
  readonly sawAdvice: readonly SawAdvice[]
  readonly pieces: readonly Piece[]
  /** One for each profile. */
  readonly cuts: readonly CutPlan[]
  readonly rings: RingPlan
  readonly bench: BenchPlan
  /** What is left to do; null until something is cut. */
  readonly rest: RestPlan | null
  readonly bill: Bill
  readonly pricing: PricePlan
  readonly firstFill: FirstFill
  readonly load: SillLoad
  readonly cautions: readonly Caution[]
  readonly findings: readonly PlanFinding[]
  readonly problems: readonly PlanProblem[]
  readonly totals: {
    readonly plants: number
    readonly litres: number
    readonly holes: number
    readonly stops: number
    readonly warns: number
    readonly notes: number
  }
}

export interface ChannelPlan {
  readonly channelId: string
  /** Number on the picture, the piece and the drill sheet: 1, 2, … */
  readonly mark: string
  readonly layout: ChannelLayout
  readonly seats: readonly SeatFit[]
  readonly water: ChannelWater
  readonly load: ChannelLoad
}
