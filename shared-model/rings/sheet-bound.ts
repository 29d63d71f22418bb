import { circleBound } from './circle-bound'
import type { Area, Parts } from './round-stock'
import type { CoverKind } from './sheet-cover'
import { leastCover } from './sheet-cover'

/** A sheet kind with its usable field (see `round-stock`). */
export interface BoundKind {
  readonly cost: number
  readonly count: number | null
  readonly field: Area
}

/**
 * Answers: what must the sheets for these parts cost at least?
 *
 * Three relaxations, each a least cover of its own; the greatest rules.
 * - Count: parts at least as wide as d number no more than equal circles of width d do on each sheet (circle bound).
 * - Circles of widths from s to 1 (scaled): laid side by side, copies of the sheet pack the plane, where Florian's
 *   density (π s² + 2 (1 − s²) asin(s/(1+s))) / (2 s √(1+2s)) is never exceeded. s is the ratio of the least to the
 *   greatest width among the circles taken into account, here all circles above each width in turn.
 * - Area: circles at that density's limit 1 and plates at their own area take no more than the field.
 * null: the sheets on hand cannot hold the parts by any of these bounds.
 * @source oler-1961
 * @source florian-1960
 */
export const sheetBound = (kinds: readonly BoundKind[], parts: Parts): number | null => {
  const demands = relaxations(parts)
  let least = 0
  for (const { demand, holds } of demands) {
    const cover = leastCover(
      kinds.map((kind): CoverKind => ({ cost: kind.cost, count: kind.count, holds: holds(kind.field) })),
      demand
    )
    if (!cover) return null
    least = Math.max(least, cover.cost)
  }
  return least
}

interface Relaxation {
  readonly demand: number
  readonly holds: (field: Area) => number
}

/** Areas are counted in thousandths of the demand, a sheet's rounded up: still a bound. */
const SHARES = 1000
const ROUNDING = 1e-9

const relaxations = (parts: Parts): readonly Relaxation[] => {
  const rounds = [...parts.rounds].sort((a, b) => b.acrossMm - a.acrossMm)
  const greatest = rounds[0]?.acrossMm ?? 1
  const all: Relaxation[] = []
  let count = 0
  let area = 0
  for (const round of rounds) {
    count += round.count
    area += (Math.PI / 4) * round.acrossMm ** 2 * round.count
    const wide = round.acrossMm
    const density = florian(wide / greatest)
    all.push({ demand: count, holds: (field) => circleBound(fieldOf(field, wide)) })
    all.push(byArea(area, density))
  }
  if (parts.plates.length > 0) {
    const plates = parts.plates.reduce((sum, { widthMm, heightMm, count: n }) => sum + widthMm * heightMm * n, 0)
    all.push(byArea(area + plates, 1))
  }
  return all
}

const byArea = (area: number, density: number): Relaxation => ({
  demand: SHARES,
  holds: (field) =>
    Math.ceil((SHARES * density * field.widthMm * field.heightMm * (1 + ROUNDING)) / Math.max(area, ROUNDING))
})

const fieldOf = (field: Area, acrossMm: number) => ({
  acrossMm: field.widthMm - acrossMm,
  upMm: field.heightMm - acrossMm,
  apartMm: acrossMm,
  marginMm: 0
})

const florian = (s: number): number =>
  (Math.PI * s * s + 2 * (1 - s * s) * Math.asin(s / (1 + s))) / (2 * s * Math.sqrt(1 + 2 * s))
