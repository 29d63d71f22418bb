/**
 * The exact search: a bound at the root, a dive for a plan, then plans split by how many bars of each stock they use, the
 * most promising part first, until no part can beat the best plan.
 */
import type { Highs } from 'highs'
import type { BoundPart } from './certificate'
import { cover } from './cover'
import { dive } from './dive'
import { cheapestPatterns, patternsWithin } from './enumerate'
import { greedyBars } from './greedy'
import type { Grown } from './grown'
import type { CutInstance } from './instance'
import { createMaster, type Master } from './master'
import type { Meter } from './meter'
import { type Part, split } from './parts'
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
  /** For whole-number programmes; null: none at hand. */
  readonly highs: Highs | null
  readonly report: (best: BarsFound | null, bound: number) => void
}

export interface SearchEnd {
  readonly best: BarsFound | null
  readonly bound: number
  readonly parts: readonly BoundPart[]
  /** Some part was searched to the end rather than bounded. */
  readonly searched: boolean
}

/** A better bound on a part; `shown`: by these figures, null: by going through its patterns. */
interface Sharper {
  readonly bound: number
  readonly shown: BoundPart | null
}

/** What is tried on a part that cannot be split, one after the other: dives and whole-number programmes. */
const EFFORTS: readonly (
  | {
      readonly kind: 'dive'
      readonly work: number
      readonly turns: number
      readonly rounds: number
      readonly fewer: boolean
    }
  | { readonly kind: 'cover'; readonly work: number; readonly most: number; readonly patterns: 'nearest' | 'pool' }
)[] = [
  { kind: 'dive', work: 200_000, turns: 4, rounds: 1_000, fewer: false },
  { kind: 'dive', work: 200_000, turns: 4, rounds: 1_000, fewer: true },
  { kind: 'cover', work: 2_000_000, most: 3_000, patterns: 'nearest' },
  { kind: 'dive', work: 400_000, turns: 4, rounds: 10, fewer: false },
  { kind: 'dive', work: 2_000_000, turns: 8, rounds: 1_000, fewer: false },
  { kind: 'cover', work: 2_000_000, most: 1_500, patterns: 'pool' },
  { kind: 'cover', work: 10_000_000, most: 40_000, patterns: 'nearest' },
  { kind: 'dive', work: 4_000_000, turns: 20, rounds: 1_000, fewer: false },
  { kind: 'cover', work: 10_000_000, most: 3_000, patterns: 'pool' },
  { kind: 'dive', work: Number.POSITIVE_INFINITY, turns: 40, rounds: 1_000, fewer: true },
  { kind: 'cover', work: Number.POSITIVE_INFINITY, most: 10_000, patterns: 'pool' }
]

/** How much nearer to the bound a plan is looked for when there are too many patterns. */
const NEARER = 4

