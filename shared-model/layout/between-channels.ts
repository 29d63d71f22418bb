import { canopiesOverlap } from './canopies-overlap'
import type { ChannelLayout, Outline } from './channel-layout'
import type { LayoutFinding } from './codes'
import type { LaidOut } from './laid-out'
import type { Obstacle, Sill } from './layout'

/** Overlaps smaller than this count as touching, mm. */
const TOUCH_MM = 0.01

/** Clashes of channels with each other and with obstacles, by their overall outlines, and canopies that overlap. */
export function betweenChannels(laid: readonly LaidOut[], sill: Sill): readonly LayoutFinding[] {
  const found: LayoutFinding[] = []
  laid.forEach((a, i) => {
    for (let j = i + 1; j < laid.length; j += 1) {
      const b = laid[j]
      if (!b) break
      const overlapMm = overlap(a.layout.outline, b.layout.outline)
      if (overlapMm > TOUCH_MM && heightsMeet(a.layout, b.layout)) {
        found.push({
          code: 'channels-clash',
          severity: 'stop',
          figures: { other: a.channel.name, overlapMm },
          where: {
            channelId: b.channel.id,
            field: `channels.${b.channel.id}.${movesAlong(b.layout.outline, a.layout.outline)}`
          }
        })
      }
    }
    for (const obstacle of sill.obstacles) found.push(...obstacleClash(a, obstacle))
  })
  found.push(...canopiesOverlap(laid))
  return found
}

/** How far two rectangles reach into each other: the shorter of the two ways out; 0 or less when apart. */
function overlap(a: Outline, b: Outline): number {
  const x = Math.min(a.xMm + a.lengthMm, b.xMm + b.lengthMm) - Math.max(a.xMm, b.xMm)
  const y = Math.min(a.yMm + a.depthMm, b.yMm + b.depthMm) - Math.max(a.yMm, b.yMm)
  return Math.min(x, y)
}

function heightsMeet(a: ChannelLayout, b: ChannelLayout): boolean {
  return a.standsMm < b.standsMm + b.section.heightMm && b.standsMm < a.standsMm + a.section.heightMm
}

function movesAlong(moving: Outline, other: Outline): 'xMm' | 'yMm' {
  const x = Math.min(moving.xMm + moving.lengthMm, other.xMm + other.lengthMm) - Math.max(moving.xMm, other.xMm)
  const y = Math.min(moving.yMm + moving.depthMm, other.yMm + other.depthMm) - Math.max(moving.yMm, other.yMm)
  return x < y ? 'xMm' : 'yMm'
}

function obstacleClash({ channel, layout }: LaidOut, obstacle: Obstacle): readonly LayoutFinding[] {
  const overlapMm = overlap(layout.outline, obstacle)
  if (overlapMm <= TOUCH_MM || layout.standsMm >= obstacle.heightMm) return []
  return [
    {
      code: 'obstacle-clash',
      severity: 'stop',
      figures: { obstacle: obstacle.name, overlapMm },
      where: { channelId: channel.id, field: `channels.${channel.id}.${movesAlong(layout.outline, obstacle)}` }
    }
  ]
}
