/**
 * The exact search: a bound at the root, a dive for a plan, then plans split by how many bars of each stock they use, the
 * most promising part first, until no part can beat the best plan.
 */
import type { BoundPart } from './certificate'
import { dive } from './dive'
import { greedyBars } from './greedy'
import type { Grown } from './grown'
import type { CutInstance } from './instance'
import { createMaster, type Master } from './master'
import type { Meter } from './meter'
import { type BarsFound, makePattern } from './pattern'
import { roundUp, safeBound } from './safe-bound'

export interface SearchAsk {
  readonly instance: CutInstance
  readonly grown: Grown
  readonly lotOfGroup: readonly (number | null)[]
  readonly meter: Meter
  /** Only plans cheaper than this are of use. */
  readonly beat: number
  /** Of the certificate. */
  readonly scale: number
  readonly report: (best: BarsFound | null, bound: number) => void
}

export interface SearchEnd {
  readonly best: BarsFound | null
  readonly bound: number
  readonly parts: readonly BoundPart[]
}

interface Part {
  readonly least: Float64Array
  readonly most: Float64Array
  readonly bound: number
  readonly shown: BoundPart
  /** Bars of each stock that the master would use. */
  readonly bars: Float64Array
  dived: boolean
}

export const search = (ask: SearchAsk): SearchEnd => {
  const { instance, grown, meter } = ask
  const step = grown.costStep
  const all = Float64Array.from(grown.stock, (bar) => bar.count)
  let best = greedyBars(grown, grown.qty, all)
  const bestCost = (): number => Math.min(ask.beat, best?.cost ?? Number.POSITIVE_INFINITY)
  const dearest = grown.stock.reduce((most, bar) => Math.max(most, bar.cost), 1)
  const pieces = grown.qty.reduce((sum, n) => sum + n, 0)
  const { scale } = ask
  const master = createMaster(grown, meter)
  seed(master, best)
  const closed: Part[] = []
  const open: Part[] = []

  const weigh = (least: Float64Array, most: Float64Array): void => {
    for (let kind = 0; kind < grown.kinds; kind++) master.setQty(kind, grown.qty[kind] ?? 0)
    master.setBox(least, most)
    master.shutImproper()
    const result = master.solve(bestCost() - step + 1e-6, (objective, bound) => {
      return roundUp(bound - 1e-6, step) >= roundUp(objective - 1e-6, step)
    })
    const { bound, part: shown } = safeBound(master, instance, scale, ask.lotOfGroup)
    const bars = new Float64Array(grown.stock.length)
    for (const { pattern, value } of master.uses()) bars[pattern.stock] = (bars[pattern.stock] ?? 0) + value
    const infeasible = result.uncovered > 1e-6
    const part = { least, most, bound, shown, bars, dived: false }
    if (bound >= bestCost() || (infeasible && bound >= dearest * pieces)) closed.push(part)
    else open.push(part)
  }
  const lowest = (): number => Math.min(bestCost(), ...open.map((part) => part.bound))
  const found = (plan: BarsFound): void => {
    best = plan
    ask.report(best, lowest())
  }

  weigh(new Float64Array(grown.stock.length), all)
  ask.report(best, lowest())
  let rounds = 0
  while (open.length > 0 && !meter.isOut()) {
    open.sort((a, b) => a.bound - b.bound || Number(b.dived) - Number(a.dived))
    const part = open[0]
    if (!part || part.bound >= bestCost()) break
    const fixed = Float64Array.from(part.bars, Math.round)
    const whole = part.bars.every((n, s) => Math.abs(n - (fixed[s] ?? 0)) < 1e-5)
    if (rounds === 0 || (whole && !part.dived)) {
      const narrow = whole && grown.stock.length > 1
      dive({
        master,
        meter: meter.part(rounds === 0 ? 400_000 : 60_000),
        least: narrow ? fixed : part.least,
        most: narrow ? fixed : part.most,
        turns: grown.stock.length > 1 ? 2 : 8,
        target: part.bound,
        best: bestCost,
        found
      })
      part.dived = whole
      rounds++
      continue
    }
    if (part.least.every((n, s) => n === part.most[s])) break
    open.shift()
    split(part, fixed, whole, weigh)
    ask.report(best, lowest())
    rounds++
  }
  return { best, bound: lowest(), parts: [...closed, ...open].map((part) => part.shown) }
}

/** Whole counts: the part with just those counts, and the rest around it; else two parts at the count least near whole. */
const split = (
  part: Part,
  fixed: Float64Array,
  whole: boolean,
  weigh: (least: Float64Array, most: Float64Array) => void
): void => {
  const least = Float64Array.from(part.least)
  const most = Float64Array.from(part.most)
  const side = (s: number, from: number, to: number): void => {
    if (from > to) return
    const sideLeast = Float64Array.from(least)
    const sideMost = Float64Array.from(most)
    sideLeast[s] = from
    sideMost[s] = to
    weigh(sideLeast, sideMost)
  }
  if (!whole) {
    let at = 0
    let far = -1
    part.bars.forEach((n, s) => {
      const off = Math.abs(n - Math.round(n))
      if (off > far) {
        far = off
        at = s
      }
    })
    const under = Math.floor(part.bars[at] ?? 0)
    side(at, least[at] ?? 0, under)
    side(at, under + 1, most[at] ?? 0)
    return
  }
  for (let s = 0; s < fixed.length; s++) {
    side(s, least[s] ?? 0, (fixed[s] ?? 0) - 1)
    side(s, (fixed[s] ?? 0) + 1, most[s] ?? 0)
    least[s] = fixed[s] ?? 0
    most[s] = fixed[s] ?? 0
  }
  weigh(least, most)
}

const seed = (master: Master, best: BarsFound | null): void => {
  const { grown } = master
  for (const { pattern } of best?.patterns ?? []) master.add(pattern)
  grown.stock.forEach((bar, s) => {
    const allowed = grown.allowed[bar.lotClass] ?? null
    for (let kind = 0; kind < grown.kinds; kind++) {
      const n = Math.min(grown.qty[kind] ?? 0, Math.floor(bar.capacity / (grown.size[kind] ?? 1)))
      if (n > 0 && (allowed === null || allowed[kind] === 1)) master.add(makePattern(grown, s, [kind], [n]))
    }
  })
}
