import type { CutInstance } from '../../shared-model/cutting'

/**
 * Least cost of an instance of a few pieces by trying everything: every set of pieces on one bar of every stock, every way
 * to share the pieces out over bars, every choice of lots. Null: the stock does not reach.
 */
export const bruteForce = (instance: CutInstance): number | null => {
  const groups = [...new Set(instance.demand.flatMap(({ lotGroup }) => (lotGroup === null ? [] : [lotGroup])))]
  const lots = [...new Set(instance.stock.map(({ lot }) => lot))]
  let least: number | null = null
  const choose = (at: number, lotOf: ReadonlyMap<number, number>): void => {
    const group = groups[at]
    if (group === undefined) {
      const cost = withLots(instance, lotOf)
      if (cost !== null && (least === null || cost < least)) least = cost
    } else for (const lot of lots) choose(at + 1, new Map([...lotOf, [group, lot]]))
  }
  choose(0, new Map())
  return least
}

const withLots = (instance: CutInstance, lotOf: ReadonlyMap<number, number>): number | null => {
  const pieces = instance.demand.flatMap(({ length, qty, lotGroup }) =>
    Array.from({ length: qty }, () => ({ length, lot: lotGroup === null ? null : (lotOf.get(lotGroup) ?? null) }))
  )
  const everything = 2 ** pieces.length - 1
  const known = new Map<string, number | null>()
  const rest = (left: number, used: readonly number[]): number | null => {
    if (left === 0) return 0
    const key = `${left} ${used}`
    const before = known.get(key)
    if (before !== undefined) return before
    const first = 31 - Math.clz32(left & -left)
    let least: number | null = null
    // Every set that holds the first piece left, on every stock.
    for (let set = left; set > 0; set = (set - 1) & left) {
      if ((set & (1 << first)) === 0) continue
      instance.stock.forEach((bar, at) => {
        if (bar.count !== null && (used[at] ?? 0) >= bar.count) return
        const cost = oneBar(
          instance,
          at,
          pieces.filter((_, piece) => (set & (1 << piece)) !== 0)
        )
        if (cost === null) return
        const after = rest(left & ~set, bar.count === null ? used : used.map((n, s) => (s === at ? n + 1 : n)))
        if (after !== null && (least === null || cost + after < least)) least = cost + after
      })
    }
    known.set(key, least)
    return least
  }
  return rest(
    everything,
    instance.stock.map(() => 0)
  )
}

const oneBar = (
  instance: CutInstance,
  at: number,
  pieces: readonly { readonly length: number; readonly lot: number | null }[]
): number | null => {
  const bar = instance.stock[at]
  if (!bar || pieces.some(({ lot }) => lot !== null && lot !== bar.lot)) return null
  const usable = bar.length - bar.trim
  const lengths = pieces.reduce((sum, { length }) => sum + length, 0)
  // n − 1 cuts between n pieces, and one more after the last while something is left to part off.
  const between = lengths + (pieces.length - 1) * instance.kerf
  if (between > usable) return null
  const left = Math.max(0, usable - between - instance.kerf)
  if (bar.keep === null || left < bar.keep.from) return bar.cost
  return bar.cost - Math.floor((left * bar.keep.worth) / bar.keep.per)
}
