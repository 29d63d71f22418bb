/**
 * Area of the bore, and of the part of it below a level, with the width of the surface there.
 *
 *     below the lower corners:   A(y) = (w - 2r) y + segment(r, y)
 *     between the corners:       A(y) = (w - 2r) r + pi r^2 / 2 + w (y - r)
 *     above:                     A(y) = A(h) - A(h - y)
 *     segment(r, y) = r^2 / 2 * (f - sin f),   f = 4 asin sqrt(y / 2r)
 *
 * Symbols: w, h inside width and height, r inside corner radius (half the bore for a round pipe), y level above the inside
 * floor, all in mm; areas in mm2; the average wall rules. Valid for 0 <= y <= h; the functions hold y inside that range,
 * and `checkLevel` returns the problem.
 *
 * @source circle-segment-table
 * @source circular-channel-geometry
 * @source circle-segment-value
 * @source copper-downspout-sizes
 */
import { type Mm, type Mm2, mm, mm2 } from '../units'
import type { ProfileProblem } from './codes'
import type { Section } from './profile'
import { type Bore, boreOf } from './section-of'

export const boreArea = (section: Section): Mm2 => mm2(fullArea(boreOf(section)))

/** Inside height at the deepest point: what a fill share is a share of. */
export const insideHeight = (section: Section): Mm => mm(boreOf(section).heightMm)
export const insideWidth = (section: Section): Mm => mm(boreOf(section).widthMm)

/** Area of the bore below a level. */
export function wetArea(section: Section, level: Mm): Mm2 {
  const bore = boreOf(section)
  const y = Math.min(Math.max(level, 0), bore.heightMm)
  const turned = bore.heightMm - y
  return mm2(y <= turned ? lowerArea(bore, y) : fullArea(bore) - lowerArea(bore, turned))
}

/** Width of the surface at a level. */
export function surfaceWidth(section: Section, level: Mm): Mm {
  const bore = boreOf(section)
  const y = Math.min(Math.max(level, 0), bore.heightMm)
  const r = bore.cornerRadiusMm
  const fromEdge = Math.min(y, bore.heightMm - y)
  if (fromEdge >= r) return mm(bore.widthMm)
  return mm(bore.widthMm - 2 * r + 2 * Math.sqrt(Math.max(0, fromEdge * (2 * r - fromEdge))))
}

/** The problem, with both bounds, of a level that is not inside the bore; null where it is. */
export function checkLevel(section: Section, level: Mm): ProfileProblem | null {
  const mostMm = boreOf(section).heightMm
  if (level >= 0 && level <= mostMm) return null
  const valueMm = Number.isFinite(level) ? level : -1
  return { code: 'level-outside-bore', figures: { valueMm, leastMm: 0, mostMm } }
}

const fullArea = (bore: Bore): number => bore.widthMm * bore.heightMm - (4 - Math.PI) * bore.cornerRadiusMm ** 2

/** Area below a level in the lower half of the bore. */
function lowerArea(bore: Bore, y: number): number {
  const { widthMm: w, cornerRadiusMm: r } = bore
  if (y <= r) return (w - 2 * r) * y + segmentArea(r, y)
  return (w - 2 * r) * r + (Math.PI * r * r) / 2 + w * (y - r)
}

function segmentArea(r: number, y: number): number {
  if (r === 0) return 0
  const angle = 4 * Math.asin(Math.sqrt(Math.min(1, y / (2 * r))))
  return ((r * r) / 2) * (angle - Math.sin(angle))
}
