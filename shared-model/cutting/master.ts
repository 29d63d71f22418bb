/**
 * The master problem: least cost of patterns that cover the demand, patterns made as they are needed (column generation).
 * It stays warm while demand is taken out, bars of a stock are limited, or patterns are shut.
 * @source gilmore-gomory-1961
 * @source farley-1990
 */

import { createPricer } from './create-pricer'
import { type DualValues, keepValues, mixValues, noValues, pricesAt, valuesBound } from './dual-values'
import type { Grown } from './grown'
import type { Meter } from './meter'
import { makePattern, type Pattern, patternKey } from './pattern'
import type { Filling, Pricer } from './pricer'
import { createSimplex } from './simplex'

export interface Master {
  readonly grown: Grown
  readonly pricer: Pricer
  readonly qty: Float64Array
  readonly least: Float64Array
  readonly most: Float64Array
  /** The values that gave the best bound of the last `solve`, and that bound, in cost units. */
  readonly values: DualValues
  readonly valuesBound: () => number
  readonly add: (pattern: Pattern) => number
  readonly setQty: (kind: number, qty: number) => void
  readonly setBox: (least: Float64Array, most: Float64Array) => void
  /** Shuts the patterns that hold more of a size than is left. */
  readonly shutImproper: () => void
  /**
   * Solves to the end, until the bound reaches `enough` or work runs out; `reaches` says whether rounding the objective
   * up and the bound up come to the same, so that going on would change nothing.
   */
  readonly solve: (
    enough: number,
    settled: (objective: number, bound: number) => boolean,
    mostRounds?: number
  ) => MasterResult
  readonly uses: () => { readonly pattern: Pattern; readonly value: number }[]
  readonly patterns: readonly Pattern[]
  /** Patterns that a dive has tried and laid aside. */
  readonly laidAside: Set<Pattern>
  readonly reducedCost: (pattern: Pattern) => number
}

export interface MasterResult {
  readonly objective: number
  /** A lower bound in floating figures: to decide by, not to prove with. */
  readonly bound: number
  readonly ended: 'optimal' | 'settled' | 'enough' | 'out-of-work' | 'out-of-rounds'
  /** Demand that no pattern covers within the limits. */
  readonly uncovered: number
}

const TOLERANCE = 1e-7

