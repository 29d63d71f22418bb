import type { Highs } from 'highs'
import type { Budget } from '../outcome'
import type { BoundCertificate, BoundPart } from './certificate'
import { greedyPart } from './greedy'
import { type Grown, grow } from './grown'
import type { CutInstance } from './instance'
import { createMeter } from './meter'
import type { BarsFound } from './pattern'
import { partBound, scaleFor } from './safe-bound'
import { search } from './search'
import { type BarSolution, toCutPatterns } from './solution'

export interface SolveBarsAsk {
  readonly budget: Budget
  /** The loaded solver library, for the last hard cases; left out: they may stay unproven. */
  readonly highs?: Highs
  /** Told whenever the plan or the bound gets better. */
  readonly report?: (progress: BarProgress) => void
  /** Told each plan that is cheaper than all before; its bound is known, but its certificate comes with the end. */
  readonly better?: (solution: BarSolution) => void
}

/** How far the proof is: `proven-least`, or at most `gap` above the least. */
export interface BarProgress {
  readonly state: 'no-plan' | 'proving' | 'proven-least'
  readonly cost: number
  readonly lowerBound: number
  /** Most that the plan can be above the least, in cost; with one stock of cost 1, in bars. */
  readonly gap: number
  readonly bars: number
}

/**
 * The cheapest way to cut an instance, with a bound that its certificate shows. Anytime: it ends when the plan is proven,
 * the budget's work is used up, or the host stops it, and says how far from the least the plan can be. Costs and lengths
 * are the instance's whole numbers. A work unit is about two microseconds.
 */
export const solveBars = (instance: CutInstance, ask: SolveBarsAsk): BarSolution => {
  const meter = createMeter(ask.budget)
  const dearest = instance.stock.reduce((most, bar) => Math.max(most, bar.cost), 1)
  const scale = scaleFor(
    dearest,
    instance.demand.reduce((sum, { qty }) => sum + qty, 0)
  )
  let best: { readonly plan: BarsFound; readonly grown: Grown } | null = null
  let bound = Number.POSITIVE_INFINITY
  const parts: BoundPart[] = []
  let searched = false
  let told = Number.POSITIVE_INFINITY
  const choices = lotChoices(instance)
  choices.forEach((lotOfGroup, at) => {
    const grown = grow(instance, lotOfGroup)
    const free = lotOfGroup.length > 0 && lotOfGroup.every((lot) => lot === null)
    const beat = best?.plan.cost ?? Number.POSITIVE_INFINITY
    const report = (plan: BarsFound | null, below: number): void => {
      if (free) return
      const cost = Math.min(plan?.cost ?? Number.POSITIVE_INFINITY, beat)
      const lowerBound = at < choices.length - 1 ? 0 : Math.min(below, bound)
      const state = cost === Number.POSITIVE_INFINITY ? 'no-plan' : cost <= lowerBound ? 'proven-least' : 'proving'
      const bars = plan?.patterns.reduce((sum, { times }) => sum + times, 0) ?? 0
      ask.report?.({ state, cost, lowerBound, gap: cost - lowerBound, bars })
      if (ask.better && plan && plan.cost < Math.min(told, beat)) {
        told = plan.cost
        ask.better({
          ...solution(instance, { plan, grown }, { scale, parts: [], bound: lowerBound }, false),
          certificate: null
        })
      }
    }
    const part = meter.part((ask.budget.work - meter.spent()) / (choices.length - at))
    const end = search({ instance, grown, lotOfGroup, meter: part, beat, scale, highs: ask.highs ?? null, report })
    if (!free && end.best && end.best.cost < beat) best = { plan: end.best, grown }
    // The first of too many choices is for the bound alone; the others then add nothing to it.
    if (free || !choices[0]?.every((lot) => lot === null) || choices.length === 1) {
      bound = Math.min(bound, end.bound)
      parts.push(...end.parts)
      searched = searched || end.searched
    }
  })
  return best === null ? partly(instance) : solution(instance, best, { scale, parts, bound }, searched)
}

const solution = (
  instance: CutInstance,
  { plan, grown }: { readonly plan: BarsFound; readonly grown: Grown },
  { scale, parts, bound }: Pick<BoundCertificate, 'scale' | 'parts' | 'bound'>,
  searched: boolean
): BarSolution => {
  const lowerBound = Math.min(plan.cost, bound)
  const shown = Math.min(lowerBound, ...parts.map((part) => partBound(instance, part, scale, grown.costStep)))
  return {
    patterns: toCutPatterns(
      grown,
      plan,
      instance.demand.map(({ qty }) => qty)
    ),
    cost: plan.cost,
    lowerBound,
    proven: plan.cost <= lowerBound,
    shownBy: searched && shown < lowerBound ? 'search' : 'certificate',
    certificate: { scale, costStep: grown.costStep, parts, bound: shown },
    uncut: []
  }
}

/** Every choice of a lot for each one-lot group; too many: none chosen, for the bound, and one choice, for the plan. */
const lotChoices = (instance: CutInstance): (readonly (number | null)[])[] => {
  const groups = Math.max(0, ...instance.demand.map(({ lotGroup }) => (lotGroup === null ? 0 : lotGroup + 1)))
  const lots = [...new Set(instance.stock.map(({ lot }) => lot))]
  let choices: (readonly number[])[] = [[]]
  for (let group = 0; group < groups; group++) {
    const longest = Math.max(
      ...instance.demand.filter(({ lotGroup }) => lotGroup === group).map(({ length }) => length)
    )
    const reach = lots.filter((lot) =>
      instance.stock.some((bar) => bar.lot === lot && bar.length - bar.trim >= longest && bar.count !== 0)
    )
    choices = choices.flatMap((chosen) => reach.map((lot) => [...chosen, lot]))
    if (choices.length > MOST_CHOICES)
      return [new Array<null>(groups).fill(null), ...oneLotEach(instance, groups, lots)]
  }
  return choices
}

/** All groups from one lot, for each lot that has bars without limit. */
const oneLotEach = (instance: CutInstance, groups: number, lots: readonly number[]): (readonly number[])[] =>
  lots
    .filter((lot) => instance.stock.some((bar) => bar.lot === lot && bar.count === null))
    .map((lot) => new Array<number>(groups).fill(lot))

const MOST_CHOICES = 128

/** What the counted stock reaches for, when it does not reach for all. */
const partly = (instance: CutInstance): BarSolution => {
  const grown = grow(instance)
  const { found, left } = greedyPart(
    grown,
    grown.qty,
    Float64Array.from(grown.stock, (bar) => bar.count)
  )
  const demandLeft = instance.demand.map(() => 0)
  const demandCut = instance.demand.map(({ qty }) => qty)
  grown.demands.forEach((demands, kind) => {
    let short = left[kind] ?? 0
    for (const demand of [...demands].reverse()) {
      const here = Math.min(short, demandCut[demand] ?? 0)
      demandLeft[demand] = here
      demandCut[demand] = (demandCut[demand] ?? 0) - here
      short -= here
    }
  })
  return {
    patterns: toCutPatterns(grown, found, demandCut),
    cost: found.cost,
    lowerBound: 0,
    proven: false,
    shownBy: 'certificate',
    certificate: null,
    uncut: demandLeft.flatMap((qty, demand) => (qty > 0 ? [{ demand, qty }] : []))
  }
}
