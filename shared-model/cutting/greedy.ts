/**
 * A first plan without any search: bar by bar, longest piece first, from the stock that is cheapest for what it takes.
 */
import type { Grown } from './grown'
import { type BarsFound, barsFound, makePattern, type Pattern, type TimedPattern } from './pattern'

/** Cuts `qty` of every size from at most `count` bars of each stock; null when the stock does not reach. */
export const greedyBars = (grown: Grown, qty: Float64Array, count: Float64Array): BarsFound | null => {
  const { found, left } = greedyPart(grown, qty, count)
  return left.every((n) => n === 0) ? found : null
}

/** As much as the stock reaches for, and what is left over. */
export const greedyPart = (
  grown: Grown,
  qty: Float64Array,
  count: Float64Array
): { readonly found: BarsFound; readonly left: Float64Array } => {
  const left = Float64Array.from(qty)
  const bars = Float64Array.from(count)
  let pieces = left.reduce((sum, n) => sum + n, 0)
  const found: TimedPattern[] = []
  while (pieces > 0) {
    const best = cheapestFill(grown, left, bars, pieces)
    if (best === null) break
    let times = bars[best.stock] ?? 0
    best.kinds.forEach((kind, j) => {
      times = Math.min(times, Math.floor((left[kind] ?? 0) / (best.counts[j] ?? 1)))
    })
    best.kinds.forEach((kind, j) => {
      const taken = (best.counts[j] ?? 0) * times
      left[kind] = (left[kind] ?? 0) - taken
      pieces -= taken
    })
    bars[best.stock] = (bars[best.stock] ?? 0) - times
    found.push({ pattern: best, times })
  }
  return { found: barsFound(found), left }
}

const cheapestFill = (grown: Grown, left: Float64Array, bars: Float64Array, pieces: number): Pattern | null => {
  let best: Pattern | null = null
  let bestRate = Number.POSITIVE_INFINITY
  let lastCost = Number.POSITIVE_INFINITY
  for (let s = 0; s < grown.stock.length; s++) {
    if ((bars[s] ?? 0) <= 0) continue
    const pattern = longestFirst(grown, left, s)
    if (pattern === null) continue
    const all = pattern.counts.reduce((sum, n) => sum + n, 0) === pieces
    const rate = pattern.cost / pattern.fill
    if (all ? pattern.cost < lastCost : lastCost === Number.POSITIVE_INFINITY && rate < bestRate) {
      best = pattern
      if (all) lastCost = pattern.cost
      else bestRate = rate
    }
  }
  return best
}

const longestFirst = (grown: Grown, left: Float64Array, stock: number): Pattern | null => {
  const bar = grown.stock[stock]
  if (!bar) return null
  const allowed = grown.allowed[bar.lotClass] ?? null
  let room = bar.capacity
  const kinds: number[] = []
  const counts: number[] = []
  for (let i = 0; i < grown.kinds && room > 0; i++) {
    const size = grown.size[i] ?? 0
    if (size > room || (left[i] ?? 0) === 0 || (allowed !== null && allowed[i] === 0)) continue
    const n = Math.min(left[i] ?? 0, Math.floor(room / size))
    kinds.push(i)
    counts.push(n)
    room -= n * size
  }
  return kinds.length === 0 ? null : makePattern(grown, stock, kinds, counts)
}
