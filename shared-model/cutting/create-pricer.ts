import { denseTable } from './dense-table'
import type { Grown } from './grown'
import type { Meter } from './meter'
import type { Pricer } from './pricer'
import { sparseTable } from './sparse-table'

/** A table over every length when bars are short in units, else over the lengths that pieces really add up to. */
export const createPricer = (grown: Grown, meter: Meter): Pricer => {
  const longest = grown.stock.reduce((most, bar) => Math.max(most, bar.capacity), 0)
  const isShort = longest * grown.kinds <= DENSE_CELLS
  const isFilled = isShort && reachedLengths(grown, longest) * LIST_STEP > longest
  return isFilled ? denseTable(grown, longest, meter) : sparseTable(grown, meter)
}

const DENSE_CELLS = 1.5e6
/** A step through the list costs as much as so many cells of the table. */
const LIST_STEP = 8

/** How many lengths up to the longest bar's some pieces add up to. */
const reachedLengths = (grown: Grown, longest: number): number => {
  const reached = new Uint8Array(longest + 1)
  reached[0] = 1
  let count = 1
  for (let kind = 0; kind < grown.kinds; kind++) {
    const size = grown.size[kind] ?? 1
    let left = Math.min(grown.qty[kind] ?? 0, Math.floor(longest / size))
    for (let n = 1; left > 0; n *= 2) {
      const length = size * Math.min(n, left)
      left -= n
      for (let w = longest; w >= length; w--) {
        if (reached[w] === 0 && reached[w - length] === 1) {
          reached[w] = 1
          count++
        }
      }
    }
    if (count * LIST_STEP > longest) break
  }
  return count
}
