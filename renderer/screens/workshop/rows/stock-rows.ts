import type { StockBar } from '../../../../shared-model/cutting'
import { addStock, editStock, type Workshop } from '../../../../shared-model/design'
import { failed, ok } from '../../../../shared-model/outcome'
import type { Profile } from '../../../../shared-model/profile'
import { countCell } from './count-cell'
import { lengthCell } from './length-cell'
import { priceCells } from './price-cells'
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
      lengthCell('Length', rowsFor, {
        of: ({ lengthMm }) => lengthMm,
        put: (bar, lengthMm) => ({ ...bar, lengthMm })
      }),
      countCell(rowsFor),
      ...priceCells<StockBar>(rowsFor)
    ],
    put: (now, { id, ...bar }) => (id === '' ? addStock(now, bar) : editStock(now, id, bar))
  }
}
