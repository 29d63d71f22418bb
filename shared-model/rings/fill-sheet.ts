import type { EqualLayout } from './band-fill'
import { bandFill } from './band-fill'
import { cornerFill } from './corner-fill'
import { plateFill } from './plate-fill'
import type { Area, Filled, Parts, PlacedRound, RoundPart } from './round-stock'
import { areaOf, partsLeft } from './round-stock'

/**
 * Sets as many parts as it can on one sheet: plates first, edge to edge, then circles into the rectangles that stay
 * free, in bands and corner by corner, along the sheet and across it; the filling that takes most material is kept.
 */
export const fillSheet = (field: Area, parts: Parts, layout: EqualLayout): Filled => {
  const withPlates = fillAfterPlates(field, parts, layout)
  if (parts.plates.length === 0 || parts.rounds.length === 0) return withPlates
  const roundsOnly = { rounds: bestRounds(field, parts.rounds, layout), plates: [] }
  return takenBy(parts, roundsOnly) > takenBy(parts, withPlates) ? roundsOnly : withPlates
}

const takenBy = (parts: Parts, filled: Filled): number => areaOf(parts) - areaOf(partsLeft(parts, filled))

const fillAfterPlates = (field: Area, parts: Parts, layout: EqualLayout): Filled => {
  const { placed, free } = plateFill(field, parts.plates)
  const rounds: PlacedRound[] = []
  let left = parts
  for (const area of [...free].sort((a, b) => b.widthMm * b.heightMm - a.widthMm * a.heightMm)) {
    if (left.rounds.length === 0) break
    const more = bestRounds(area, left.rounds, layout)
    rounds.push(...more)
    left = partsLeft(left, { rounds: more, plates: [] })
  }
  return { rounds, plates: placed }
}

const bestRounds = (area: Area, parts: readonly RoundPart[], layout: EqualLayout): readonly PlacedRound[] => {
  const across: EqualLayout = (acrossMm, widthMm, heightMm) =>
    layout(acrossMm, heightMm, widthMm).map(([x, y]) => [y, x] as const)
  const tries = [() => bandFill(area, parts, layout)]
  if (parts.length > 1) {
    tries.push(
      () => cornerFill(area, parts),
      () => turned(bandFill(turnedArea(area), parts, across)),
      () => turned(cornerFill(turnedArea(area), parts))
    )
  }
  const wanted = parts.reduce((sum, { count }) => sum + count, 0)
  let best: readonly PlacedRound[] = []
  let most = -1
  for (const attempt of tries) {
    const placed = attempt()
    const taken = placed.reduce((sum, { acrossMm }) => sum + acrossMm * acrossMm, 0)
    if (taken > most) {
      best = placed
      most = taken
    }
    if (best.length === wanted) break
  }
  return best
}

const turnedArea = (area: Area): Area => ({
  xMm: area.yMm,
  yMm: area.xMm,
  widthMm: area.heightMm,
  heightMm: area.widthMm
})

const turned = (placed: readonly PlacedRound[]): readonly PlacedRound[] =>
  placed.map((circle) => ({ ...circle, xMm: circle.yMm, yMm: circle.xMm }))