export const search = (ask: SearchAsk): SearchEnd => {
  const { instance, grown, meter } = ask
  const step = grown.costStep
  const several = grown.stock.length > 1
  const all = Float64Array.from(grown.stock, (bar) => bar.count)
  let best = greedyBars(grown, grown.qty, all)
  const bestCost = (): number => Math.min(ask.beat, best?.cost ?? Number.POSITIVE_INFINITY)
  const dearest = grown.stock.reduce((most, bar) => Math.max(most, bar.cost), 1)
  const pieces = grown.qty.reduce((sum, n) => sum + n, 0)
  const master = createMaster(grown, meter)
  seed(master, best)
  const none = new Float64Array(grown.stock.length)
  const closed: Part[] = []
  const open: Part[] = []
  const stuck: Part[] = []
  let searched = false

  const solveIn = (least: Float64Array, most: Float64Array, toTheEnd: boolean): { infeasible: boolean } => {
    for (let kind = 0; kind < grown.kinds; kind++) master.setQty(kind, grown.qty[kind] ?? 0)
    master.setBox(least, most)
    master.shutImproper()
    const result = master.solve(bestCost() - step + 1e-6, (objective, bound) => {
      return !toTheEnd && roundUp(bound - 1e-6, step) >= roundUp(objective - 1e-3, step)
    })
    return { infeasible: result.uncovered > 1e-4 }
  }
  const weigh = (least: Float64Array, most: Float64Array): void => {
    const { infeasible } = solveIn(least, most, false)
    const { bound, part: shown } = safeBound(master, instance, ask.scale, ask.lotOfGroup)
    const bars = new Float64Array(grown.stock.length)
    for (const { pattern, value } of master.uses()) bars[pattern.stock] = (bars[pattern.stock] ?? 0) + value
    const counts = Float64Array.from(bars, Math.round)
    const whole = !several || bars.every((n, s) => Math.abs(n - (counts[s] ?? 0)) < 1e-4)
    const part = { least, most, bound, shown, bars, counts, whole, efforts: 0 }
    if (bound >= bestCost() || (infeasible && bound >= dearest * pieces)) closed.push(part)
    else open.push(part)
  }
  const lowest = (): number => Math.min(bestCost(), ...[...open, ...stuck].map((part) => part.bound))
  const found = (plan: BarsFound): void => {
    best = plan
    ask.report(best, lowest())
  }
  const tryDive = (part: Part, work: number, turns: number, rounds: number, narrow: boolean, fewer = false): void => {
    const least = fewer ? none : narrow ? part.counts : part.least
    const most = narrow ? part.counts : part.most
    dive({
      master,
      meter: meter.part(work),
      least,
      most,
      turns,
      rounds,
      target: part.bound,
      best: bestCost,
      found,
      fewer
    })
  }
  /** What is now known to be the least that a plan in the part costs, unless it is the best; null: no more than before. */
  const tryCover = (part: Part, work: number, most: number, kind: 'nearest' | 'pool'): Sharper | null => {
    const { highs } = ask
    if (highs === null) return null
    // The sharper the bound, the fewer the patterns that can matter.
    solveIn(part.least, part.most, true)
    const sharper = safeBound(master, instance, ask.scale, ask.lotOfGroup)
    if (sharper.bound > part.bound) return { bound: sharper.bound, shown: sharper.part }
    let to = bestCost() - step
    let patterns = kind === 'pool' ? cheapestPatterns(master, most) : patternsWithin(master, to, most, meter.part(work))
    // Too many patterns could stand in a plan cheaper than the best: look for one nearer to the bound first.
    while (patterns === null && kind === 'nearest' && to > part.bound && !meter.isOut()) {
      to = part.bound + Math.floor((to - part.bound) / (NEARER * step)) * step
      patterns = patternsWithin(master, to, most, meter.part(work))
    }
    if (patterns === null) return null
    const { least } = part
    const end = cover({
      highs,
      master,
      patterns,
      least,
      most: part.most,
      from: part.bound,
      to,
      meter: meter.part(work)
    })
    if (end.plan !== null && end.plan.cost < bestCost()) found(end.plan)
    return end.complete && kind !== 'pool' ? { bound: Math.min(bestCost(), to + step), shown: null } : null
  }
  /** Puts a part that was covered away, or back with its better bound. */
  const covered = (part: Part, { bound, shown }: Sharper): void => {
    open.shift()
    searched = searched || shown === null
    const sharper = { ...part, bound, shown: shown ?? part.shown }
    if (bound >= bestCost()) closed.push(sharper)
    else open.push(sharper)
    ask.report(best, lowest())
  }

  weigh(new Float64Array(grown.stock.length), all)
  ask.report(best, lowest())
  let first = true
  while (open.length > 0 && !meter.isOut()) {
    open.sort((a, b) => a.bound - b.bound || b.efforts - a.efforts)
    const part = open[0]
    if (!part || part.bound >= bestCost()) break
    if (first && several) {
      first = false
      tryDive(part, 100_000, 2, 20, part.whole)
      continue
    }
    const fixed = !several || part.least.every((n, s) => n === part.most[s])
    if (!fixed && part.whole && part.efforts === 0) {
      part.efforts = 1
      tryDive(part, 60_000, 2, 20, true)
    } else if (!fixed) {
      open.shift()
      split(part, weigh)
      ask.report(best, lowest())
    } else {
      const effort = EFFORTS[part.efforts++]
      if (!effort) {
        open.shift()
        stuck.push(part)
      } else if (effort.kind === 'dive' && effort.fewer && !several) continue
      else if (effort.kind === 'dive') tryDive(part, effort.work, effort.turns, effort.rounds, several, effort.fewer)
      else {
        const sharper = tryCover(part, effort.work, effort.most, effort.patterns)
        if (sharper !== null) covered(part, sharper)
      }
    }
  }
  return { best, bound: lowest(), parts: [...closed, ...open, ...stuck].map((part) => part.shown), searched }
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
