import { type Grown, worthAt } from './grown'

/** A way to cut one bar, in the solver's terms. */
export interface Pattern {
  /** Place in `grown.stock`. */
  readonly stock: number
  /** Sizes in it, rising place (so falling size), and how many of each. */
  readonly kinds: readonly number[]
  readonly counts: readonly number[]
  readonly fill: number
  /** Cost of the bar less the worth of what is left. */
  readonly cost: number
}

export interface TimedPattern {
  readonly pattern: Pattern
  readonly times: number
}

export interface BarsFound {
  readonly patterns: readonly TimedPattern[]
  readonly cost: number
}

export const makePattern = (
  grown: Grown,
  stock: number,
  kinds: readonly number[],
  counts: readonly number[]
): Pattern => {
  const bar = grown.stock[stock]
  if (!bar) throw new RangeError(`no stock ${stock}`)
  let fill = 0
  for (let j = 0; j < kinds.length; j++) fill += (grown.size[kinds[j] ?? 0] ?? 0) * (counts[j] ?? 0)
  return { stock, kinds, counts, fill, cost: bar.cost - worthAt(grown, bar, fill) }
}

export const patternKey = (pattern: Pattern): string => `${pattern.stock}|${pattern.kinds}|${pattern.counts}`

export const barsFound = (patterns: readonly TimedPattern[]): BarsFound => ({
  patterns,
  cost: patterns.reduce((sum, { pattern, times }) => sum + pattern.cost * times, 0)
})

/** Takes surplus pieces out, so that every piece is cut once; a bar that holds none is dropped; null: pieces are missing. */
export const withoutSurplus = (
  grown: Grown,
  patterns: readonly TimedPattern[],
  qty: Float64Array
): BarsFound | null => {
  const left = Float64Array.from(qty)
  const kept: TimedPattern[] = []
  for (const { pattern, times } of patterns) {
    let rest = times
    while (rest > 0) {
      const counts = pattern.kinds.map((kind, j) => Math.min(pattern.counts[j] ?? 0, left[kind] ?? 0))
      const whole = counts.every((n, j) => n === pattern.counts[j])
      let run = 1
      if (whole) {
        run = rest
        pattern.kinds.forEach((kind, j) => {
          run = Math.min(run, Math.floor((left[kind] ?? 0) / (pattern.counts[j] ?? 1)))
        })
      }
      pattern.kinds.forEach((kind, j) => {
        left[kind] = (left[kind] ?? 0) - (counts[j] ?? 0) * run
      })
      rest -= run
      if (whole) kept.push({ pattern, times: run })
      else if (counts.some((n) => n > 0)) {
        const used = pattern.kinds.filter((_, j) => (counts[j] ?? 0) > 0)
        kept.push({
          pattern: makePattern(
            grown,
            pattern.stock,
            used,
            counts.filter((n) => n > 0)
          ),
          times: 1
        })
      } else break
    }
  }
  return left.every((n) => n === 0) ? barsFound(kept) : null
}
