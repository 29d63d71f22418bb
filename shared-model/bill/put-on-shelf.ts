import type { Bill } from './bill'
import { drawFromShelf, settle } from './draw-from-shelf'
import type { ShelfItem } from './offer'

/**
 * The shelf after a batch: what the bill took from it is gone, what its packs left over is on it, each with its worth. Bars and
 * sheets go to the rack instead.
 */
export function putOnShelf(shelf: readonly ShelfItem[], bill: Bill): readonly ShelfItem[] {
  const lines = bill.lines.filter((line) => line.need !== 'stock' && line.need !== 'sheet')
  const drawn = lines.reduce((after, line) => drawFromShelf(after, line, line.fromShelf).shelf, shelf)
  return lines.reduce((after, line) => (line.left > 0 ? put(after, line) : after), drawn)
}

function put(shelf: readonly ShelfItem[], line: Bill['lines'][number]): readonly ShelfItem[] {
  const added: ShelfItem = { need: line.need, partId: line.partId, amount: line.left, worthMinor: line.restMinor ?? 0 }
  const same = (item: ShelfItem) => item.need === line.need && item.partId === line.partId
  const held = shelf.find(same)
  if (held === undefined) return [...shelf, added]
  const amount = settle(held.amount + added.amount)
  const worthMinor = (held.worthMinor ?? 0) + (line.restMinor ?? 0)
  return shelf.map((item) => (item === held ? { ...held, amount, worthMinor } : item))
}
