/**
 * How far a channel can be tilted before it tips.
 *
 * Angle to tip = atan(distance from the mass centre's foot to the nearest edge of the support polygon ÷ height of the mass
 * centre); the sill's own fall is taken off. The polygon is the hull of what the channel stands on, as far as the sill
 * reaches under it. Distances and heights in mm, angles in degrees. Valid: distance 0 to 10⁵, height over 0 to 10⁵.
 * @source tipping-angle
 */
import type { Outline, SillSize } from '../layout'
import { failed, ok, type Result } from '../outcome'
import type { Mm } from '../units'
import type { StructureProblem } from './codes'
import { within } from './within'

export function tipAngleDeg(edgeDistanceMm: Mm, massCentreHeightMm: Mm): Result<number, StructureProblem> {
  const wrong =
    within('distance to the edge', edgeDistanceMm, 0, 100_000) ??
    within('height of the mass centre', massCentreHeightMm, 1e-6, 100_000)
  return wrong ? failed(wrong) : ok((Math.atan(edgeDistanceMm / massCentreHeightMm) * 180) / Math.PI)
}

interface Point {
  readonly x: number
  readonly y: number
}

/** Corners of the hull of rectangles, each cut to the sill, anticlockwise; empty when none of them is over the sill. */
export function supportPolygon(feet: readonly Outline[], sill: SillSize): readonly Point[] {
  const points: Point[] = []
  for (const foot of feet) {
    const left = Math.max(foot.xMm, 0)
    const right = Math.min(foot.xMm + foot.lengthMm, sill.lengthMm)
    const front = Math.max(foot.yMm, 0)
    const back = Math.min(foot.yMm + foot.depthMm, sill.depthMm)
    if (right < left || back < front) continue
    points.push({ x: left, y: front }, { x: right, y: front }, { x: right, y: back }, { x: left, y: back })
  }
  return hull(points)
}

/** Distance from a foot to the nearest edge of a polygon, mm: positive inside, negative outside; null without a polygon. */
export function edgeDistance(polygon: readonly Point[], xMm: number, yMm: number): number | null {
  if (polygon.length === 0) return null
  if (polygon.length < 3) return -distanceToEdges(polygon, xMm, yMm)
  let inside = Number.POSITIVE_INFINITY
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a
    const side = Math.hypot(b.x - a.x, b.y - a.y)
    if (side > 0) inside = Math.min(inside, ((b.x - a.x) * (yMm - a.y) - (b.y - a.y) * (xMm - a.x)) / side)
  })
  return inside >= 0 ? inside : -distanceToEdges(polygon, xMm, yMm)
}

function distanceToEdges(polygon: readonly Point[], xMm: number, yMm: number): number {
  let nearest = Number.POSITIVE_INFINITY
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a
    const squared = (b.x - a.x) ** 2 + (b.y - a.y) ** 2
    const t =
      squared > 0 ? Math.min(1, Math.max(0, ((xMm - a.x) * (b.x - a.x) + (yMm - a.y) * (b.y - a.y)) / squared)) : 0
    nearest = Math.min(nearest, Math.hypot(xMm - a.x - t * (b.x - a.x), yMm - a.y - t * (b.y - a.y)))
  })
  return nearest
}

/** Convex hull by the monotone chain; points on an edge are left out. */
function hull(points: readonly Point[]): readonly Point[] {
  const order = [...points].sort((a, b) => a.x - b.x || a.y - b.y)
  if (order.length < 3) return order
  const half = (list: readonly Point[]): Point[] => {
    const chain: Point[] = []
    for (const point of list) {
      while (chain.length >= 2) {
        const a = chain[chain.length - 2]
        const b = chain[chain.length - 1]
        if (!a || !b || (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x) > 1e-9) break
        chain.pop()
      }
      chain.push(point)
    }
    chain.pop()
    return chain
  }
  return [...half(order), ...half(order.reverse())]
}
