/** Bounded knapsack over every length up to the longest bar: one table prices every stock of a lot class at once. */
import { type Grown, worthAt } from './grown'
import type { Meter } from './meter'
import type { Pricer } from './pricer'

export const denseTable = (grown: Grown, longest: number, meter: Meter): Pricer => {
  const classes = grown.allowed.map(() => new Float64Array(longest + 1))
  const width = longest + 1
  let marks: Uint8Array<ArrayBuffer>[] = grown.allowed.map(() => new Uint8Array(width * Math.max(1, grown.kinds)))
  const steps: { kind: number; count: number; reached: number }[][] = grown.allowed.map(() => [])
  const most = grown.allowed.map(() => 0)
  for (const bar of grown.stock) most[bar.lotClass] = Math.max(most[bar.lotClass] ?? 0, bar.capacity)

  const flatEnd = grown.allowed.map(() => 0)
  const risesOf: (readonly number[] | null)[] = grown.allowed.map(() => null)

  const fillClass = (lotClass: number, value: Float64Array, qty: Float64Array): void => {
    const table = classes[lotClass]
    const list = steps[lotClass]
    if (!table || !list) return
    const allowed = grown.allowed[lotClass] ?? null
    const top = most[lotClass] ?? 0
    list.length = 0
    for (let kind = 0; kind < grown.kinds; kind++) {
      const size = grown.size[kind] ?? 0
      if ((value[kind] ?? 0) <= 0 || size > top || (allowed !== null && allowed[kind] === 0)) continue
      let rest = Math.min(qty[kind] ?? 0, Math.floor(top / size))
      for (let count = 1; rest > 0; count *= 2) {
        const n = Math.min(count, rest)
        list.push({ kind, count: n, reached: 0 })
        rest -= n
      }
    }
    let taken = marks[lotClass] ?? new Uint8Array(0)
    if (taken.length < list.length * width) {
      taken = new Uint8Array(list.length * width * 2)
      marks = marks.map((each, at) => (at === lotClass ? taken : each))
    }
    table[0] = 0
    let reached = 0
    let cells = 0
    for (let at = 0; at < list.length; at++) {
      const step = list[at]
      if (!step) break
      const size = (grown.size[step.kind] ?? 0) * step.count
      const gain = (value[step.kind] ?? 0) * step.count
      const row = at * width
      // Beyond the sum of the sizes so far the table is flat: it is written only as far as it changes.
      const flat = Math.min(top, reached + size)
      table.fill(table[reached] ?? 0, reached + 1, flat + 1)
      reached = flat
      step.reached = reached
      taken.fill(0, row, row + size)
      for (let w = reached; w >= size; w--) {
        const taking = (table[w - size] as number) + gain
        if (taking > (table[w] as number)) {
          table[w] = taking
          taken[row + w] = 1
        } else taken[row + w] = 0
      }
      cells += reached - size + 1 + size / 16
    }
    flatEnd[lotClass] = reached
    risesOf[lotClass] = null
    meter.spend(cells / 700 + 1)
  }

  /** Lengths at which the table rises: where a shorter filling is worth less, and leaves no more. */
  const rises = (lotClass: number): readonly number[] => {
    const known = risesOf[lotClass]
    if (known) return known
    const table = classes[lotClass]
    const found = [0]
    const end = flatEnd[lotClass] ?? 0
    if (table) for (let w = 1; w <= end; w++) if ((table[w] as number) > (table[w - 1] as number)) found.push(w)
    risesOf[lotClass] = found
    meter.spend((end + found.length * grown.stock.length * 10) / 1000)
    return found
  }

  const trace = (lotClass: number, from: number): { kinds: number[]; counts: number[] } => {
    const list = steps[lotClass] ?? []
    const taken = marks[lotClass] ?? new Uint8Array(0)
    const found = new Map<number, number>()
    let w = from
    for (let at = list.length - 1; at >= 0; at--) {
      const step = list[at]
      if (!step) break
      w = Math.min(w, step.reached)
      if (taken[at * width + w] !== 1) continue
      const { kind, count } = step
      found.set(kind, (found.get(kind) ?? 0) + count)
      w -= (grown.size[kind] ?? 0) * count
    }
    const kinds = [...found.keys()].sort((a, b) => a - b)
    return { kinds, counts: kinds.map((kind) => found.get(kind) ?? 0) }
  }

  return {
    fill: (value, qty) => {
      for (let lotClass = 0; lotClass < classes.length; lotClass++) fillClass(lotClass, value, qty)
    },
    best: (stock, leftScale) => {
      const bar = grown.stock[stock]
      const table = bar ? classes[bar.lotClass] : undefined
      if (!bar || !table) return null
      const end = Math.min(bar.capacity, flatEnd[bar.lotClass] ?? 0)
      let at = end
      let most = (table[end] ?? 0) + (leftScale === 0 ? 0 : leftScale * worthAt(grown, bar, end))
      if (leftScale !== 0 && bar.keep !== null) {
        for (const w of rises(bar.lotClass)) {
          if (w > end) break
          const here = (table[w] ?? 0) + leftScale * worthAt(grown, bar, w)
          if (here > most) {
            most = here
            at = w
          }
        }
      }
      return { value: most, ...trace(bar.lotClass, at) }
    }
  }
}
