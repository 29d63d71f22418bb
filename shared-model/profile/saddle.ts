/**
 * What a hole looks like on a round pipe, whose upper face falls away to both sides.
 *
 *     gap under a flat rim at radius a:   R - sqrt(R^2 - a^2)         (a = d/2 at the hole's edge, rim/2 at the rim's)
 *     saw depth needed:                   R - sqrt((R - wall)^2 - (d/2)^2)     only for d/2 < R - wall
 *     strip left on each side, from above: R - d/2;  girth left: 2 R (pi - asin(d / 2R))
 *
 * Symbols: R outside radius, d hole diameter, wall the average wall, all in mm. A rim wider than the pipe hangs over it:
 * its gap is then the whole radius. No published value; the closed forms are checked against a circle by hand.
 *
 * @source geometry
 */
import { failed, ok, type Result } from '../outcome'
import type { Mm } from '../units'
import type { ProfileProblem } from './codes'
import type { Section } from './profile'

export interface Saddle {
  readonly gapAtHoleMm: number
  /** null: no rim given. */
  readonly gapAtRimMm: number | null
  readonly sawDepthMm: number
  readonly stripMm: number
  readonly girthLeftMm: number
}

export function saddle(section: Section, hole: Mm, rim: Mm | null): Result<Saddle, ProfileProblem> {
  const radius = section.widthMm / 2
  const inner = radius - section.averageWallMm
  const half = hole / 2
  if (!(half > 0 && half < inner)) {
    const valueMm = Number.isFinite(hole) ? hole : -1
    return failed({ code: 'hole-outside-face', figures: { valueMm, leastMm: 0, mostMm: 2 * inner } })
  }
  return ok({
    gapAtHoleMm: drop(radius, radius, half),
    gapAtRimMm: rim === null ? null : drop(radius, radius, Math.min(rim / 2, radius)),
    sawDepthMm: drop(radius, inner, half),
    stripMm: radius - half,
    girthLeftMm: 2 * radius * (Math.PI - Math.asin(half / radius))
  })
}

const drop = (top: number, radius: number, half: number): number =>
  top - Math.sqrt(Math.max(0, radius * radius - half * half))
