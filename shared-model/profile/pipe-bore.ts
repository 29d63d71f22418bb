/**
 * Bore of a round pipe from its outside diameter and wall.
 *
 *     bore = outside - 2 * wall              average bore = outside - 2 * factor * least wall
 *
 * Symbols: mm; the wall factor says by how much the average wall exceeds the least wall that the standard asks for
 * (1.03 in the table cited). Valid for 0 < factor * wall < outside / 2, else a problem with both bounds.
 *
 * @source pvc-pipe-average-bore
 * @source pvc-pipe-dimensions
 */
import { failed, ok, type Result } from '../outcome'
import { type Mm, mm } from '../units'
import type { ProfileProblem } from './codes'
import type { Section } from './profile'

export function averageBore(outside: Mm, leastWall: Mm, wallFactor: number): Result<Mm, ProfileProblem> {
  const wall = leastWall * wallFactor
  const mostMm = outside / 2
  if (!(wall > 0 && wall < mostMm)) {
    const figures = { wall: 'average' as const, valueMm: Number.isFinite(wall) ? wall : -1, leastMm: 0, mostMm }
    return failed({ code: 'wall-outside', figures })
  }
  return ok(mm(outside - 2 * wall))
}

export const boreFromWall = (outside: Mm, wall: Mm): Result<Mm, ProfileProblem> => averageBore(outside, wall, 1)

/** A round pipe known by its outside and its average bore, as a section. */
export function roundSection(outside: Mm, bore: Mm): Section {
  const wallMm = (outside - bore) / 2
  return {
    shape: 'round',
    widthMm: outside,
    heightMm: outside,
    averageWallMm: wallMm,
    leastWallMm: wallMm,
    cornerRadiusMm: 0
  }
}
