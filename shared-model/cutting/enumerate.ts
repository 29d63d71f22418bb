/**
 * Every way to cut a bar that can stand in a plan cheaper than the best one: those whose reduced cost does not pass the
 * gap between the bound and the best plan. The tables of what the remaining sizes can still be worth leave no blind ends.
 */
import { type Grown, worthAt } from './grown'
import type { Master } from './master'
import type { Meter } from './meter'
import { makePattern, type Pattern } from './pattern'

/**
 * The patterns that a plan of cost `to` or less can use; null: more than `most`, or the bars are too long in units for the
 * tables. The values are the master's last ones.
 */
export const patternsWithin = (master: Master, to: number, most: number, meter: Meter): Pattern[] | null => {
  const { grown } = master
  const { value, bound } = sharpestValues(master, to)
  const gap = Math.max(0, to - bound)
  const found: Pattern[] = []
  const lotClasses = grown.allowed.map((_, lotClass) => lotClass)
  for (const lotClass of lotClasses) {
    const longest = grown.stock.reduce((top, bar) => (bar.lotClass === lotClass ? Math.max(top, bar.capacity) : top), 0)
    const kinds = kindsOf(grown, lotClass)
    if ((kinds.length + 1) * (longest + 1) > MOST_CELLS) return null
    const tables = suffixTables(grown, value, kinds, longest, meter)
    for (let s = 0; s < grown.stock.length; s++) {
      const bar = grown.stock[s]
      if (!bar || bar.lotClass !== lotClass || (master.most[s] ?? 0) <= 0) continue
      if (!walk(master, s, value, kinds, tables, longest, gap, most, found, meter)) return null
    }
  }
  return found
}

/** The patterns made so far whose reduced cost is least. */
export const cheapestPatterns = (master: Master, most: number): Pattern[] =>
  master.patterns
    .filter((pattern) => pattern.kinds.length > 0)
    .map((pattern) => ({ pattern, reduced: master.reducedCost(pattern) }))
    .sort((a, b) => a.reduced - b.reduced)
    .slice(0, most)
    .map(({ pattern }) => pattern)

const MOST_CELLS = 6e6

/**
 * The master's values; with one stock length halfway to the values by length, when these show a bound as good: a pattern
 * must then be near enough by both, which leaves out far more.
 */
const sharpestValues = (master: Master, to: number): { value: Float64Array; bound: number } => {
  const { grown } = master
  const bound = master.valuesBound()
  const { piece } = master.values
  const only = grown.stock[0]
  if (grown.stock.length > 1 || !only || only.keep !== null) return { value: piece, bound }
  const byLength = Float64Array.from(grown.size, (size) => size / only.capacity)
  let lengthBound = 0
  for (let kind = 0; kind < grown.kinds; kind++) lengthBound += (byLength[kind] ?? 0) * (grown.qty[kind] ?? 0)
  lengthBound *= only.cost
  if (lengthBound <= to - grown.costStep) return { value: piece, bound }
  return {
    value: byLength.map((each, kind) => (each + (piece[kind] ?? 0)) / 2),
    bound: (bound + lengthBound) / 2
  }
}

const kindsOf = (grown: Grown, lotClass: number): number[] => {
  const allowed = grown.allowed[lotClass] ?? null
  return Array.from({ length: grown.kinds }, (_, kind) => kind).filter(
    (kind) => allowed === null || allowed[kind] === 1
  )
}

/** Row k: the most that sizes k, k + 1, … are worth in a room of each length. */
const suffixTables = (
  grown: Grown,
  value: Float64Array,
  kinds: readonly number[],
  longest: number,
  meter: Meter
): Float64Array => {
  const width = longest + 1
  const tables = new Float64Array((kinds.length + 1) * width)
  for (let k = kinds.length - 1; k >= 0; k--) {
    const kind = kinds[k] ?? 0
    const size = grown.size[kind] ?? 0
    const gain = value[kind] ?? 0
    const from = (k + 1) * width
    const to = k * width
    tables.copyWithin(to, from, from + width)
    if (gain <= 0 || size > longest) continue
    let left = Math.min(grown.qty[kind] ?? 0, Math.floor(longest / size))
    for (let n = 1; left > 0; n *= 2) {
      const count = Math.min(n, left)
      left -= count
      const length = size * count
      const worth = gain * count
      for (let w = longest; w >= length; w--) {
        const taking = (tables[to + w - length] as number) + worth
        if (taking > (tables[to + w] as number)) tables[to + w] = taking
      }
      meter.spend(longest / 1000)
    }
  }
  return tables
}

const walk = (
  master: Master,
  s: number,
  value: Float64Array,
  kinds: readonly number[],
  tables: Float64Array,
  longest: number,
  gap: number,
  most: number,
  found: Pattern[],
  meter: Meter
): boolean => {
  const { grown } = master
  const bar = grown.stock[s]
  if (!bar) return true
  const width = longest + 1
  const dearest = grown.stock.reduce((top, each) => Math.max(top, each.cost), 1)
  const price = bar.cost / dearest + (master.values.most[s] ?? 0) - (master.values.least[s] ?? 0)
  const need = price - gap / dearest - 1e-9
  const chosen: number[] = []
  const counts: number[] = []
  // An empty bar's worth is the most that any leftover can be worth: good enough to cut the walk short.
  const leftMost = bar.keep === null ? 0 : worthAt(grown, bar, 0) / dearest
  const step = (k: number, room: number, worth: number): boolean => {
    meter.spend(0.02)
    if (worth + (tables[k * width + room] ?? 0) + leftMost < need) return true
    if (k === kinds.length) {
      const left = bar.keep === null ? 0 : worthAt(grown, bar, bar.capacity - room) / dearest
      if (chosen.length === 0 || worth + left < need) return true
      found.push(makePattern(grown, s, [...chosen], [...counts]))
      return found.length <= most && !meter.isOut()
    }
    const kind = kinds[k] ?? 0
    const size = grown.size[kind] ?? 0
    const top = Math.min(grown.qty[kind] ?? 0, Math.floor(room / size))
    if (top > 0) {
      chosen.push(kind)
      counts.push(0)
      for (let n = top; n > 0; n--) {
        counts[counts.length - 1] = n
        if (!step(k + 1, room - n * size, worth + n * (value[kind] ?? 0))) return false
      }
      chosen.pop()
      counts.pop()
    }
    return step(k + 1, room, worth)
  }
  return step(0, bar.capacity, 0)
}
