import type { Bill } from './bill'
import type { ShelfItem } from './offer'
import { suits } from './pack-line'

/**
 * The shelf after a batch: what the bill took from it is gone, what its packs left over is on it, each with its worth. Bars and
 * sheets go to the rack instead.
 */
export function putOnShelf(shelf: readonly ShelfItem[], bill: Bill): readonly ShelfItem[] {
  const lines = bill.lines.filter((line) => line.need !== 'stock' && line.need !== 'sheet')
  let after: readonly ShelfItem[] = shelf
  for (const line of lines) {
    const mine = after.filter((item) => suits(line, item))
    const amount = settle(mine.reduce((sum, item) => sum + item.amount, 0) - line.fromShelf + line.left)
    const worth =
      mine.reduce((sum, item) => sum + (item.worthMinor ?? 0), 0) - line.fromShelfMinor + (line.restMinor ?? 0)
    const rest = after.filter((item) => !suits(line, item))
    const kept = { need: line.need, partId: line.partId, amount }
    after = amount > 0 ? [...rest, worth > 0 ? { ...kept, worthMinor: worth } : kept] : rest
  }
  return after
}

/** Takes the binary noise off a sum of decimals. */
const settle = (amount: number): number => Math.round(amount * 1e6) / 1e6
