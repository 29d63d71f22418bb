import { surfaceWidth } from '../profile'
import type { SeatFit } from '../seating'
import { type Mm, mm } from '../units'
import { type Basin, edgeDrop, riseAt } from './basin'
import type { SiteWater } from './channel-water'

/** From the solution's surface up to a cup's underside, mm; negative when the cup stands in the solution. */
export function airGap(undersideMm: Mm, levelMm: Mm): Mm {
  return mm(undersideMm - levelMm)
}

/** A cup's site: the heights that decide its gap. */
export interface CupAt {
  readonly siteId: string
  /** Low edge of the underside above the inside floor at the site: a fall brings one edge nearer to the surface. */
  readonly undersideMm: number
  /** Floor at the site above the deepest point. */
  readonly riseMm: number
}

/**
 * Level and gap at every site for a level at the deepest point; a fall makes them differ. Across the channel the surface
 * is turned about its middle: at a wall it stands higher or lower by half its width times the fall, never below the floor.
 */
export function siteWaters(cups: readonly CupAt[], levelMm: number, basin: Basin): readonly SiteWater[] {
  return cups.map((cup) => {
    const depthMm = Math.max(0, levelMm - cup.riseMm)
    const gapMm = airGap(mm(cup.undersideMm), mm(depthMm))
    const turnMm = depthMm > 0 ? (basin.slopeAcross * surfaceWidth(basin.section, mm(depthMm))) / 2 : 0
    return {
      siteId: cup.siteId,
      levelMm: depthMm,
      frontLevelMm: Math.max(0, depthMm + turnMm),
      backLevelMm: Math.max(0, depthMm - turnMm),
      gapMm,
      wetted: gapMm <= 0
    }
  })
}

/** Least and greatest gap at a level; null where there is no cup. */
export function gapRange(
  cups: readonly CupAt[],
  levelMm: number
): { readonly leastMm: number; readonly greatestMm: number } | null {
  if (cups.length === 0) return null
  let leastMm = Number.POSITIVE_INFINITY
  let greatestMm = Number.NEGATIVE_INFINITY
  for (const cup of cups) {
    const gapMm = cup.undersideMm - Math.max(0, levelMm - cup.riseMm)
    if (gapMm < leastMm) leastMm = gapMm
    if (gapMm > greatestMm) greatestMm = gapMm
  }
  return { leastMm, greatestMm }
}

/** The lowest cup of a channel, above the floor at the deepest point: what the worst case goes by. */
export function lowestCup(cups: readonly CupAt[]): number | null {
  return cups.length === 0 ? null : Math.min(...cups.map((cup) => cup.undersideMm + cup.riseMm))
}

/** Cups of a basin's sites in the order of the channel. */
export function cupsAt(
  basin: Basin,
  sites: readonly { readonly id: string; readonly atMm: number }[],
  fits: readonly Pick<SeatFit, 'undersideMm' | 'solids'>[]
): readonly CupAt[] {
  return sites.map((site, i) => {
    const fit = fits[i]
    return {
      siteId: site.id,
      undersideMm: fit === undefined ? 0 : fit.undersideMm - edgeDrop(basin, bottomOf(fit)),
      riseMm: riseAt(basin, site.atMm)
    }
  })
}

/** Diameter of the underside of a stack's cup. */
const bottomOf = ({ undersideMm, solids }: Pick<SeatFit, 'undersideMm' | 'solids'>): number =>
  solids.find((solid) => Math.abs(solid.fromMm - undersideMm) < 1e-6)?.lowerOutsideMm ?? 0
