import { type Outline, pointOnSill } from '../layout'
import type { Anchor, Design, PinnedDimension } from './design'

/** Two places on the sill and what lies between them, along it or across it. */
export interface PinnedSpan {
  readonly from: { readonly xMm: number; readonly yMm: number }
  readonly to: { readonly xMm: number; readonly yMm: number }
  /** Measured from front to glass instead of along the sill. */
  readonly upright: boolean
  readonly valueMm: number
}

interface Place {
  readonly xMm: number | null
  readonly yMm: number | null
}

/**
 * What a pinned dimension measures now: straight along the sill, or straight across it where that is the longer way. An edge of the
 * sill is measured square to itself. Null where a thing that it is pinned to is gone, or the two have no distance that a
 * rule could lie along (a side edge and the front).
 */
export function pinnedSpan(
  design: Pick<Design, 'channels'>,
  sill: Pick<Outline, 'lengthMm' | 'depthMm'>,
  dimension: Pick<PinnedDimension, 'from' | 'to'>
): PinnedSpan | null {
  const a = placeOf(design, sill, dimension.from)
  const b = placeOf(design, sill, dimension.to)
  if (a === null || b === null) return null
  const from = { xMm: a.xMm ?? b.xMm, yMm: a.yMm ?? b.yMm ?? 0 }
  const to = { xMm: b.xMm ?? a.xMm, yMm: b.yMm ?? a.yMm ?? 0 }
  const alongOnly = a.yMm === null || b.yMm === null
  const acrossOnly = a.xMm === null || b.xMm === null
  if (alongOnly && acrossOnly && !(a.xMm === null && b.xMm === null)) return null
  const start = { xMm: from.xMm ?? 0, yMm: from.yMm }
  const end = { xMm: to.xMm ?? 0, yMm: to.yMm }
  const dxMm = Math.abs(end.xMm - start.xMm)
  const dyMm = Math.abs(end.yMm - start.yMm)
  const upright = acrossOnly || (!alongOnly && dyMm > dxMm)
  return { from: start, to: end, upright, valueMm: upright ? dyMm : dxMm }
}

function placeOf(
  design: Pick<Design, 'channels'>,
  sill: Pick<Outline, 'lengthMm' | 'depthMm'>,
  anchor: Anchor
): Place | null {
  if (anchor.kind === 'sill') {
    switch (anchor.edge) {
      case 'left':
        return { xMm: 0, yMm: null }
      case 'right':
        return { xMm: sill.lengthMm, yMm: null }
      case 'front':
        return { xMm: null, yMm: 0 }
      case 'back':
        return { xMm: null, yMm: sill.depthMm }
    }
  }
  const channel = design.channels.find((each) => each.id === anchor.channelId)
  if (channel === undefined) return null
  if (anchor.kind === 'channel') return pointOnSill(channel, anchor.end === 'datum' ? 0 : channel.lengthMm)
  const site = channel.sites.find((each) => each.id === anchor.siteId)
  return site === undefined ? null : pointOnSill(channel, site.atMm)
}
