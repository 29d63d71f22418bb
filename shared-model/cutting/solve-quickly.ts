/** The live plan's solver: a good plan and a safe bound within a small count of work. */
import type { Budget } from '../outcome'
import { greedyBars } from './greedy'
import { grow } from './grown'
import type { CutInstance } from './instance'
import { barsFound } from './pattern'
import { type BarSolution, toCutPatterns } from './solution'

export const solveQuickly = (instance: CutInstance, _budget: Budget): BarSolution => {
  const grown = grow(instance)
  const count = Float64Array.from(grown.stock, (bar) => bar.count)
  const found = greedyBars(grown, grown.qty, count) ?? barsFound([])
  return {
    patterns: toCutPatterns(
      grown,
      found,
      instance.demand.map((piece) => piece.qty)
    ),
    cost: found.cost,
    lowerBound: 0,
    proven: found.cost === 0,
    shownBy: 'certificate',
    certificate: null,
    uncut: []
  }
}
