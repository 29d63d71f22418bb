/** Finds the most valuable way to fill each stock's bar, given a value for every size. */

import { denseTable } from './dense-table'
import type { Grown } from './grown'
import type { Meter } from './meter'
import { sparseTable } from './sparse-table'

export interface Pricer {
  /**
   * Works the fillings out for these values and these most numbers of each size. A filling whose value does not pass
   * `atLeast[stock]` need not be found.
   */
  readonly fill: (value: Float64Array, qty: Float64Array, atLeast: Float64Array) => void
  /** Best value of pieces plus `leftScale` × worth of what is left, with the pieces; null when none passes `atLeast`. */
  readonly best: (stock: number, leftScale: number) => Filling | null
}

export interface Filling {
  readonly value: number
  readonly kinds: readonly number[]
  readonly counts: readonly number[]
}

const DENSE_CELLS = 1.5e6

/** A table over every length when bars are short in units, else over the lengths that pieces really add up to. */
export const createPricer = (grown: Grown, meter: Meter): Pricer => {
  const longest = grown.stock.reduce((most, bar) => Math.max(most, bar.capacity), 0)
  return longest * grown.kinds <= DENSE_CELLS ? denseTable(grown, longest, meter) : sparseTable(grown, meter)
}
