import type { ChannelLayout } from './channel-layout'
import type { LayoutFinding } from './codes'
import type { LaidOut } from './laid-out'

type Canopies = ChannelLayout['canopies']

/** A tenth of the reach is leaf against leaf, which plants bear. */
const BORNE_SHARE = 0.1

/** How the canopies of one channel reach into each other and into those of channels after it in the design. */
interface Overlaps {
  readonly pairs: number
  /** Of the pair that overlaps most, the earlier one in the design where several do. */
  readonly overlapMm: number
  readonly share: number
  /** The plant of that pair that comes first in the design, whichever way the sill is looked at. */
  readonly siteId: string
}

interface Kept {
  readonly near: readonly Canopies[]
  readonly overlaps: Overlaps | null
}

const keptByCanopies = new WeakMap<Canopies, Kept>()

/**
 * One note for each channel whose canopies reach into those of its neighbours (or its own), with the worst pair. What is
 * found for a channel is kept as long as its canopies and those near it are the same objects.
 */
export function canopiesOverlap(laid: readonly LaidOut[]): readonly LayoutFinding[] {
  const boxes = laid.map(({ layout }) => boxOf(layout.canopies))
  return laid.flatMap(({ channel, layout }, i): readonly LayoutFinding[] => {
    const box = boxes[i]
    if (box === undefined || layout.canopies.length === 0) return []
    const near: Canopies[] = []
    for (let j = i + 1; j < laid.length; j += 1) {
      const other = boxes[j]
      const canopies = laid[j]?.layout.canopies
      if (other && canopies && boxesMeet(box, other)) near.push(canopies)
    }
    const overlaps = keptOverlaps(layout.canopies, near)
    if (overlaps === null) return []
    const { pairs, overlapMm, share, siteId } = overlaps
    return [
      {
        code: 'canopies-overlap',
        severity: 'note',
        figures: { pairs, overlapMm, share },
        where: { channelId: channel.id, siteId, field: `channels.${channel.id}.sites.${siteId}.atMm` },
        source: 'canopy-overlap'
      }
    ]
  })
}

function keptOverlaps(own: Canopies, near: readonly Canopies[]): Overlaps | null {
  const kept = keptByCanopies.get(own)
  if (kept?.near.length === near.length && kept.near.every((each, k) => each === near[k])) return kept.overlaps
  const overlaps = overlapsOf(own, near)
  keptByCanopies.set(own, { near, overlaps })
  return overlaps
}

function overlapsOf(own: Canopies, near: readonly Canopies[]): Overlaps | null {
  let pairs = 0
  let worstMm = 0
  let share = 0
  let siteId = ''
  const meet = (a: Canopies[number], others: Canopies, from: number): void => {
    for (let k = from; k < others.length; k += 1) {
      const b = others[k] ?? a
      const reachMm = a.radiusMm + b.radiusMm
      const dx = b.xMm - a.xMm
      const dy = b.yMm - a.yMm
      if (dx >= reachMm || dx <= -reachMm || dy >= reachMm || dy <= -reachMm) continue
      const overlapMm = reachMm - Math.sqrt(dx * dx + dy * dy)
      if (overlapMm <= reachMm * BORNE_SHARE) continue
      pairs += 1
      if (overlapMm <= worstMm) continue
      worstMm = overlapMm
      share = overlapMm / reachMm
      siteId = a.siteId
    }
  }
  own.forEach((canopy, k) => {
    meet(canopy, own, k + 1)
    for (const others of near) meet(canopy, others, 0)
  })
  return pairs === 0 ? null : { pairs, overlapMm: worstMm, share, siteId }
}

interface Box {
  readonly leftMm: number
  readonly rightMm: number
  readonly frontMm: number
  readonly backMm: number
}

/** The rectangle that holds all canopies of a channel. */
function boxOf(canopies: Canopies): Box {
  let leftMm = Number.MAX_VALUE
  let rightMm = -Number.MAX_VALUE
  let frontMm = Number.MAX_VALUE
  let backMm = -Number.MAX_VALUE
  for (const { xMm, yMm, radiusMm } of canopies) {
    leftMm = Math.min(leftMm, xMm - radiusMm)
    rightMm = Math.max(rightMm, xMm + radiusMm)
    frontMm = Math.min(frontMm, yMm - radiusMm)
    backMm = Math.max(backMm, yMm + radiusMm)
  }
  return { leftMm, rightMm, frontMm, backMm }
}

const boxesMeet = (a: Box, b: Box): boolean =>
  a.leftMm < b.rightMm && b.leftMm < a.rightMm && a.frontMm < b.backMm && b.frontMm < a.backMm
