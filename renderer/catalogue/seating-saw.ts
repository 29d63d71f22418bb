import type { Cup, HoleSaw } from '../../shared-model/parts'
import type { Offered } from './offered'

/** Material that stays beside a hole in a face, on each side: common practice, no source. */
const STRIP_MM = 8

/**
 * The first cup on offer that a saw seats on its rim (body ≤ hole < rim) in a face this wide, and the smallest such saw.
 * With none, the first cup and the saw nearest to its body; the plan then says what is wrong.
 */
export function seatingSaw(from: Pick<Offered, 'cups' | 'saws'>, faceMm: number): { cup: Cup; saw: HoleSaw } | null {
  const saws = [...from.saws].sort((a, b) => a.diameterMm - b.diameterMm)
  for (const cup of from.cups) {
    const saw = saws.find((each) => each.diameterMm >= cup.bodyUnderRimMm && each.diameterMm < cup.rimOutsideMm)
    if (saw !== undefined && saw.diameterMm + 2 * STRIP_MM <= faceMm) return { cup, saw }
  }
  const [cup] = from.cups
  const nearest =
    cup === undefined
      ? undefined
      : [...saws].sort(
          (a, b) => Math.abs(a.diameterMm - cup.bodyUnderRimMm) - Math.abs(b.diameterMm - cup.bodyUnderRimMm)
        )[0]
  return cup === undefined || nearest === undefined ? null : { cup, saw: nearest }
}
