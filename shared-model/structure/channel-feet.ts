import { type Channel, type ChannelLayout, type Outline, stripOnSill } from '../layout'
import { flatWidth } from '../profile'

/**
 * What a channel stands on, seen from above: its supports; with none its own flat underside along its length, or its end
 * closures where these stand proud. A round pipe without supports touches along a line and rolls.
 */
export function channelFeet(channel: Channel, layout: ChannelLayout): readonly Outline[] {
  if (channel.supports.length > 0) {
    return channel.supports.map((s) => stripOnSill(channel, s.atMm - s.alongMm / 2, s.atMm + s.alongMm / 2, s.acrossMm))
  }
  return [stripOnSill(channel, 0, layout.cutLengthMm, flatWidth(layout.section))]
}

/** A round pipe that nothing keeps from rolling. */
export const rolls = (channel: Channel, layout: ChannelLayout): boolean =>
  layout.section.shape === 'round' && channel.supports.length === 0
