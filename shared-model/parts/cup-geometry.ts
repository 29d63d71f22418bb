/**
 * A cup as a tapered body: how wide it is at a depth, how steep, how much it holds and how much solid it is.
 *
 *     D(z) = Du + (Db - Du) (z - rim) / (H - rim)                 outside diameter z below the rim's top
 *     tan(half angle) = (Du - Db) / (2 (H - rim))
 *     frustum volume = pi h (R^2 + R r + r^2) / 3
 *     solid = outside frustum - inside frustum (wall and bottom of one thickness) + rim band
 *
 * Symbols: Du outside diameter under the rim, Db at the bottom, H whole height, rim the rim band's height, R and r radii,
 * all in mm. Valid for 0 <= Db <= Du and rim < H (`checkCup`); depths are held inside the body.
 *
 * @source frustum-solutions
 */
import { type Mm, type Mm3, mm, mm3 } from '../units'
import type { PartsProblem } from './codes'
import type { Cup } from './part'

export const frustumVolume = (topRadius: Mm, bottomRadius: Mm, height: Mm): Mm3 =>
  mm3((Math.PI * height * (topRadius ** 2 + topRadius * bottomRadius + bottomRadius ** 2)) / 3)

/** Largest radius or height of a frustum that is worked with, mm. */
const FRUSTUM_MOST_MM = 10_000

/** Why a frustum cannot be, both bounds named; null where it can. Which end is the wider does not matter to its volume. */
export function checkFrustum(topRadius: Mm, bottomRadius: Mm, height: Mm): PartsProblem | null {
  const sizes = { topRadius, bottomRadius, height }
  for (const [size, value] of Object.entries(sizes)) {
    if (value >= 0 && value <= FRUSTUM_MOST_MM) continue
    const valueMm = Number.isFinite(value) ? value : -1
    return { code: 'part-size-outside', figures: { size, valueMm, leastMm: 0, mostMm: FRUSTUM_MOST_MM } }
  }
  return null
}

/** Outside diameter of the body at a depth below the top of the rim. */
export function bodyDiameter(cup: Cup, belowTop: Mm): Mm {
  const bodyMm = cup.heightMm - cup.rimThicknessMm
  const share = bodyMm > 0 ? Math.min(1, Math.max(0, (belowTop - cup.rimThicknessMm) / bodyMm)) : 0
  return mm(cup.bodyUnderRimMm + (cup.bottomMm - cup.bodyUnderRimMm) * share)
}

/** Tangent of the half angle; 0 for a parallel wall. */
export function halfAngleTangent(cup: Cup): number {
  const bodyMm = cup.heightMm - cup.rimThicknessMm
  return bodyMm > 0 ? (cup.bodyUnderRimMm - cup.bottomMm) / (2 * bodyMm) : 0
}

export const halfAngleDeg = (cup: Cup): number => (Math.atan(halfAngleTangent(cup)) * 180) / Math.PI

/** What the cup would hold, filled to the top of its rim: the inside of the body carried on up through the rim band. */
export function cupVolume(cup: Cup): Mm3 {
  const top = inner(cup.bodyUnderRimMm + 2 * halfAngleTangent(cup) * cup.rimThicknessMm, cup)
  return frustumVolume(top, inner(cup.bottomMm, cup), mm(Math.max(0, cup.heightMm - cup.wallMm)))
}

/** Volume of the cup's own material, as if it had no slots. */
export function cupSolidVolume(cup: Cup): Mm3 {
  const bodyMm = mm(cup.heightMm - cup.rimThicknessMm)
  const outside = frustumVolume(mm(cup.bodyUnderRimMm / 2), mm(cup.bottomMm / 2), bodyMm)
  const inside = frustumVolume(
    inner(cup.bodyUnderRimMm, cup),
    inner(cup.bottomMm, cup),
    mm(Math.max(0, bodyMm - cup.wallMm))
  )
  const bore = inner(cup.bodyUnderRimMm, cup)
  const rim = Math.PI * ((cup.rimOutsideMm / 2) ** 2 - bore ** 2) * cup.rimThicknessMm
  return mm3(outside - inside + Math.max(0, rim))
}

const inner = (outsideMm: number, cup: Cup): Mm => mm(Math.max(0, outsideMm / 2 - cup.wallMm))
