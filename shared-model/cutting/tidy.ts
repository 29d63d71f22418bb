/**
 * Of the plans that cost the same: fewer bars, then one long offcut rather than several short ones. Best effort: bars are
 * emptied into each other two at a time as long as that gains, and the cost never rises.
 */
import { type CutInstance, type CutPattern, worthLeft } from './instance'

interface Bar {
  stock: number
  /** Places of demands, one for each piece. */
  pieces: number[]
}

const MOST_SUMS = 1500
/** Pairs of bars that are tried, so that a large batch is tidied as fast as a small one. */
const MOST_TRIES = 200
const MOST_BARS = 300

export const tidied = (instance: CutInstance, patterns: readonly CutPattern[]): CutPattern[] => {
  const bars = patterns.flatMap(({ stock, times, pieces }): Bar[] =>
    Array.from({ length: times }, () => ({
      stock,
      pieces: pieces.flatMap(({ demand, qty }) => new Array<number>(qty).fill(demand))
    }))
  )
  if (bars.length > MOST_BARS) return [...patterns]
  mergeBars(instance, bars)
  for (let tries = MOST_TRIES; tries > 0; ) tries = lengthenOffcut(instance, bars, tries)
  return gathered(bars)
}

const grownOf = (instance: CutInstance, pieces: readonly number[]): number =>
  pieces.reduce((sum, demand) => sum + (instance.demand[demand]?.length ?? 0) + instance.kerf, 0)

const usableOf = (instance: CutInstance, stock: number): number => {
  const bar = instance.stock[stock]
  return bar ? bar.length - bar.trim : 0
}

const leftOf = (instance: CutInstance, bar: Bar): number =>
  Math.max(0, usableOf(instance, bar.stock) - grownOf(instance, bar.pieces))

const costOf = (instance: CutInstance, bar: Bar): number => {
  const stock = instance.stock[bar.stock]
  return stock ? stock.cost - worthLeft(stock.keep, leftOf(instance, bar)) : 0
}

/** Two bars become one where a bar of some stock holds both and costs no more. */
const mergeBars = (instance: CutInstance, bars: Bar[]): void => {
  for (let a = 0; a < bars.length; a++) {
    for (let b = bars.length - 1; b > a; b--) {
      const first = bars[a]
      const second = bars[b]
      if (!first || !second) continue
      const pieces = [...first.pieces, ...second.pieces]
      if (isTied(instance, pieces)) continue
      const grown = grownOf(instance, pieces) - instance.kerf
      const cost = costOf(instance, first) + costOf(instance, second)
      const stock = instance.stock.findIndex((bar, at) => {
        if (grown > usableOf(instance, at)) return false
        const used = bars.filter((each) => each.stock === at && each !== first && each !== second).length
        return (bar.count === null || used < bar.count) && costOf(instance, { stock: at, pieces }) <= cost
      })
      if (stock < 0) continue
      bars[a] = { stock, pieces }
      bars.splice(b, 1)
      b = bars.length
    }
  }
}

/** Pieces of one-lot groups stay where the search put them. */
const isTied = (instance: CutInstance, pieces: readonly number[]): boolean =>
  pieces.some((demand) => (instance.demand[demand]?.lotGroup ?? null) !== null)

/** Fills another bar as far as it goes from the bar with the longest leftover; says how many tries remain, 0 when none helps. */
const lengthenOffcut = (instance: CutInstance, bars: Bar[], tries: number): number => {
  let left = tries
  let longest: Bar | null = null
  for (const bar of bars) if (longest === null || leftOf(instance, bar) > leftOf(instance, longest)) longest = bar
  if (longest === null) return 0
  for (const other of bars) {
    if (other === longest || leftOf(instance, other) === 0) continue
    if (left-- <= 0) return 0
    const pool = [...other.pieces, ...longest.pieces]
    if (isTied(instance, pool)) continue
    const taken = fullest(instance, pool, usableOf(instance, other.stock) + instance.kerf)
    if (taken === null) continue
    const fuller = { stock: other.stock, pieces: pool.filter((_, at) => taken.has(at)) }
    const emptier = { stock: longest.stock, pieces: pool.filter((_, at) => !taken.has(at)) }
    if (grownOf(instance, emptier.pieces) > usableOf(instance, longest.stock) + instance.kerf) continue
    if (leftOf(instance, emptier) <= leftOf(instance, longest)) continue
    const before = costOf(instance, other) + costOf(instance, longest)
    if (costOf(instance, fuller) + costOf(instance, emptier) > before) continue
    other.pieces = fuller.pieces
    longest.pieces = emptier.pieces
    return left
  }
  return 0
}

/** The places of the pieces that fill the room best; null when there are too many sums to look at. */
const fullest = (instance: CutInstance, pool: readonly number[], room: number): ReadonlySet<number> | null => {
  const sums = new Map<number, { readonly before: number; readonly at: number }>([[0, { before: -1, at: -1 }]])
  for (const [at, demand] of pool.entries()) {
    const grown = (instance.demand[demand]?.length ?? 0) + instance.kerf
    for (const sum of [...sums.keys()]) {
      if (sum + grown <= room && !sums.has(sum + grown)) sums.set(sum + grown, { before: sum, at })
    }
    if (sums.size > MOST_SUMS) return null
  }
  const taken = new Set<number>()
  for (let sum = Math.max(...sums.keys()); sum > 0; ) {
    const step = sums.get(sum)
    if (!step) return null
    taken.add(step.at)
    sum = step.before
  }
  return taken
}

const gathered = (bars: readonly Bar[]): CutPattern[] => {
  const found = new Map<string, { stock: number; times: number; pieces: { demand: number; qty: number }[] }>()
  for (const bar of bars) {
    if (bar.pieces.length === 0) continue
    const sorted = [...bar.pieces].sort((a, b) => a - b)
    const key = `${bar.stock}|${sorted}`
    const known = found.get(key)
    if (known) known.times++
    else {
      const demands = [...new Set(sorted)]
      const pieces = demands.map((demand) => ({ demand, qty: sorted.filter((each) => each === demand).length }))
      found.set(key, { stock: bar.stock, times: 1, pieces })
    }
  }
  return [...found.values()]
}
