import type { Area, PlacedPlate, PlatePart } from './round-stock'
import { FIT_MM } from './round-stock'

export interface PlateFill {
  readonly placed: readonly PlacedPlate[]
  /** Rectangles that stay free, none overlapping. */
  readonly free: readonly Area[]
}

/**
 * Sets plates into an area with cuts from edge to edge: the largest first, either way up, into the free rectangle that
 * leaves the least on its shorter side; what is left of that rectangle is cut once more along its longer rest.
 */
export const plateFill = (area: Area, parts: readonly PlatePart[]): PlateFill => {
  const placed: PlacedPlate[] = []
  let free: Area[] = [area]
  const falling = [...parts].sort((a, b) => b.widthMm * b.heightMm - a.widthMm * a.heightMm)
  for (const part of falling) {
    for (let left = part.count; left > 0; left--) {
      const fit = bestFit(free, part)
      if (!fit) break
      placed.push({ needId: part.needId, ...fit.plate })
      free = free.flatMap((other) => (other === fit.from ? splitOff(other, fit.plate) : [other]))
    }
  }
  return { placed, free }
}

const bestFit = (free: readonly Area[], part: PlatePart): { readonly from: Area; readonly plate: Area } | null => {
  let best: { readonly from: Area; readonly plate: Area } | null = null
  let least = Number.POSITIVE_INFINITY
  for (const from of free) {
    for (const [widthMm, heightMm] of [
      [part.widthMm, part.heightMm],
      [part.heightMm, part.widthMm]
    ] as const) {
      const spareX = from.widthMm - widthMm
      const spareY = from.heightMm - heightMm
      if (spareX < -FIT_MM || spareY < -FIT_MM) continue
      const rest = Math.min(spareX, spareY)
      if (rest >= least) continue
      least = rest
      best = { from, plate: { xMm: from.xMm, yMm: from.yMm, widthMm, heightMm } }
    }
  }
  return best
}

const splitOff = (from: Area, plate: Area): Area[] => {
  const spareX = from.widthMm - plate.widthMm
  const spareY = from.heightMm - plate.heightMm
  const wholeRight = spareX > spareY
  const right: Area = {
    xMm: from.xMm + plate.widthMm,
    yMm: from.yMm,
    widthMm: spareX,
    heightMm: wholeRight ? from.heightMm : plate.heightMm
  }
  const above: Area = {
    xMm: from.xMm,
    yMm: from.yMm + plate.heightMm,
    widthMm: wholeRight ? plate.widthMm : from.widthMm,
    heightMm: spareY
  }
  return [right, above].filter(({ widthMm, heightMm }) => widthMm > FIT_MM && heightMm > FIT_MM)
}
