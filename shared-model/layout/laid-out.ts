import type { SeatFit } from '../seating'
import type { ChannelLayout } from './channel-layout'
import type { Channel } from './layout'

/** One channel with what it is made of, as the findings need it. */
export interface LaidOut {
  readonly channel: Channel
  readonly layout: ChannelLayout
  readonly fits: readonly SeatFit[]
}
