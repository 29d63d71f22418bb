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
import type { Basin } from './basin'
import { gauss } from './gauss'

export function displacedBelow(basin: Basin, solids: readonly Solid[], levelMm: number): number {
  const topMm = Math.min(levelMm, basin.insideHeightMm)
  if (topMm <= 0) return 0
  const freeMm = Math.min(topMm, basin.freeToMm)
  let volume = 0
  for (const solid of solids) volume += solidBelow(solid, freeMm)
  if (topMm > freeMm) {
    volume += gauss(freeMm, topMm, (heightMm) => {
      const widthMm = surfaceWidth(basin.section, mm(heightMm))
      let area = 0
      for (const solid of solids) area += solidAreaBetween(solid, heightMm, widthMm)
      return area
    })
  }
  return volume
}

/** Solid volume of one body between the channel's floor and a height, mm³. */
export function solidBelow(solid: Solid, heightMm: number): number {
  const outside = frustumBetween(solid.fromMm, solid.toMm, solid.lowerOutsideMm, solid.upperOutsideMm, heightMm)
  if (solid.floodedShare === 0) return outside
  const insideFromMm = solid.fromMm + solid.insideFromMm
  return (
    outside -
    solid.floodedShare * frustumBetween(insideFromMm, solid.toMm, solid.lowerInsideMm, solid.upperInsideMm, heightMm)
  )
}

function frustumBetween(fromMm: number, toMm: number, lowerMm: number, upperMm: number, heightMm: number): number {
  const low = Math.max(fromMm, 0)
  const high = Math.min(toMm, heightMm)
  if (high <= low || toMm <= fromMm) return 0
  const rate = (upperMm - lowerMm) / (toMm - fromMm)
  const a = lowerMm + rate * (low - fromMm)
  const b = lowerMm + rate * (high - fromMm)
  return (Math.PI / 12) * (high - low) * (a * a + a * b + b * b)
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
