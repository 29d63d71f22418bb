import type { Shows } from '../../shared-model/design'
import type { Cup, HoleSaw } from '../../shared-model/parts'
import type { Profile } from '../../shared-model/profile'
import { MM_PER_INCH } from '../../shared-model/units'
import type { Offered } from './offered'

/** Material that stays beside a hole in a face, on each side: common practice, no source. */
const STRIP_MM = 8
/** Room below a cup for solution and roots in a first choice; a starting value. */
const BELOW_CUP_MM = 10

type SawChoice = Pick<Offered, 'cups' | 'saws' | 'ownSawIds' | 'units'>

export interface Seating {
  readonly cup: Cup
  readonly saw: HoleSaw
}

/**
 * The first cup on offer that a saw seats on its rim (body ≤ hole < rim) in this profile, with room below it, and the
 * smallest such saw: of those the shop has, then of those in its units, then of all; null when none does.
 */
export function seatingSaw(from: SawChoice, profile: Profile): Seating | null {
  const far = (saw: HoleSaw): number => (from.ownSawIds.has(saw.id) ? 0 : 2) + (isOf(from.units, saw) ? 0 : 1)
  const saws = [...from.saws].sort((a, b) => far(a) - far(b) || a.diameterMm - b.diameterMm)
  for (const cup of from.cups) {
    if (cup.heightMm - cup.rimThicknessMm + BELOW_CUP_MM > profile.heightMm - profile.averageWallMm) continue
    const saw = saws.find((each) => each.diameterMm >= cup.bodyUnderRimMm && each.diameterMm < cup.rimOutsideMm)
    if (saw !== undefined && saw.diameterMm + 2 * STRIP_MM <= profile.widthMm) return { cup, saw }
  }
  return null
}

/** Whether a saw's size is a whole sixteenth of an inch, or a whole millimetre. */
const isOf = (units: Shows['units'], saw: HoleSaw): boolean => {
  const steps = units === 'in' ? (saw.diameterMm / MM_PER_INCH) * 16 : saw.diameterMm
  return Math.abs(steps - Math.round(steps)) < 1e-6
}

/** The saw nearest to a cup's body. */
export function nearestSaw(from: Pick<Offered, 'saws'>, cup: Cup): HoleSaw | null {
  const off = (saw: HoleSaw): number => Math.abs(saw.diameterMm - cup.bodyUnderRimMm)
  return [...from.saws].sort((a, b) => off(a) - off(b))[0] ?? null
}

/** With no seat that fits: the first cup and the saw nearest to its body; the plan then says what is wrong. */
export function nearestSeating(from: Pick<Offered, 'cups' | 'saws'>): Seating | null {
  const [cup] = from.cups
  const saw = cup === undefined ? null : nearestSaw(from, cup)
  return cup === undefined || saw === null ? null : { cup, saw }
}
