import type { Area, PlacedRound, RoundPart } from './round-stock'
import { FIT_MM } from './round-stock'

/**
 * Sets circles of mixed sizes into an area one by one, the widest first, each at the lowest place (then the leftmost)
 * where it touches two others or the edges. Circles already there stay. Equal circles come out in hexagonal rows.
 */
export const cornerFill = (
  area: Area,
  parts: readonly RoundPart[],
  there: readonly PlacedRound[] = []
): readonly PlacedRound[] => {
  const placed: PlacedRound[] = [...there]
  for (const part of [...parts].sort((a, b) => b.acrossMm - a.acrossMm)) placeAll(area, part, placed)
  return placed.slice(there.length)
}

type Spot = readonly [x: number, y: number]

const placeAll = (area: Area, part: RoundPart, placed: PlacedRound[]): void => {
  const radius = part.acrossMm / 2
  if (part.acrossMm > Math.min(area.widthMm, area.heightMm) + FIT_MM) return
  let spots = cornersOf(area, radius).filter((spot) => isFree(spot, radius, placed))
  for (const [i, circle] of placed.entries()) {
    spots.push(...spotsAt(area, radius, circle, placed.slice(0, i)).filter((spot) => isFree(spot, radius, placed)))
  }
  for (let left = part.count; left > 0 && spots.length > 0; left--) {
    const spot = spots.reduce((low, other) => (isLower(other, low) ? other : low))
    const circle: PlacedRound = { needId: part.needId, xMm: spot[0], yMm: spot[1], acrossMm: part.acrossMm }
    const fresh = spotsAt(area, radius, circle, placed)
    placed.push(circle)
    spots = spots.filter((other) => isFree(other, radius, [circle]))
    spots.push(...fresh.filter((other) => isFree(other, radius, placed)))
  }
}

const isLower = (a: Spot, b: Spot): boolean => a[1] < b[1] - FIT_MM || (a[1] < b[1] + FIT_MM && a[0] < b[0])

const cornersOf = (area: Area, radius: number): Spot[] => {
  const left = area.xMm + radius
  const right = area.xMm + area.widthMm - radius
  const low = area.yMm + radius
  const high = area.yMm + area.heightMm - radius
  return [
    [left, low],
    [right, low],
    [left, high],
    [right, high]
  ]
}

/** Where a circle touches the given one and an edge, or the given one and one of the others. */
const spotsAt = (area: Area, radius: number, circle: PlacedRound, others: readonly PlacedRound[]): Spot[] => {
  const reach = radius + circle.acrossMm / 2
  const spots: Spot[] = []
  for (const x of [area.xMm + radius, area.xMm + area.widthMm - radius]) {
    const square = reach * reach - (x - circle.xMm) ** 2
    if (square >= 0) spots.push([x, circle.yMm + Math.sqrt(square)], [x, circle.yMm - Math.sqrt(square)])
  }
  for (const y of [area.yMm + radius, area.yMm + area.heightMm - radius]) {
    const square = reach * reach - (y - circle.yMm) ** 2
    if (square >= 0) spots.push([circle.xMm + Math.sqrt(square), y], [circle.xMm - Math.sqrt(square), y])
  }
  for (const other of others) {
    for (const spot of between(circle, reach, other, radius + other.acrossMm / 2)) spots.push(spot)
  }
  return spots.filter((spot) => isInside(area, radius, spot))
}

const between = (a: PlacedRound, reachA: number, b: PlacedRound, reachB: number): Spot[] => {
  const dx = b.xMm - a.xMm
  const dy = b.yMm - a.yMm
  const most = reachA + reachB
  if (dx > most || dx < -most || dy > most || dy < -most) return []
  const apart = Math.hypot(dx, dy)
  if (apart > most || apart < 1e-9) return []
  const along = (apart * apart + reachA * reachA - reachB * reachB) / (2 * apart)
  const square = reachA * reachA - along * along
  if (square < 0) return []
  const off = Math.sqrt(square)
  const x = a.xMm + (along * dx) / apart
  const y = a.yMm + (along * dy) / apart
  return [
    [x - (off * dy) / apart, y + (off * dx) / apart],
    [x + (off * dy) / apart, y - (off * dx) / apart]
  ]
}

const isInside = (area: Area, radius: number, [x, y]: Spot): boolean =>
  x >= area.xMm + radius - FIT_MM &&
  x <= area.xMm + area.widthMm - radius + FIT_MM &&
  y >= area.yMm + radius - FIT_MM &&
  y <= area.yMm + area.heightMm - radius + FIT_MM

const isFree = ([x, y]: Spot, radius: number, placed: readonly PlacedRound[]): boolean => {
  for (const circle of placed) {
    const reach = radius + circle.acrossMm / 2 - FIT_MM
    const dx = x - circle.xMm
    if (dx >= reach || dx <= -reach) continue
    const dy = y - circle.yMm
    if (dx * dx + dy * dy < reach * reach) return false
  }
  return true
}
