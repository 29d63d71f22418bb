import type { ChannelLayout } from '../../shared-model/layout'
import type { Point } from './scale'

/** What lies under the pointer, the topmost first. */
export type Picked =
  | { readonly kind: 'end'; readonly channelId: string; readonly end: 'datum' | 'far' }
  | { readonly kind: 'site'; readonly channelId: string; readonly siteId: string }
  | { readonly kind: 'opening'; readonly channelId: string; readonly openingId: string }
  | { readonly kind: 'channel'; readonly channelId: string }
  | { readonly kind: 'nothing' }

const NOTHING: Picked = { kind: 'nothing' }

/** Where the two cut ends of a channel are, on its centre line. */
export function endsOf(layout: ChannelLayout, heading: number): { readonly datum: Point; readonly far: Point } {
  const { xMm, yMm, lengthMm, depthMm } = layout.body
  const across = heading === 0 || heading === 180
  const low = across ? { x: xMm, y: yMm + depthMm / 2 } : { x: xMm + lengthMm / 2, y: yMm }
  const high = across ? { x: xMm + lengthMm, y: yMm + depthMm / 2 } : { x: xMm + lengthMm / 2, y: yMm + depthMm }
  return heading === 0 || heading === 90 ? { datum: low, far: high } : { datum: high, far: low }
}

/** `reachMm` widens small targets to the 24 px that a hand needs. Ends answer on chosen channels only. */
export function pick(
  channels: readonly { readonly layout: ChannelLayout; readonly heading: number; readonly chosen: boolean }[],
  at: Point,
  reachMm: number
): Picked {
  for (const { layout, heading, chosen } of [...channels].reverse()) {
    if (!chosen) continue
    const ends = endsOf(layout, heading)
    for (const end of ['far', 'datum'] as const) {
      if (near(at, ends[end], reachMm)) return { kind: 'end', channelId: layout.channelId, end }
    }
  }
  for (const { layout } of [...channels].reverse()) {
    const { outline } = layout
    if (!inside(at, outline, reachMm / 2)) continue
    const hole = layout.holes.find((each) =>
      near(at, { x: each.xMm, y: each.yMm }, Math.max(reachMm / 2, each.diameterMm / 2))
    )
    if (hole?.kind === 'site') return { kind: 'site', channelId: layout.channelId, siteId: hole.id }
    if (hole?.kind === 'opening') return { kind: 'opening', channelId: layout.channelId, openingId: hole.id }
    return { kind: 'channel', channelId: layout.channelId }
  }
  return NOTHING
}

const near = (a: Point, b: Point, reach: number): boolean => Math.hypot(a.x - b.x, a.y - b.y) <= reach

const inside = (at: Point, box: ChannelLayout['outline'], reach: number): boolean =>
  at.x >= box.xMm - reach &&
  at.x <= box.xMm + box.lengthMm + reach &&
  at.y >= box.yMm - reach &&
  at.y <= box.yMm + box.depthMm + reach

/** Channels that a dragged box touches. */
export const touched = (
  layouts: readonly ChannelLayout[],
  box: { readonly from: Point; readonly to: Point }
): readonly string[] => {
  const [left, right] = [Math.min(box.from.x, box.to.x), Math.max(box.from.x, box.to.x)]
  const [front, back] = [Math.min(box.from.y, box.to.y), Math.max(box.from.y, box.to.y)]
  return layouts
    .filter(
      ({ outline }) =>
        outline.xMm <= right &&
        outline.xMm + outline.lengthMm >= left &&
        outline.yMm <= back &&
        outline.yMm + outline.depthMm >= front
    )
    .map((layout) => layout.channelId)
}
