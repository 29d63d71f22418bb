import { failed, ok } from '../../../../shared-model/outcome'
import { numberCell } from './price-cells'
import type { RowColumn, RowsFor } from './row-table'

/** How many there are; empty: as many as are wanted. */
export const countCell = <T extends { readonly count: number | null }>(rowsFor: RowsFor): RowColumn<T> => ({
  head: 'How many',
  also: ['count', 'how many there are'],
  read: (cell, item) => {
    if (cell === '') return ok({ ...item, count: null })
    const read = numberCell(cell, rowsFor)
    if (!read.ok) return read
    return Number.isInteger(read.value)
      ? ok({ ...item, count: read.value })
      : failed(`“${cell.slice(0, 20)}” is not a whole number.`)
  },
  write: ({ count }) => (count === null ? '' : `${count}`)
})
