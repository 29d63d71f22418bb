import type { Channel, ChannelLayout, Sill, SillSize } from '../layout'
import type { Basin, ChannelWater, WaterPlan } from '../reservoir'
import type { PartIndex, SeatFit } from '../seating'

/** What the loads of one channel are worked out from. Pure in these; the plan may keep the result by their identity. */
export interface LoadInput {
  readonly channel: Channel
  readonly layout: ChannelLayout
  readonly fits: readonly SeatFit[]
  readonly index: PartIndex
  readonly sill: Sill
  readonly size: SillSize
  readonly channelWater: ChannelWater
  readonly water: WaterPlan
  /** The water body, where it is known from the water already. */
  readonly basin?: Basin
}
