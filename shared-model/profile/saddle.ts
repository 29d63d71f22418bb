/**
 * What a hole looks like on a round pipe, whose upper face falls away to both sides.
 *
 *     gap under a flat rim:    R - sqrt(R^2 - (d/2)^2)          d: the hole's diameter at its edge, the rim's at the rim's edge
 *     saw depth needed:        R - sqrt((R - wall)^2 - (d/2)^2)     only for d/2 < R - wall
 *     strip left on each side, seen from above:  R - d/2
 *
 * Symbols: R outside radius, d diameter, wall the pipe's wall, all in mm. Outside those ranges a problem with both bounds.
 * No published value; the closed forms are checked against right-angled triangles worked by hand.
 *
 * @source geometry
 */
import { failed, ok, type Result } from '../outcome'
import { type Mm, mm } from '../units'
import type { ProfileProblem } from './codes'

/** Gap between a flat rim resting on the crown and the pipe, at a diameter's edge at the sides. */
export const saddleGap = (outsideRadius: Mm, diameter: Mm): Result<Mm, ProfileProblem> =>
  diameter >= 0 && diameter <= 2 * outsideRadius
    ? ok(mm(drop(outsideRadius, outsideRadius, diameter / 2)))
    : wider(diameter, 2 * outsideRadius)

/** How deep a saw must cut until it is through the wall all round. */
export function sawDepthOnPipe(outsideRadius: Mm, wall: Mm, hole: Mm): Result<Mm, ProfileProblem> {
  const inside = outsideRadius - wall
  return hole > 0 && hole < 2 * inside
    ? ok(mm(drop(outsideRadius, inside, hole / 2)))
    : wider(hole, Math.max(0, 2 * inside))
}

/** Pipe left on each side of a hole, seen from above. */
export const pipeStrip = (outsideRadius: Mm, hole: Mm): Mm => mm(outsideRadius - hole / 2)

function wider(diameter: Mm, mostMm: number): { readonly ok: false; readonly problem: ProfileProblem } {
  const valueMm = Number.isFinite(diameter) ? diameter : -1
  return failed({ code: 'hole-outside-face', figures: { valueMm, leastMm: 0, mostMm } })
}

const drop = (top: number, radius: number, half: number): number =>
  top - Math.sqrt(Math.max(0, radius * radius - half * half))
