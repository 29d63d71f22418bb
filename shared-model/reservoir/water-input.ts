import type { Channel, ChannelLayout, Sill } from '../layout'
import type { Cup, HoleSaw } from '../parts'
import type { PartIndex, SeatFit } from '../seating'
import type { WaterPlan } from './stage'

/** What the water of one channel is worked out from. Pure in these; the plan may keep the result by their identity. */
export interface WaterInput {
  readonly channel: Channel
  readonly layout: ChannelLayout
  readonly fits: readonly SeatFit[]
  readonly index: PartIndex
  readonly sill: Sill
  readonly water: WaterPlan
  /** Cups that risers could be made from, and saws that could cut another hole. */
  readonly cupsOnHand: readonly Cup[]
  readonly sawsOnHand: readonly HoleSaw[]
}
