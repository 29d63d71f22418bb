import type { StockBar } from '../../../../shared-model/cutting'
import { addStock, editStock, type Shows, type Workshop } from '../../../../shared-model/design'
import { failed, ok } from '../../../../shared-model/outcome'
import type { Profile } from '../../../../shared-model/profile'
import { inchesFromMm, mm, parseLength } from '../../../../shared-model/units'
import { problemText } from '../../../plan/wording'
import { numberCell, numberText, priceCells } from './price-cells'
import type { RowsFor, RowTable } from './row-table'

const BLANK: StockBar = {
  id: '',
  profileId: '',
  lengthMm: 0,
  count: null,
  offer: { priceMinor: null, supplier: '', pricedOn: '', taxInside: false }
}

/** Bars on offer as rows; a profile goes by its name or its id. */
export function stockRows(
  workshop: Workshop,
  profiles: readonly Pick<Profile, 'id' | 'name'>[],
  rowsFor: RowsFor
): RowTable<StockBar> {
  const { shows } = rowsFor
  return {
    name: 'stock',
    items: workshop.stock,
    blank: BLANK,
    columns: [
      {
        head: 'Profile',
        needed: true,
        read: (cell, bar) => {
          const found =
            profiles.find(({ id }) => id === cell) ??
            profiles.find(({ name }) => name.toLowerCase() === cell.toLowerCase())
          return found === undefined
            ? failed(`no profile is called “${cell.slice(0, 60)}”.`)
            : ok({ ...bar, profileId: found.id })
        },
        write: (bar) => profiles.find(({ id }) => id === bar.profileId)?.name ?? bar.profileId
      },
      {
        head: `Length (${shows.units})`,
        also: ['length', 'length (in)', 'length (mm)'],
        needed: true,
        read: (cell, bar, head) => {
          // A length that stands as it was written stays exact.
          if (cell === lengthText(bar, shows)) return ok(bar)
          const shown = /\(mm\)/i.test(head) ? 'mm' : /\(in\)/i.test(head) ? 'in' : shows.units
          const read = parseLength(cell, { shown, decimalMark: shows.decimalMark })
          return read.ok ? ok({ ...bar, lengthMm: read.value }) : failed(problemText(read.problem, shows))
        },
        write: (bar) => lengthText(bar, shows)
      },
      {
        head: 'How many',
        also: ['count'],
        read: (cell, bar) => {
          if (cell === '') return ok({ ...bar, count: null })
          const read = numberCell(cell, rowsFor)
          return read.ok ? ok({ ...bar, count: read.value }) : read
        },
        write: (bar) => (bar.count === null ? '' : `${bar.count}`)
      },
      ...priceCells<StockBar>(rowsFor)
    ],
    put: (now, { id, ...bar }) => (id === '' ? addStock(now, bar) : editStock(now, id, bar))
  }
}

/** A plain number in the shop's units, so that a spreadsheet can reckon with it. */
const lengthText = (bar: StockBar, shows: Shows): string =>
  numberText(shows.units === 'mm' ? bar.lengthMm : inchesFromMm(mm(bar.lengthMm)), { shows })
