/**
 * The whole-number programme over a list of patterns, by a solver library: a plan that costs at most so much, or that there
 * is none. With every pattern on the list that could stand in such a plan, "none" is a proof by search.
 */
import type { Highs, ModelData } from 'highs'
import type { Master } from './master'
import type { Meter } from './meter'
import { type BarsFound, type Pattern, withoutSurplus } from './pattern'

export interface CoverAsk {
  readonly highs: Highs
  readonly master: Master
  readonly patterns: readonly Pattern[]
  readonly least: Float64Array
  readonly most: Float64Array
  /** Costs to look between. */
  readonly from: number
  readonly to: number
  readonly meter: Meter
}

export interface CoverEnd {
  readonly plan: BarsFound | null
  /** No plan from these patterns costs less than the one found, or at most `to` when none is. */
  readonly complete: boolean
}

/** Work that stands for the time between two of the library's calls back. */
const WORK_PER_CALL = 200

export const cover = (ask: CoverAsk): CoverEnd => {
  if (ask.patterns.length === 0) return { plan: null, complete: true }
  try {
    return coverBy(ask)
  } catch {
    // The library refuses some figures (too large for its floating point): it then has nothing to say about them.
    return { plan: null, complete: false }
  }
}

const coverBy = (ask: CoverAsk): CoverEnd => {
  const { highs, meter } = ask
  const { grown } = ask.master
  return highs.withModel(coverModel(ask), (model) => {
    model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: grown.costStep * 0.5, random_seed: 1 })
    const seconds = meter.secondsLeft()
    if (Number.isFinite(seconds)) model.options.set({ time_limit: seconds })
    const { callbackType, modelStatus } = highs.constants
    const stopWhenOut = (event: { interrupt(): void }): undefined => {
      meter.spend(WORK_PER_CALL)
      if (meter.isOut()) event.interrupt()
      return undefined
    }
    model.run({
      [callbackType.mipInterrupt]: stopWhenOut,
      [callbackType.simplexInterrupt]: stopWhenOut
    })
    const status = model.getModelStatus()
    if (status === modelStatus.infeasible) return { plan: null, complete: true }
    const { colValue } = model.getSolution()
    const timed = ask.patterns.flatMap((pattern, j) => {
      const times = Math.round(colValue[j] ?? 0)
      return times > 0 ? [{ pattern, times }] : []
    })
    return { plan: withoutSurplus(grown, timed, grown.qty), complete: status === modelStatus.optimal }
  })
}

const coverModel = ({ highs, master, patterns, least, most, from, to }: CoverAsk): ModelData => {
  const { grown } = master
  const { kinds, stock } = grown
  const rows = kinds + stock.length + 1
  const starts = new Int32Array(patterns.length + 1)
  const indices: number[] = []
  const values: number[] = []
  patterns.forEach((pattern, j) => {
    indices.push(...pattern.kinds, kinds + pattern.stock, rows - 1)
    values.push(...pattern.counts, 1, pattern.cost)
    starts[j + 1] = indices.length
  })
  const colUpper = Float64Array.from(patterns, (pattern) =>
    pattern.kinds.reduce(
      (times, kind, j) => Math.max(times, Math.ceil((grown.qty[kind] ?? 0) / (pattern.counts[j] ?? 1))),
      1
    )
  )
  // Looking for one cost alone, any plan will do.
  const anyWillDo = from >= to
  return {
    numCols: patterns.length,
    numRows: rows,
    sense: highs.constants.objectiveSense.minimize,
    colCost: Float64Array.from(patterns, (pattern) => (anyWillDo ? 0 : pattern.cost)),
    colLower: new Float64Array(patterns.length),
    colUpper,
    rowLower: Float64Array.from([...grown.qty, ...least, from]),
    rowUpper: Float64Array.from([...grown.qty.map(() => highs.infinity), ...most, to]),
    integrality: new Int32Array(patterns.length).fill(highs.constants.variableType.integer),
    matrix: {
      format: 'csc',
      numRows: rows,
      numCols: patterns.length,
      starts,
      indices: Int32Array.from(indices),
      values: Float64Array.from(values)
    }
  }
}
