import type { Channel, ChannelLayout } from '../layout'
import { type Basin, riseAt } from './basin'
import type { ChannelWater } from './channel-water'

/** Slope that needs no shim: under a hundredth of a millimetre to the metre. */
const LEVEL_SLOPE = 1e-5

/** What to put under each support, or under each end where there is none, to bring the channel level; the highest gets none. */
export function shims(channel: Channel, layout: ChannelLayout, basin: Basin): ChannelWater['shims'] {
  if (Math.abs(basin.slope) < LEVEL_SLOPE) return []
  const places = channel.supports.length > 0 ? channel.supports.map((s) => s.atMm) : [0, layout.cutLengthMm]
  const highest = Math.max(...places.map((atMm) => riseAt(basin, atMm)))
  return places.map((atMm) => ({ atMm, shimMm: highest - riseAt(basin, atMm) }))
}
