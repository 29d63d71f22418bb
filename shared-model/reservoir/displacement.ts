/**
 * Room that the parts standing in a channel take up below a level.
 *
 * Displaced volume = outside of each body below the level − flooded share × its inside below the level. A taper between two
 * heights is a frustum: π/12 × height × (D² + D d + d²). Near the crown of a round pipe, or in a corner radius, the bore's
 * surface is narrower than the part: there only the part of the disc between the walls counts, by five-point Gauss quadrature.
 *
 * Heights and diameters in mm, volume in mm³. Displacement never exceeds the bodies' own volume.
 * @source frustum-solutions
 */
import { surfaceWidth } from '../profile'
import type { Solid } from '../seating'
import { mm } from '../units'
import type { Basin, Stand } from './basin'
import { conesBelow } from './cones'
import { gauss } from './gauss'

export function displacedBelow(basin: Basin, stand: Stand, levelMm: number): number {
  const topMm = Math.min(levelMm, basin.insideHeightMm)
  if (topMm <= 0) return 0
  if (topMm <= basin.freeToMm) return conesBelow(stand.cones, topMm)
  const between = gauss(basin.freeToMm, topMm, (heightMm) => {
    const widthMm = surfaceWidth(basin.section, mm(heightMm))
    let area = 0
    for (const solid of stand.solids) area += solidAreaBetween(solid, heightMm, widthMm)
    return area
  })
  return conesBelow(stand.cones, basin.freeToMm) + between
}

function solidAreaBetween(solid: Solid, heightMm: number, widthMm: number): number {
  if (heightMm < solid.fromMm || heightMm > solid.toMm) return 0
  const run = solid.toMm - solid.fromMm
  const share = run > 0 ? (heightMm - solid.fromMm) / run : 1
  const outsideMm = solid.lowerOutsideMm + (solid.upperOutsideMm - solid.lowerOutsideMm) * share
  const outside = discInStrip(outsideMm, widthMm)
  if (solid.floodedShare === 0 || heightMm < solid.fromMm + solid.insideFromMm) return outside
  const insideMm = solid.lowerInsideMm + (solid.upperInsideMm - solid.lowerInsideMm) * share
  return outside - solid.floodedShare * discInStrip(insideMm, widthMm)
}

/** Area of a disc that lies inside a strip of a width about its middle. */
function discInStrip(diameterMm: number, widthMm: number): number {
  if (widthMm >= diameterMm) return (Math.PI / 4) * diameterMm * diameterMm
  const radius = diameterMm / 2
  const half = widthMm / 2
  return 2 * (half * Math.sqrt(radius * radius - half * half) + radius * radius * Math.asin(half / radius))
}
