import type { Channel, ChannelLayout } from '../layout'
import { type Basin, riseAt } from './basin'
import type { ChannelWater } from './channel-water'

/** Slope that needs no shim: under a hundredth of a millimetre to the metre. */
const LEVEL_SLOPE = 1e-5

/**
 * What to put under each support, or under each end where there is none, to bring the channel level; the highest gets none.
 * Where the sill falls across the channel as well, the low side of each wants more by its own width times that fall.
 */
export function shims(channel: Channel, layout: ChannelLayout, basin: Basin): ChannelWater['shims'] {
  const across = Math.abs(basin.slopeAcross)
  if (Math.abs(basin.slope) < LEVEL_SLOPE && across < LEVEL_SLOPE) return []
  const ends = [0, layout.cutLengthMm].map((atMm) => ({ atMm, acrossMm: layout.section.widthMm }))
  const places = channel.supports.length > 0 ? channel.supports : ends
  const highest = Math.max(...places.map(({ atMm }) => riseAt(basin, atMm)))
  const lowSide = across < LEVEL_SLOPE ? null : basin.slopeAcross > 0 ? 'front' : 'back'
  return places.map(({ atMm, acrossMm }) => {
    const shimMm = highest - riseAt(basin, atMm)
    return { atMm, shimMm, lowSide, lowSideMm: shimMm + (lowSide === null ? 0 : across * acrossMm) }
  })
}
