import type { Heading } from '../../../shared-model/layout'
import { mm, type Nm, setOnGraduation } from '../../../shared-model/units'
import { alongRun } from '../runs'
import type { Extent, Point } from '../scale'
import { type SnapLine, snapAxis } from '../snapping'

/** How snapping works now: the lines to be drawn to, how near, on which graduation; null with snapping off. */
export interface Snapping {
  readonly lines: readonly SnapLine[]
  readonly reachMm: number
  readonly graduationMm: number
  readonly graduation: Nm
}

export interface Moved {
  readonly dxMm: number
  readonly dyMm: number
  readonly lines: readonly SnapLine[]
}

/** Where a moved extent comes to lie. */
export function moved(start: Extent, by: Point, snapping: Snapping | null): Moved {
  if (snapping === null) return { dxMm: by.x, dyMm: by.y, lines: [] }
  const { lines, reachMm, graduationMm } = snapping
  const x = snapAxis('x', start.xMm + by.x, start.lengthMm, lines, reachMm, graduationMm)
  const y = snapAxis('y', start.yMm + by.y, start.depthMm, lines, reachMm, graduationMm)
  return {
    dxMm: by.x + x.shiftMm,
    dyMm: by.y + y.shiftMm,
    lines: [x.line, y.line].filter((line) => line !== null)
  }
}

export interface Pulled {
  readonly lengthMm: number
  readonly lines: readonly SnapLine[]
}

/** The length that a pulled end gives: its outside face on a line within reach, else the cut length on the graduation. */
export function pulled(
  ask: {
    readonly heading: Heading
    readonly end: 'datum' | 'far'
    readonly startMm: number
    readonly faceMm: number
    readonly by: Point
  },
  snapping: Snapping | null
): Pulled {
  const sense = ask.end === 'far' ? 1 : -1
  const grownMm = sense * alongRun(ask.heading, ask.by)
  const rawMm = Math.max(1, ask.startMm + grownMm)
  if (snapping === null) return { lengthMm: rawMm, lines: [] }
  const axis = ask.heading === 0 || ask.heading === 180 ? 'x' : 'y'
  const runs = alongRun(ask.heading, { x: 1, y: 1 }) * sense
  const face = ask.faceMm + runs * grownMm
  const near = snapping.lines
    .filter((line) => line.axis === axis && line.what !== 'centre' && Math.abs(line.atMm - face) <= snapping.reachMm)
    .sort((a, b) => Math.abs(a.atMm - face) - Math.abs(b.atMm - face))[0]
  if (near === undefined) {
    return { lengthMm: Math.max(1, setOnGraduation(mm(rawMm), snapping.graduation, 'nearest')), lines: [] }
  }
  const lengthMm = rawMm + runs * (near.atMm - face)
  return { lengthMm: Math.max(1, setOnGraduation(mm(lengthMm), snapping.graduation, 'down')), lines: [near] }
}

/** Where a dragged hole comes to lie along its channel, kept within it. */
export function slid(
  startMm: number,
  heading: Heading,
  by: Point,
  lengthMm: number,
  snapping: Snapping | null
): number {
  const raw = Math.min(lengthMm, Math.max(0, startMm + alongRun(heading, by)))
  return snapping === null ? raw : Math.min(lengthMm, setOnGraduation(mm(raw), snapping.graduation, 'nearest'))
}
