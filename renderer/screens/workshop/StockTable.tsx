import type { StockBar } from '../../../shared-model/cutting'
import { addStock, deleteFrom, editStock } from '../../../shared-model/design'
import { useOffered } from '../../catalogue/use-offered'
import { ChoiceField } from '../../fields/ChoiceField'
import { LengthField } from '../../fields/LengthField'
import { Icon } from '../../icons/Icon'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'
import { EditableTable } from './EditableTable'
import { MaybeCountField } from './MaybeCountField'
import { priceColumns } from './price-columns'
import { RowsInOut } from './rows/RowsInOut'
import { stockRows } from './rows/stock-rows'
import { usePaste } from './rows/use-paste'
import { useRowsFor } from './rows/use-rows-for'

/** A usual bar to start from; typed over. */
const FIRST_BAR_MM = 3000

/** Bars on offer: which profile, how long, at what price. */
export function StockTable() {
  const stock = useApp((state) => state.workshop.stock)
  const first = useApp((state) => state.design.channels[0]?.profileId)
  const today = useApp((state) => state.on)
  const edit = useEdit()
  const workshop = useApp((state) => state.workshop)
  const rowsFor = useRowsFor()
  const say = useSay()
  const { profiles } = useOffered()
  const table = stockRows(workshop, profiles, rowsFor)
  const paste = usePaste('stock', table, rowsFor)
  const profileId = first ?? profiles[0]?.id
  const nameOf = (bar: StockBar): string =>
    `${profiles.find((each) => each.id === bar.profileId)?.name ?? bar.profileId}, ${say.length(bar.lengthMm)}`
  const set = (bar: StockBar, changes: Parameters<typeof editStock>[2]): string | null =>
    edit.workshop('change a bar on offer', (workshop) => editStock(workshop, bar.id, changes))
  return (
    <EditableTable
      list="stock"
      caption="Stock on offer"
      says="An empty price is not nought: the plan then says that it is missing."
      empty="No bars yet. Add the lengths you can buy; cuts are planned out of them."
      rows={stock}
      keyOf={(bar) => bar.id}
      nameOf={nameOf}
      remove={(bar) => edit.workshop('take a bar off', (workshop) => deleteFrom(workshop, 'stock', bar.id))}
      add={
        profileId === undefined ? null : (
          <button
            type="button"
            className="button"
            onClick={() =>
              edit.workshop('add a bar on offer', (workshop) =>
                addStock(workshop, { profileId, lengthMm: FIRST_BAR_MM })
              )
            }
          >
            <Icon name="plus" />
            Add a bar
          </button>
        )
      }
      paste={paste}
      below={<RowsInOut what="stock" table={table} rowsFor={rowsFor} />}
      columns={[
        {
          head: 'Profile',
          cell: (bar) => (
            <ChoiceField
              inCell
              label="Profile"
              value={bar.profileId}
              choices={profiles.map((each) => ({ value: each.id, label: each.name }))}
              commit={(id) => set(bar, { profileId: id })}
            />
          )
        },
        {
          head: 'Length',
          figure: true,
          cell: (bar) => (
            <LengthField
              inCell
              label={`Length of ${nameOf(bar)}`}
              path={`stock.${bar.id}.lengthMm`}
              value={bar.lengthMm}
              commit={(lengthMm) => set(bar, { lengthMm })}
            />
          )
        },
        {
          head: 'How many there are',
          figure: true,
          cell: (bar) => (
            <MaybeCountField
              inCell
              label={`How many of ${nameOf(bar)}`}
              value={bar.count}
              commit={(count) => set(bar, { count })}
            />
          )
        },
        ...priceColumns<StockBar>('stock', edit.workshop, nameOf, today)
      ]}
    />
  )
}
