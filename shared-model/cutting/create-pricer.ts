import { denseTable } from './dense-table'
import type { Grown } from './grown'
import type { Meter } from './meter'
import type { Pricer } from './pricer'
import { sparseTable } from './sparse-table'

const DENSE_CELLS = 1.5e6

/** A table over every length when bars are short in units, else over the lengths that pieces really add up to. */
export const createPricer = (grown: Grown, meter: Meter): Pricer => {
  const longest = grown.stock.reduce((most, bar) => Math.max(most, bar.capacity), 0)
  return longest * grown.kinds <= DENSE_CELLS ? denseTable(grown, longest, meter) : sparseTable(grown, meter)
}
