import { addSheet, editSheet, type Workshop } from '../../../../shared-model/design'
import { MATERIAL_IDS } from '../../../../shared-model/materials'
import { failed, ok } from '../../../../shared-model/outcome'
import type { SheetStock } from '../../../../shared-model/rings'
import { MATERIAL_NAMES } from '../../../../shared-model/words'
import { countCell } from './count-cell'
import { lengthCell } from './length-cell'
import { priceCells } from './price-cells'
import type { RowsFor, RowTable } from './row-table'

const BLANK: SheetStock = {
  id: '',
  name: '',
  material: 'eva-foam',
  widthMm: 0,
  heightMm: 0,
  thicknessMm: 0,
  count: null,
  isOffcut: false,
  offer: { priceMinor: null, supplier: '', pricedOn: '', taxInside: false }
}

/** Sheets as rows; a material goes by its name or its id. */
export function sheetRows(workshop: Workshop, rowsFor: RowsFor): RowTable<SheetStock> {
  return {
    name: 'sheets',
    items: workshop.sheets,
    blank: BLANK,
    columns: [
      {
        head: 'Name',
        needed: true,
        read: (cell, sheet) => ok({ ...sheet, name: cell }),
        write: ({ name }) => name
      },
      {
        head: 'Material',
        needed: true,
        read: (cell, sheet) => {
          const word = cell.toLowerCase()
          const material = MATERIAL_IDS.find((id) => id === word || MATERIAL_NAMES[id].toLowerCase() === word)
          return material === undefined
            ? failed(`no material is called “${cell.slice(0, 60)}”.`)
            : ok({ ...sheet, material })
        },
        write: ({ material }) => MATERIAL_NAMES[material]
      },
      lengthCell('Width', rowsFor, { of: ({ widthMm }) => widthMm, put: (sheet, widthMm) => ({ ...sheet, widthMm }) }),
      lengthCell('Height', rowsFor, {
        of: ({ heightMm }) => heightMm,
        put: (sheet, heightMm) => ({ ...sheet, heightMm })
      }),
      lengthCell('Thickness', rowsFor, {
        of: ({ thicknessMm }) => thicknessMm,
        put: (sheet, thicknessMm) => ({ ...sheet, thicknessMm })
      }),
      countCell(rowsFor),
      ...priceCells<SheetStock>(rowsFor)
    ],
    put: (now, { id, ...sheet }) => (id === '' ? addSheet(now, sheet) : editSheet(now, id, sheet))
  }
}
