import { type Body, taperTangent } from './body'
import type { Solid } from './fit'

/**
 * The room a part takes up, from its underside up: its taper below the rim and its rim band. A ring is one plain disc about
 * its hole. The inside of an open part is the outside less the wall; a closed bottom is as thick as the wall.
 */
export function bodySolids(body: Body, undersideMm: number): readonly Solid[] {
  const topMm = undersideMm + body.heightMm
  if (body.ring) {
    const holeMm = body.opening.mouthMm
    return [
      {
        fromMm: undersideMm,
        toMm: topMm,
        lowerOutsideMm: body.rimMm,
        upperOutsideMm: body.rimMm,
        floodedShare: 1,
        lowerInsideMm: body.kind === 'plant-collar' ? 0 : holeMm,
        upperInsideMm: body.kind === 'plant-collar' ? 0 : holeMm,
        insideFromMm: 0
      }
    ]
  }
  const inside = (outsideMm: number): number => Math.max(0, outsideMm - 2 * body.wallMm)
  const rimFromMm = topMm - body.rimDepthMm
  const rim: Solid = {
    fromMm: rimFromMm,
    toMm: topMm,
    lowerOutsideMm: body.rimMm,
    upperOutsideMm: body.rimMm,
    floodedShare: body.floodedShare,
    lowerInsideMm: inside(body.underRimMm),
    upperInsideMm: inside(body.underRimMm),
    insideFromMm: 0
  }
  const taper: Solid = {
    fromMm: undersideMm,
    toMm: rimFromMm,
    lowerOutsideMm: body.lowerMm,
    upperOutsideMm: body.underRimMm,
    floodedShare: body.floodedShare,
    lowerInsideMm: inside(body.lowerMm),
    upperInsideMm: inside(body.underRimMm),
    insideFromMm: body.openBelow ? 0 : Math.min(body.wallMm, rimFromMm - undersideMm)
  }
  if (rimFromMm <= undersideMm) return [rim]
  return body.flangeHoleMm === null ? [taper, rim] : [...flange(body, body.flangeHoleMm, taper), rim]
}

/** A bored bottom keeps a ring round its hole, as thick as the wall; the taper's open inside begins above it. */
function flange(body: Body, holeMm: number, taper: Solid): readonly Solid[] {
  const thickMm = Math.min(body.wallMm, taper.toMm - taper.fromMm)
  const wider = 2 * taperTangent(body) * thickMm
  const aboveMm = taper.lowerOutsideMm + wider
  const ring: Solid = {
    fromMm: taper.fromMm,
    toMm: taper.fromMm + thickMm,
    lowerOutsideMm: taper.lowerOutsideMm,
    upperOutsideMm: aboveMm,
    floodedShare: taper.floodedShare,
    lowerInsideMm: Math.min(holeMm, taper.lowerOutsideMm),
    upperInsideMm: Math.min(holeMm, taper.lowerOutsideMm),
    insideFromMm: 0
  }
  const wall: Solid = {
    ...taper,
    fromMm: ring.toMm,
    lowerOutsideMm: aboveMm,
    lowerInsideMm: Math.max(0, aboveMm - 2 * body.wallMm)
  }
  return taper.toMm > ring.toMm ? [ring, wall] : [ring]
}
