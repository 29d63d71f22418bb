import { addSheet, deleteFrom, editSheet } from '../../../shared-model/design'
import type { MaterialId } from '../../../shared-model/materials'
import { MATERIAL_IDS } from '../../../shared-model/materials'
import type { SheetStock } from '../../../shared-model/rings'
import { MATERIAL_NAMES } from '../../../shared-model/words'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { TextField } from '../../fields/TextField'
import { Icon } from '../../icons/Icon'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { EditableTable } from './EditableTable'
import { MaybeCountField } from './MaybeCountField'
import { priceColumns } from './price-columns'
import { RowsInOut } from './rows/RowsInOut'
import { sheetRows } from './rows/sheet-rows'
import { usePaste } from './rows/use-paste'
import { useRowsFor } from './rows/use-rows-for'

const MATERIALS: readonly { readonly value: MaterialId; readonly label: string }[] = MATERIAL_IDS.map((id) => ({
  value: id,
  label: MATERIAL_NAMES[id]
}))

const NEW_SHEET: Omit<SheetStock, 'id'> = {
  name: 'Foam sheet',
  material: 'eva-foam',
  widthMm: 300,
  heightMm: 200,
  thicknessMm: 6,
  offer: { priceMinor: null, supplier: '', pricedOn: '', taxInside: false },
  count: null,
  isOffcut: false
}

/** Sheets that collars and end plates are cut from. */
export function SheetsTable() {
  const sheets = useApp((state) => state.workshop.sheets)
  const today = useApp((state) => state.on)
  const edit = useEdit()
  const workshop = useApp((state) => state.workshop)
  const rowsFor = useRowsFor()
  const table = sheetRows(workshop, rowsFor)
  const paste = usePaste('sheets', table, rowsFor)
  const set = (sheet: SheetStock, changes: Parameters<typeof editSheet>[2]): string | null =>
    edit.workshop('change a sheet', (workshop) => editSheet(workshop, sheet.id, changes))
  const size = (head: string, key: 'widthMm' | 'heightMm' | 'thicknessMm') => ({
    head,
    figure: true,
    cell: (sheet: SheetStock) => (
      <LengthField
        inCell
        label={`${head} of ${sheet.name}`}
        path={`sheets.${sheet.id}.${key}`}
        value={sheet[key]}
        commit={(value) => set(sheet, { [key]: value })}
      />
    )
  })
  return (
    <EditableTable
      list="sheets"
      caption="Sheets"
      empty="No sheets. Collars and end plates are cut from them."
      rows={sheets}
      keyOf={(sheet) => sheet.id}
      nameOf={(sheet) => sheet.name}
      remove={(sheet) => edit.workshop('take a sheet off', (workshop) => deleteFrom(workshop, 'sheets', sheet.id))}
      add={
        <button
          type="button"
          className="button"
          onClick={() => edit.workshop('add a sheet', (workshop) => addSheet(workshop, NEW_SHEET))}
        >
          <Icon name="plus" />
          Add a sheet
        </button>
      }
      paste={paste}
      below={<RowsInOut what="sheets" table={table} rowsFor={rowsFor} />}
      columns={[
        {
          head: 'Name',
          cell: (sheet) => (
            <TextField inCell wide label="Name" value={sheet.name} commit={(name) => set(sheet, { name })} />
          )
        },
        {
          head: 'Material',
          cell: (sheet) => (
            <ChoiceField
              inCell
              label="Material"
              value={sheet.material}
              choices={MATERIALS}
              commit={(material) => set(sheet, { material })}
            />
          )
        },
        size('Width', 'widthMm'),
        size('Height', 'heightMm'),
        size('Thickness', 'thicknessMm'),
        {
          head: 'How many',
          figure: true,
          cell: (sheet) => (
            <MaybeCountField
              inCell
              label={`How many of ${sheet.name}`}
              value={sheet.count}
              commit={(count) => set(sheet, { count })}
            />
          )
        },
        ...priceColumns<SheetStock>('sheets', edit.workshop, (sheet) => sheet.name, today)
      ]}
    />
  )
}
