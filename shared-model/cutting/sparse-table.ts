/**
 * Bounded knapsack over the lengths that pieces really add up to, kept as a list in which a longer filling is always
 * worth more. A filling that cannot pass what is asked of any stock, even if the rest of the bar were filled at the best
 * value per length still to come, is dropped.
 */
import { type Fillings, newFillings, openFillings, withMore } from './fillings'
import { type Grown, worthAt } from './grown'
import type { Meter } from './meter'
import type { Filling, Pricer } from './pricer'

export const sparseTable = (grown: Grown, meter: Meter): Pricer => {
  const lists = grown.allowed.map(() => newFillings())
  const tables = grown.allowed.map((_, lotClass) => createTable(grown, lotClass))
  return {
    fill: (value, qty, atLeast) => {
      for (let lotClass = 0; lotClass < lists.length; lotClass++) {
        const list = lists[lotClass]
        const table = tables[lotClass]
        if (list && table) meter.spend(fillTable(table, list, grown, value, qty, atLeast) / 250 + 1)
      }
    },
    best: (stock, leftScale) => {
      const bar = grown.stock[stock]
      const list = bar ? lists[bar.lotClass] : undefined
      const table = bar ? tables[bar.lotClass] : undefined
      if (!bar || !list || !table) return null
      let best = -1
      let most = Number.NEGATIVE_INFINITY
      const values = leftScale !== 0 && bar.keep !== null
      for (let at = 0; at < list.length; at++) {
        const weight = list.weight[at] as number
        if (weight > bar.capacity) break
        const here = (list.worth[at] as number) + (values ? leftScale * worthAt(grown, bar, weight) : 0)
        if (here > most) {
          most = here
          best = list.node[at] as number
        }
      }
      return best < 0 ? null : trace(table, list, best, most)
    }
  }
}

/** What a lot class's table needs from one filling to the next. */
interface Table {
  /** Stocks of the class by rising capacity. */
  readonly bars: readonly { readonly stock: number; readonly capacity: number }[]
  readonly top: number
  readonly allowed: Uint8Array | null
  /** With worth for what is left, a short filling may pass too: nothing is dropped then. */
  readonly drops: boolean
  /** For each step, the size and how many of it. */
  kinds: number[]
  counts: number[]
  readonly atLeast: Float64Array
}

const createTable = (grown: Grown, lotClass: number): Table => {
  const bars = grown.stock
    .flatMap((bar, stock) => (bar.lotClass === lotClass ? [{ stock, capacity: bar.capacity }] : []))
    .sort((a, b) => a.capacity - b.capacity)
  return {
    bars,
    top: bars.at(-1)?.capacity ?? 0,
    allowed: grown.allowed[lotClass] ?? null,
    drops: bars.every(({ stock }) => grown.stock[stock]?.keep === null),
    kinds: [],
    counts: [],
    atLeast: new Float64Array(bars.length)
  }
}

/** Works the list out anew; says how many fillings it went through. */
const fillTable = (
  table: Table,
  list: Fillings,
  grown: Grown,
  value: Float64Array,
  qty: Float64Array,
  atLeast: Float64Array
): number => {
  const { top, allowed } = table
  const rate = Float64Array.from(grown.size, (size, kind) => (value[kind] ?? 0) / size)
  const kinds: number[] = []
  for (let kind = 0; kind < grown.kinds; kind++) {
    const fits = (grown.size[kind] ?? 0) <= top && (qty[kind] ?? 0) > 0
    if (fits && (value[kind] ?? 0) > 0 && (allowed === null || allowed[kind] === 1)) kinds.push(kind)
  }
  kinds.sort((a, b) => (rate[b] ?? 0) - (rate[a] ?? 0) || a - b)
  table.kinds = []
  table.counts = []
  openFillings(list)
  let cells = 0
  kinds.forEach((kind, place) => {
    const size = grown.size[kind] ?? 0
    let left = Math.min(qty[kind] ?? 0, Math.floor(top / size))
    for (let times = 1; left > 0; times *= 2) {
      const count = Math.min(times, left)
      left -= count
      table.kinds.push(kind)
      table.counts.push(count)
      const next = left > 0 ? kind : (kinds[place + 1] ?? -1)
      const restRate = next < 0 ? 0 : (rate[next] ?? 0) * (1 + 1e-12)
      setLeast(table, atLeast, restRate)
      cells += list.length * 2
      withMore(list, table.kinds.length - 1, size * count, (value[kind] ?? 0) * count, table, restRate)
    }
  })
  return cells
}

/**
 * Least worth of a filling, above `restRate` × its length, that can still pass in a bar of this place or a longer one.
 */
const setLeast = (table: Table, atLeast: Float64Array, restRate: number): void => {
  let least = Number.POSITIVE_INFINITY
  for (let at = table.bars.length - 1; at >= 0; at--) {
    const bar = table.bars[at]
    if (!bar) continue
    const need = atLeast[bar.stock] ?? 0
    const rest = bar.capacity * restRate
    least = Math.min(least, need - rest - 1e-12 * (Math.abs(need) + rest))
    table.atLeast[at] = table.drops ? least : Number.NEGATIVE_INFINITY
  }
}

const trace = (table: Table, list: Fillings, node: number, value: number): Filling => {
  const found = new Map<number, number>()
  for (let at = node; at > 0; at = list.parent[at] as number) {
    const step = list.step[at] as number
    const kind = table.kinds[step] ?? 0
    found.set(kind, (found.get(kind) ?? 0) + (table.counts[step] ?? 0))
  }
  const kinds = [...found.keys()].sort((a, b) => a - b)
  return { value, kinds, counts: kinds.map((kind) => found.get(kind) ?? 0) }
}
