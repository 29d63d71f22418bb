import type { Cup } from '../parts'
import { PRESS_INTERFERENCE_MM } from './limits'

/**
 * How far a riser made from a cup stands above the opening it wedges in: from its rim to where its body measures the
 * opening, less what a flexible wall gives when pressed home. The riser keeps the rim end, so where it is cut does not
 * change this. null where the cup does not wedge there: the opening is as wide as its body, or as narrow as its bottom.
 * @source seat-geometry
 */
export function riserProudMm(cup: Cup, openingMm: number): number | null {
  const run = cup.heightMm - cup.rimThicknessMm
  const tangent = run > 0 ? (cup.bodyUnderRimMm - cup.bottomMm) / 2 / run : 0
  if (tangent <= 0 || openingMm >= cup.bodyUnderRimMm || openingMm <= cup.bottomMm) return null
  const depthMm = cup.rimThicknessMm + (cup.bodyUnderRimMm - openingMm) / 2 / tangent
  const pressMm = cup.flexible ? Math.min(PRESS_INTERFERENCE_MM / (2 * tangent), depthMm - cup.rimThicknessMm) : 0
  return depthMm - pressMm
}