export const createMaster = (grown: Grown, meter: Meter): Master => {
  const { kinds, stock } = grown
  const boxed = stock.length > 1 || stock.some((bar) => bar.limited)
  const dearest = Math.max(1, ...stock.map((bar) => bar.cost))
  const unit = 1 / dearest
  const rows = kinds + (boxed ? 2 * stock.length : 0)
  const senses = Array.from({ length: rows }, (_, r): 1 | -1 => (r >= kinds && r < kinds + stock.length ? -1 : 1))
  const simplex = createSimplex(senses, STAND_IN)
  const first = simplex.columns()
  const patterns: Pattern[] = []
  const columnOf = new Map<string, number>()
  const pricer = createPricer(grown, meter)
  const qty = Float64Array.from(grown.qty)
  const least = new Float64Array(stock.length)
  const most = Float64Array.from(stock, (bar) => bar.count)
  const limits = { qty, least, most, boxed }
  const values = noValues(grown)
  const own = noValues(grown)
  const at = noValues(grown)
  let bestBound = Number.NEGATIVE_INFINITY
  const need = new Float64Array(stock.length)
  const rest = new Float64Array(kinds)
  const laidAside = new Set<Pattern>()

  const sendRhs = (): void => {
    for (let kind = 0; kind < kinds; kind++) simplex.setRhs(kind, qty[kind] ?? 0)
    if (!boxed) return
    for (let s = 0; s < stock.length; s++) {
      simplex.setRhs(kinds + s, most[s] ?? 0)
      simplex.setRhs(kinds + stock.length + s, least[s] ?? 0)
    }
  }
  sendRhs()

  const add = (pattern: Pattern): number => {
    const key = patternKey(pattern)
    const known = columnOf.get(key)
    if (known !== undefined) {
      const same = patterns[known]
      if (same && fits(same, qty) && !laidAside.has(same)) simplex.shut(first + known, false)
      return known
    }
    const entries = boxed
      ? [...pattern.kinds, kinds + pattern.stock, kinds + stock.length + pattern.stock]
      : [...pattern.kinds]
    simplex.add(entries, boxed ? [...pattern.counts, 1, 1] : pattern.counts, pattern.cost * unit)
    patterns.push(pattern)
    columnOf.set(key, patterns.length - 1)
    return patterns.length - 1
  }
  if (boxed) for (let s = 0; s < stock.length; s++) add(makePattern(grown, s, [], []))

  const readDuals = (): void => {
    for (let kind = 0; kind < kinds; kind++) own.piece[kind] = Math.max(0, simplex.duals[kind] ?? 0)
    if (!boxed) return
    for (let s = 0; s < stock.length; s++) {
      own.most[s] = Math.max(0, -(simplex.duals[kinds + s] ?? 0))
      own.least[s] = Math.max(0, simplex.duals[kinds + stock.length + s] ?? 0)
    }
  }

  /** Adds the patterns that improve; gives what each stock's best passes its price by. */
  const price = (over: Float64Array): number => {
    pricer.fill(at.piece, qty, need)
    let added = 0
    let bestStock = -1
    let best: Filling | null = null
    for (let s = 0; s < stock.length; s++) {
      over[s] = 0
      if ((most[s] ?? 0) <= 0) continue
      const filling = pricer.best(s, unit)
      const gain = filling === null ? 0 : filling.value - (need[s] ?? 0)
      if (filling === null || filling.kinds.length === 0) continue
      over[s] = Math.max(0, gain)
      if (gain <= TOLERANCE) continue
      if (bestStock < 0 || gain > (over[bestStock] ?? 0)) {
        bestStock = s
        best = filling
      }
      added += offer(s, filling)
    }
    if (best !== null) added += priceRest(bestStock, best)
    return added
  }

  /** More patterns for the stock that gains most, from the pieces that the ones before have left. */
  const priceRest = (s: number, first: Filling): number => {
    rest.set(qty)
    let added = 0
    let filling: Filling | null = first
    for (let round = 0; round < ROUNDS; round++) {
      filling.kinds.forEach((kind, j) => {
        rest[kind] = (rest[kind] ?? 0) - (filling?.counts[j] ?? 0)
      })
      pricer.fill(at.piece, rest, need)
      filling = pricer.best(s, unit)
      if (filling === null || filling.kinds.length === 0 || filling.value - (need[s] ?? 0) <= TOLERANCE) break
      added += offer(s, filling)
    }
    return added
  }

  /** 1 when the pattern has reduced cost below zero at the master's own values. */
  const offer = (s: number, filling: Filling): number => {
    const before = patterns.length
    const column = first + add(makePattern(grown, s, filling.kinds, filling.counts))
    // A pattern shut before may have come open; one that stays shut is no gain.
    return (patterns.length > before || !simplex.isShut(column)) && simplex.reducedCost(column) < -TOLERANCE / 2 ? 1 : 0
  }

  /** Prices at values between the best known and the master's own, ever nearer to its own, until patterns are found. */
  const priceSmoothed = (over: Float64Array, enough: number): number => {
    let added = 0
    let weight = bestBound === Number.NEGATIVE_INFINITY ? 0 : SMOOTHING
    for (;;) {
      mixValues(at, values, own, weight)
      pricesAt(grown, at, unit, need)
      added = price(over)
      const here = valuesBound(grown, at, over, limits, unit) * dearest
      if (here > bestBound) {
        bestBound = here
        keepValues(grown, values, at, over, boxed, unit)
      }
      if (added > 0 || weight === 0 || bestBound >= enough || meter.isOut()) return added
      weight = weight < 0.3 ? 0 : weight - 0.3
    }
  }

  const solve: Master['solve'] = (enough, settled, mostRounds = Number.POSITIVE_INFINITY) => {
    const over = new Float64Array(stock.length)
    bestBound = Number.NEGATIVE_INFINITY
    let standIn = STAND_IN
    simplex.setStandInCost(standIn)
    for (let round = 1; ; round++) {
      const pivots = simplex.solve()
      meter.spend((pivots * (rows * rows + 12 * patterns.length) + 20 * patterns.length) / 1000 + 1)
      const objective = simplex.objective() * dearest
      const uncovered = simplex.uncovered()
      readDuals()
      const added = priceSmoothed(over, enough)
      const bound = bestBound
      if (bound >= enough) return { objective, bound, ended: 'enough', uncovered }
      if (uncovered < TOLERANCE && settled(objective, bound)) return { objective, bound, ended: 'settled', uncovered }
      if (meter.isOut()) return { objective, bound, ended: 'out-of-work', uncovered }
      if (added > 0) {
        if (round >= mostRounds) return { objective, bound, ended: 'out-of-rounds', uncovered }
        continue
      }
      if (uncovered > TOLERANCE && standIn < STAND_IN * 1e4) {
        // Dear enough to tell a want of stock from a dear piece.
        standIn *= 20
        simplex.setStandInCost(standIn)
        bestBound = Number.NEGATIVE_INFINITY
        continue
      }
      return { objective, bound, ended: 'optimal', uncovered }
    }
  }

  return {
    grown,
    pricer,
    qty,
    least,
    most,
    values,
    valuesBound: () => bestBound,
    add,
    setQty: (kind, left) => {
      qty[kind] = left
      simplex.setRhs(kind, left)
    },
    setBox: (newLeast, newMost) => {
      least.set(newLeast)
      most.set(newMost)
      sendRhs()
    },
    shutImproper: () => {
      for (let p = 0; p < patterns.length; p++) {
        const pattern = patterns[p]
        if (pattern) simplex.shut(first + p, !fits(pattern, qty) || laidAside.has(pattern))
      }
    },
    solve,
    uses: () =>
      simplex.solution().flatMap(({ column, value: level }) => {
        const pattern = patterns[column - first]
        return pattern ? [{ pattern, value: level }] : []
      }),
    patterns,
    laidAside,
    reducedCost: (pattern) => {
      let rest = pattern.cost * unit + (values.most[pattern.stock] ?? 0) - (values.least[pattern.stock] ?? 0)
      pattern.kinds.forEach((kind, j) => {
        rest -= (values.piece[kind] ?? 0) * (pattern.counts[j] ?? 0)
      })
      return rest * dearest
    }
  }
}

/** In bars of the dearest stock: more than any size is worth while stock is not short. */
const STAND_IN = 4
/** Weight of the best known values in the ones that are priced next. */
const SMOOTHING = 0.8
const ROUNDS = 3

const fits = (pattern: Pattern, qty: Float64Array): boolean => {
  for (let j = 0; j < pattern.kinds.length; j++) {
    if ((pattern.counts[j] ?? 0) > (qty[pattern.kinds[j] ?? 0] ?? 0)) return false
  }
  return true
}
