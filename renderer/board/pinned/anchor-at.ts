import type { Anchor } from '../../../shared-model/design'
import type { ChannelLayout } from '../../../shared-model/layout'
import { endsOf, pick } from '../pick'
import type { Point } from '../scale'

interface Drawn {
  readonly layout: ChannelLayout
  readonly heading: number
}

/** What a dimension is pinned to at a place: a site, the nearer end of a channel, or the nearest edge of the sill. */
export function anchorAt(
  channels: readonly Drawn[],
  sill: { readonly lengthMm: number; readonly depthMm: number },
  at: Point,
  reachMm: number
): Anchor | null {
  const picked = pick(
    channels.map((each) => ({ ...each, chosen: true })),
    at,
    reachMm
  )
  if (picked.kind === 'end') return { kind: 'channel', channelId: picked.channelId, end: picked.end }
  if (picked.kind === 'site') return { kind: 'site', channelId: picked.channelId, siteId: picked.siteId }
  const over = channels.find((each) => picked.kind !== 'nothing' && each.layout.channelId === picked.channelId)
  if (over !== undefined) {
    const { datum, far } = endsOf(over.layout, over.heading)
    const nearer = Math.hypot(at.x - datum.x, at.y - datum.y) <= Math.hypot(at.x - far.x, at.y - far.y)
    return { kind: 'channel', channelId: over.layout.channelId, end: nearer ? 'datum' : 'far' }
  }
  const edges = [
    { edge: 'left', offMm: Math.abs(at.x) },
    { edge: 'right', offMm: Math.abs(at.x - sill.lengthMm) },
    { edge: 'front', offMm: Math.abs(at.y) },
    { edge: 'back', offMm: Math.abs(at.y - sill.depthMm) }
  ] as const
  const [nearest] = [...edges].sort((a, b) => a.offMm - b.offMm)
  return nearest !== undefined && nearest.offMm <= 2 * reachMm ? { kind: 'sill', edge: nearest.edge } : null
}
