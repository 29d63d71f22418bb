import type { Channel, ChannelLayout } from '../../../shared-model/layout'

/** What is drawn of one channel. */
export interface ChannelPicture {
  readonly channel: Channel
  readonly layout: ChannelLayout
  readonly mark: string
  /** Widest rim by site. */
  readonly rimsMm: ReadonlyMap<string, number>
  readonly chosen: boolean
  readonly chosenSites: readonly string[]
  readonly openingId: string | null
  readonly canopies: boolean
}
