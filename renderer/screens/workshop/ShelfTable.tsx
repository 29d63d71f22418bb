import type { NeedKind, ShelfItem } from '../../../shared-model/bill'
import { setShelf } from '../../../shared-model/design'
import { NEED_NAMES } from '../../../shared-model/words'
import { MoneyField } from '../../fields/MoneyField'
import { NumberField } from '../../fields/NumberField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { EditableTable } from './EditableTable'

/** Units of what is not counted in pieces. */
const UNITS: Partial<Readonly<Record<NeedKind, string>>> = {
  sealant: 'mL',
  cement: 'mL',
  feed: 'g or mL',
  medium: 'mL'
}

/** What packs left over; the next batch takes from here before it buys. */
export function ShelfTable() {
  const shelf = useApp((state) => state.workshop.shelf)
  const offers = useApp((state) => state.workshop.offers)
  const edit = useEdit()
  const rows = shelf.map((item, at) => ({ item, at }))
  const nameOf = ({ need, partId }: ShelfItem): string =>
    offers.find((offer) => offer.need === need && offer.partId === partId)?.name ?? (partId || NEED_NAMES[need])
  const set = (at: number, changes: Partial<ShelfItem>): string | null =>
    edit.workshop('change what is on the shelf', (workshop) =>
      setShelf(
        workshop,
        workshop.shelf.map((item, index) => (index === at ? { ...item, ...changes } : item))
      )
    )
  return (
    <EditableTable
      list="shelf"
      caption="Shelf"
      says="What packs left over. “Mark as built” puts it here, and the next batch takes from here before it buys."
      empty="Nothing on the shelf."
      rows={rows}
      keyOf={({ at }) => `${at}`}
      nameOf={({ item }) => nameOf(item)}
      remove={({ at }) =>
        edit.workshop('take something off the shelf', (workshop) =>
          setShelf(
            workshop,
            workshop.shelf.filter((_, index) => index !== at)
          )
        )
      }
      columns={[
        { head: 'For', cell: ({ item }) => NEED_NAMES[item.need] },
        { head: 'From', cell: ({ item }) => nameOf(item) },
        {
          head: 'How much',
          figure: true,
          cell: ({ item, at }) => (
            <NumberField
              inCell
              label={`How much of ${nameOf(item)}`}
              path={`shelf.${at}.amount`}
              value={item.amount}
              commit={(amount) => set(at, { amount })}
            />
          )
        },
        { head: 'In', cell: ({ item }) => UNITS[item.need] ?? 'pieces' },
        {
          head: 'Worth',
          figure: true,
          cell: ({ item, at }) => (
            <MoneyField
              inCell
              label={`Worth of ${nameOf(item)}`}
              path={`shelf.${at}.worthMinor`}
              value={item.worthMinor ?? 0}
              commit={(worthMinor) => set(at, { worthMinor: worthMinor ?? 0 })}
            />
          )
        }
      ]}
    />
  )
}
