import type { EqualLayout } from './band-fill'
import { fillSheet } from './fill-sheet'
import type { Area, Filled, Parts } from './round-stock'
import { areaOf, nothingLeft, partsLeft } from './round-stock'
import { leastCover } from './sheet-cover'

/** A sheet kind as the choice sees it. */
export interface ChoiceKind {
  readonly cost: number
  readonly count: number | null
  readonly field: Area
  readonly isOffcut: boolean
}

interface ChosenSheet {
  readonly kind: number
  readonly filled: Filled
}

export interface Choice {
  readonly sheets: readonly ChosenSheet[]
  readonly left: Parts
  readonly cost: number
}

/**
 * Sheets for a batch of parts, filled: first sheet by sheet (the cheapest that takes all that is left, else the one
 * that takes most for its cost), then the choices that a least cover names for ever more cautious fillings, cheapest
 * first, as long as they are cheaper than the best so far. Stops at `lowerBound`, which nothing can beat.
 */
export const chooseSheets = (
  kinds: readonly ChoiceKind[],
  parts: Parts,
  layout: EqualLayout,
  lowerBound: number,
  attempts: number
): Choice => {
  const known = rememberedLayout(layout)
  const fill = remembered(kinds, known)
  let best = sheetBySheet(kinds, parts, fill)
  const tried = new Set<string>()
  for (const taken of covers(kinds, parts, known)) {
    if (tried.size >= attempts || (nothingLeft(best.left) && best.cost <= lowerBound)) break
    const cost = taken.reduce((sum, n, k) => sum + n * (kinds[k]?.cost ?? 0), 0)
    const key = taken.join()
    if (tried.has(key) || (nothingLeft(best.left) && cost >= best.cost)) continue
    tried.add(key)
    const choice = fillAll(kinds, taken, parts, fill)
    if (nothingLeft(choice.left)) best = choice
  }
  return best
}

type Fill = (kind: number, left: Parts) => Filled

/** The same circles in a field of the same size lie the same: set out once. */
const rememberedLayout = (layout: EqualLayout): EqualLayout => {
  const known = new Map<string, ReturnType<EqualLayout>>()
  return (acrossMm, widthMm, heightMm) => {
    const key = `${acrossMm} ${widthMm} ${heightMm}`
    const centres = known.get(key) ?? layout(acrossMm, widthMm, heightMm)
    known.set(key, centres)
    return centres
  }
}

/**
 * A sheet of one kind filled from the same parts comes out the same: worked out once. Circles of one size alone fill it
 * alike however many more there are than it holds.
 */
const remembered = (kinds: readonly ChoiceKind[], layout: EqualLayout): Fill => {
  const known = new Map<string, Filled>()
  return (kind, left) => {
    const field = kinds[kind]?.field
    const only = left.plates.length === 0 && left.rounds.length === 1 ? left.rounds[0] : undefined
    const most = only && field ? layout(only.acrossMm, field.widthMm, field.heightMm).length : Number.POSITIVE_INFINITY
    const counts = [...left.rounds, ...left.plates].map(({ needId, count }) => `${needId}\n${Math.min(count, most)}`)
    const key = [kind, ...counts].join('\n')
    const filled = known.get(key) ?? (field ? fillSheet(field, left, layout) : { rounds: [], plates: [] })
    known.set(key, filled)
    return filled
  }
}

const sheetBySheet = (kinds: readonly ChoiceKind[], parts: Parts, fill: Fill): Choice => {
  const used = kinds.map(() => 0)
  const sheets: ChosenSheet[] = []
  let left = parts
  let cost = 0
  while (!nothingLeft(left)) {
    let best: (ChosenSheet & { readonly left: Parts; readonly all: boolean; readonly rank: number }) | null = null
    for (const [k, kind] of kinds.entries()) {
      if (kind.count !== null && (used[k] as number) >= kind.count) continue
      const filled = fill(k, left)
      const after = partsLeft(left, filled)
      const taken = areaOf(left) - areaOf(after)
      if (taken <= 0) continue
      const all = nothingLeft(after)
      const rank = all ? -kind.cost : taken / Math.max(kind.cost, 1e-9)
      if (!best || (all && !best.all) || (all === best.all && rank > best.rank)) {
        best = { kind: k, filled, left: after, all, rank }
      }
    }
    if (!best) break
    used[best.kind] = (used[best.kind] as number) + 1
    cost += kinds[best.kind]?.cost ?? 0
    sheets.push({ kind: best.kind, filled: best.filled })
    left = best.left
  }
  return { sheets, left, cost }
}

const SHARES = 1000
/** Shares of a field that mixed parts may fill, from more than they can to little. */
const FILLINGS = [1.02, 0.98, 0.95, 0.92, 0.89, 0.86, 0.83, 0.8, 0.76, 0.72, 0.67, 0.6, 0.5]

/** Choices of sheets to try, from the most hopeful to the most cautious. */
const covers = (kinds: readonly ChoiceKind[], parts: Parts, layout: EqualLayout): readonly (readonly number[])[] => {
  const only = parts.rounds.length === 1 && parts.plates.length === 0 ? parts.rounds[0] : undefined
  if (only) {
    const holds = (field: Area) => layout(only.acrossMm, field.widthMm, field.heightMm).length
    const cover = leastCover(
      kinds.map((kind) => ({ ...kind, holds: holds(kind.field) })),
      only.count
    )
    return cover ? [cover.taken] : []
  }
  const area = areaOf(parts)
  return FILLINGS.flatMap((filling) => {
    const cover = leastCover(
      kinds.map((kind) => ({
        ...kind,
        holds: Math.floor((SHARES * filling * kind.field.widthMm * kind.field.heightMm) / area)
      })),
      SHARES
    )
    return cover ? [cover.taken] : []
  }).sort((a, b) => costOf(kinds, a) - costOf(kinds, b))
}

const costOf = (kinds: readonly ChoiceKind[], taken: readonly number[]): number =>
  taken.reduce((sum, n, k) => sum + n * (kinds[k]?.cost ?? 0), 0)

/** Fills the chosen sheets, offcuts first, then the largest, so that the last one keeps the most whole. */
const fillAll = (kinds: readonly ChoiceKind[], taken: readonly number[], parts: Parts, fill: Fill): Choice => {
  const order = taken
    .flatMap((n, k) => new Array<number>(n).fill(k))
    .sort((a, b) => rankOf(kinds[a]) - rankOf(kinds[b]) || a - b)
  const sheets: ChosenSheet[] = []
  let left = parts
  for (const kind of order) {
    if (nothingLeft(left)) break
    const filled = fill(kind, left)
    if (filled.rounds.length + filled.plates.length === 0) continue
    sheets.push({ kind, filled })
    left = partsLeft(left, filled)
  }
  return { sheets, left, cost: sheets.reduce((sum, { kind }) => sum + (kinds[kind]?.cost ?? 0), 0) }
}

const rankOf = (kind: ChoiceKind | undefined): number => {
  if (!kind) return 0
  const area = kind.field.widthMm * kind.field.heightMm
  return kind.isOffcut ? -1e12 + area : -area
}
