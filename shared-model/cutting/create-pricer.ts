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

/** How many lengths up to the longest bar's some pieces add up to; counted no further than matters. */
const reachedLengths = (grown: Grown, longest: number): number => {
  const isReached = new Uint8Array(longest + 1)
  const reached = [0]
  for (let kind = 0; kind < grown.kinds; kind++) {
    const size = grown.size[kind] ?? 1
    const qty = grown.qty[kind] ?? 0
    const before = reached.length
    for (let at = 0; at < before; at++) {
      let length = reached[at] ?? 0
      for (let n = 0; n < qty && length + size <= longest; n++) {
        length += size
        if (isReached[length] === 1) continue
        isReached[length] = 1
        reached.push(length)
      }
    }
    if (reached.length * LIST_STEP > longest) break
  }
  return reached.length
}
