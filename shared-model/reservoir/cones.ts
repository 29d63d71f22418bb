import type { Solid } from '../seating'

/** One frustum of a body from the floor up: the outside counts whole, the flooded inside is taken off by its share. */
export interface Cone {
  readonly fromMm: number
  readonly toMm: number
  /** Diameter at the lower edge, and by how much it grows with each mm. */
  readonly lowerMm: number
  readonly rate: number
  readonly share: number
}

/** Solid volume of one body between the channel's floor and a height, mm³. */
export const solidBelow = (solid: Solid, heightMm: number): number =>
  conesBelow(conesOf([solid], Number.POSITIVE_INFINITY), heightMm)

/** The frustums of bodies that reach below a height; what stands wholly above it is left out. */
export function conesOf(solids: readonly Solid[], belowMm: number): readonly Cone[] {
  const cones: Cone[] = []
  for (const solid of solids) {
    const insideFromMm = solid.fromMm + solid.insideFromMm
    addCone(cones, solid.fromMm, solid.toMm, solid.lowerOutsideMm, solid.upperOutsideMm, 1, belowMm)
    addCone(cones, insideFromMm, solid.toMm, solid.lowerInsideMm, solid.upperInsideMm, -solid.floodedShare, belowMm)
  }
  return cones
}

function addCone(
  cones: Cone[],
  fromMm: number,
  toMm: number,
  lowerMm: number,
  upperMm: number,
  share: number,
  belowMm: number
): void {
  const low = Math.max(fromMm, 0)
  if (share === 0 || toMm <= low || low >= belowMm) return
  const rate = (upperMm - lowerMm) / (toMm - fromMm)
  cones.push({ fromMm: low, toMm, lowerMm: lowerMm + rate * (low - fromMm), rate, share })
}

/** The frustum formula, worked from the lower edge up: pi/4 × x × (d² + d k x + k² x² / 3), d the lower diameter, k its rate. */
export function conesBelow(cones: readonly Cone[], heightMm: number): number {
  let volume = 0
  for (const { fromMm, toMm, lowerMm, rate, share } of cones) {
    if (heightMm <= fromMm) continue
    const x = Math.min(heightMm, toMm) - fromMm
    const kx = rate * x
    volume += share * x * (lowerMm * (lowerMm + kx) + (kx * kx) / 3)
  }
  return (Math.PI / 4) * volume
}
