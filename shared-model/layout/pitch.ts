import { failed, ok, type Result } from '../outcome'
import { type Mm, mm } from '../units'
import type { LayoutProblem } from './codes'
import { outside } from './sites-at-pitch'

/**
 * Least distance from a cut end to a hole's centre: closure + web + half the hole.
 * `closureDepthMm` is how far the closure reaches over or into the profile, the larger of the two.
 */
export function leastEnd(closureDepthMm: Mm, webMm: Mm, holeDiameterMm: Mm): Mm {
  return mm(closureDepthMm + webMm + holeDiameterMm / 2)
}

/** Least distance between two hole centres: hole + web. */
export function leastPitch(holeDiameterMm: Mm, webMm: Mm): Mm {
  return mm(holeDiameterMm + webMm)
}

/**
 * Pitch of a square grid with a given number of plants to the square metre: 1000 ÷ √n, in mm.
 * Valid: 0.01 to 100 000 plants to the square metre.
 * @source spacing-fao
 */
export function gridPitch(plantsPerM2: number): Result<Mm, LayoutProblem> {
  const wrong = outside('plants to the square metre', plantsPerM2, 0.01, 100_000)
  return wrong ? failed(wrong) : ok(mm(1000 / Math.sqrt(plantsPerM2)))
}
