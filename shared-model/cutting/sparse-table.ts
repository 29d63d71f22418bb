/**
 * Bounded knapsack over the lengths that pieces really add up to, kept as a list in which a longer filling is always
 * worth more. A filling that cannot pass what is asked of any stock, even if the rest of the bar were filled at the best
 * value per length still to come, is dropped.
 */
import { type Grown, worthAt } from './grown'
import type { Meter } from './meter'
import type { Filling, Pricer } from './pricer'

export const sparseTable = (grown: Grown, meter: Meter): Pricer => {
  const lists = grown.allowed.map(() => createList())
  return {
    fill: (value, qty, atLeast) => {
      for (let lotClass = 0; lotClass < lists.length; lotClass++) {
        const list = lists[lotClass]
        if (list) fillList(list, grown, lotClass, value, qty, atLeast, meter)
      }
    },
    best: (stock, leftScale) => {
      const bar = grown.stock[stock]
      const list = bar ? lists[bar.lotClass] : undefined
      if (!bar || !list) return null
      let best = -1
      let most = Number.NEGATIVE_INFINITY
      for (let at = 0; at < list.front.length; at++) {
        const node = list.front[at] ?? 0
        const weight = list.weight[node] ?? 0
        if (weight > bar.capacity) break
        const here = (list.worth[node] ?? 0) + (leftScale === 0 ? 0 : leftScale * worthAt(grown, bar, weight))
        if (here > most) {
          most = here
          best = node
        }
      }
      return best < 0 ? null : trace(list, best, most)
    }
  }
}

interface List {
  /** Every filling ever kept: its length, its value, the filling it grew from and by what. */
  weight: number[]
  worth: number[]
  parent: number[]
  kind: number[]
  count: number[]
  /** The fillings in force, by rising length and value. */
  front: number[]
}

const createList = (): List => ({ weight: [], worth: [], parent: [], kind: [], count: [], front: [] })

const fillList = (
  list: List,
  grown: Grown,
  lotClass: number,
  value: Float64Array,
  qty: Float64Array,
  atLeast: Float64Array,
  meter: Meter
): void => {
  const allowed = grown.allowed[lotClass] ?? null
  const bars = grown.stock.flatMap((bar, s) =>
    bar.lotClass === lotClass ? [{ capacity: bar.capacity, need: atLeast[s] ?? 0, slack: bar.keep !== null }] : []
  )
  const top = bars.reduce((most, bar) => Math.max(most, bar.capacity), 0)
  const kinds: number[] = []
  for (let kind = 0; kind < grown.kinds; kind++) {
    const fits = (grown.size[kind] ?? 0) <= top && (qty[kind] ?? 0) > 0
    if (fits && (value[kind] ?? 0) > 0 && (allowed === null || allowed[kind] === 1)) kinds.push(kind)
  }
  const rate = (kind: number): number => (value[kind] ?? 0) / (grown.size[kind] ?? 1)
  kinds.sort((a, b) => rate(b) - rate(a) || a - b)
  list.weight.length = list.worth.length = list.parent.length = list.kind.length = list.count.length = 0
  list.weight.push(0)
  list.worth.push(0)
  list.parent.push(-1)
  list.kind.push(-1)
  list.count.push(0)
  list.front = [0]
  // With worth for what is left, a short filling may pass too: nothing is dropped then.
  const drops = bars.every((bar) => !bar.slack)
  let cells = 0
  kinds.forEach((kind, place) => {
    const size = grown.size[kind] ?? 0
    const gain = value[kind] ?? 0
    const next = kinds[place + 1]
    const restRate = next === undefined ? 0 : rate(next)
    let left = Math.min(qty[kind] ?? 0, Math.floor(top / size))
    for (let times = 1; left > 0; times *= 2) {
      const n = Math.min(times, left)
      left -= n
      cells += grow(list, kind, n, size * n, gain * n, top)
    }
    if (drops) {
      list.front = list.front.filter((node) => {
        const weight = list.weight[node] ?? 0
        const worth = list.worth[node] ?? 0
        return bars.some(
          (bar) => weight <= bar.capacity && worth + (bar.capacity - weight) * restRate * (1 + 1e-12) >= bar.need
        )
      })
    }
  })
  meter.spend(cells / 60 + 1)
}

/** Merges the fillings with themselves grown by `size`; of two, one that is no shorter and worth no more is left out. */
const grow = (list: List, kind: number, count: number, size: number, gain: number, top: number): number => {
  const old = list.front
  const merged: number[] = []
  let most = Number.NEGATIVE_INFINITY
  let a = 0
  let b = 0
  const keep = (node: number, worth: number): void => {
    if (worth > most) {
      most = worth
      merged.push(node)
    }
  }
  while (a < old.length || b < old.length) {
    const nodeA = old[a]
    const nodeB = old[b]
    const weightA = nodeA === undefined ? Number.POSITIVE_INFINITY : (list.weight[nodeA] ?? 0)
    const weightB = nodeB === undefined ? Number.POSITIVE_INFINITY : (list.weight[nodeB] ?? 0) + size
    if (weightA > top && weightB > top) break
    const worthA = nodeA === undefined ? Number.NEGATIVE_INFINITY : (list.worth[nodeA] ?? 0)
    const worthB = nodeB === undefined ? Number.NEGATIVE_INFINITY : (list.worth[nodeB] ?? 0) + gain
    if (nodeA !== undefined && (weightA < weightB || (weightA === weightB && worthA >= worthB))) {
      keep(nodeA, worthA)
      a++
    } else if (nodeB !== undefined) {
      if (worthB > most) {
        list.weight.push(weightB)
        list.worth.push(worthB)
        list.parent.push(nodeB)
        list.kind.push(kind)
        list.count.push(count)
        keep(list.weight.length - 1, worthB)
      }
      b++
    } else break
  }
  list.front = merged
  return old.length * 2
}

const trace = (list: List, node: number, value: number): Filling => {
  const found = new Map<number, number>()
  for (let at = node; (list.parent[at] ?? -1) >= 0; at = list.parent[at] ?? -1) {
    const kind = list.kind[at] ?? 0
    found.set(kind, (found.get(kind) ?? 0) + (list.count[at] ?? 0))
  }
  const kinds = [...found.keys()].sort((a, b) => a - b)
  return { value, kinds, counts: kinds.map((kind) => found.get(kind) ?? 0) }
}
