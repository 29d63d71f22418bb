/**
 * Plans from the master: fix what it uses whole times, then its fullest part, price again for what is left, and so on down.
 * A wrong turn is taken back a limited number of times (limited discrepancy), and a branch that cannot beat the best plan
 * ends at once.
 */
import { greedyBars } from './greedy'
import type { Master } from './master'
import type { Meter } from './meter'
import { type BarsFound, type Pattern, type TimedPattern, withoutSurplus } from './pattern'
import { roundUp } from './safe-bound'

export interface DiveAsk {
  readonly master: Master
  readonly meter: Meter
  readonly least: Float64Array
  readonly most: Float64Array
  /** Wrong turns that may be taken back on the way down. */
  readonly turns: number
  /** Rounds of pricing at each step. */
  readonly rounds: number
  /** A plan at this cost ends the dive. */
  readonly target: number
  /** Only plans below this are of use; the last best. */
  readonly best: () => number
  readonly found: (plan: BarsFound) => void
  /**
   * Fewer bars than the counts would be welcome, though there may be no such plan: the master then keeps looking for the
   * fullest patterns after it has reached the target.
   */
  readonly fewer: boolean
}

const WHOLE = 1e-4
const WIDEST = 4

export const dive = (ask: DiveAsk): void => {
  const { master } = ask
  const { grown } = master
  const fixed: TimedPattern[] = []
  const qty = Float64Array.from(grown.qty)
  const least = Float64Array.from(ask.least)
  const most = Float64Array.from(ask.most)

  const send = (): void => {
    for (let kind = 0; kind < grown.kinds; kind++) master.setQty(kind, qty[kind] ?? 0)
    master.setBox(least, most)
    master.shutImproper()
  }

  const down = (fixedCost: number, turns: number): boolean => {
    if (ask.meter.isOut()) return true
    send()
    const step = grown.costStep
    const cutoff = ask.best() - fixedCost - step + 1e-6
    const result = master.solve(
      cutoff,
      (objective, bound) => {
        const near = roundUp(objective - 1e-3, step)
        // As good as the dive can end, or pricing on would not change what it rounds to.
        return (!ask.fewer && near + fixedCost <= ask.target) || roundUp(bound - 1e-6, step) >= near
      },
      ask.rounds
    )
    // Out of rounds the objective is no bound, but says well enough that this way down leads nowhere.
    const likely = Math.max(result.bound - 1e-6, result.ended === 'out-of-rounds' ? result.objective - 1e-3 : 0)
    if (roundUp(likely, step) > cutoff || result.uncovered > WHOLE) return false
    const uses = master.uses()
    const offer = (rest: readonly TimedPattern[]): boolean => {
      const plan = withoutSurplus(grown, [...fixed, ...rest], grown.qty)
      if (plan !== null && plan.cost < ask.best()) ask.found(plan)
      return ask.best() <= ask.target
    }
    if (uses.every(({ value }) => Math.abs(value - Math.round(value)) < WHOLE)) {
      return offer(uses.map(({ pattern, value }) => ({ pattern, times: Math.round(value) })))
    }
    const whole = uses.filter(({ value }) => value >= 1 - WHOLE)
    if (whole.length > 0) {
      const before = { qty: Float64Array.from(qty), least: Float64Array.from(least), most: Float64Array.from(most) }
      let cost = 0
      for (const { pattern, value } of whole) cost += fix(pattern, Math.floor(value + WHOLE))
      const rest = greedyBars(grown, qty, most)
      const done = (rest !== null && meetsLeast(rest) && offer(rest.patterns)) || down(fixedCost + cost, turns)
      fixed.length -= whole.length
      qty.set(before.qty)
      least.set(before.least)
      most.set(before.most)
      return done
    }
    const ranked = uses
      .map((use) => ({
        ...use,
        rank: use.value + 1e-3 * (use.pattern.fill / (grown.stock[use.pattern.stock]?.capacity ?? 1))
      }))
      .sort((a, b) => b.rank - a.rank)
    const aside: Pattern[] = []
    let ended = false
    for (let turn = 0; turn < Math.min(ranked.length, turns + 1, WIDEST) && !ended; turn++) {
      const use = ranked[turn]
      if (!use) break
      const before = { qty: Float64Array.from(qty), least: Float64Array.from(least), most: Float64Array.from(most) }
      const cost = fix(use.pattern, 1)
      ended = down(fixedCost + cost, turns - turn)
      fixed.length -= 1
      qty.set(before.qty)
      least.set(before.least)
      most.set(before.most)
      master.laidAside.add(use.pattern)
      aside.push(use.pattern)
    }
    for (const pattern of aside) master.laidAside.delete(pattern)
    return ended
  }

  const meetsLeast = (plan: BarsFound): boolean => {
    const used = new Float64Array(grown.stock.length)
    for (const { pattern, times } of plan.patterns) used[pattern.stock] = (used[pattern.stock] ?? 0) + times
    return least.every((n, s) => (used[s] ?? 0) >= n)
  }

  const fix = (pattern: Pattern, times: number): number => {
    pattern.kinds.forEach((kind, j) => {
      qty[kind] = Math.max(0, (qty[kind] ?? 0) - (pattern.counts[j] ?? 0) * times)
    })
    most[pattern.stock] = Math.max(0, (most[pattern.stock] ?? 0) - times)
    least[pattern.stock] = Math.max(0, (least[pattern.stock] ?? 0) - times)
    fixed.push({ pattern, times })
    return pattern.cost * times
  }

  down(0, ask.turns)
  qty.set(grown.qty)
  least.set(ask.least)
  most.set(ask.most)
  send()
}
