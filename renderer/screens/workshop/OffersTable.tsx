import type { NeedKind, PackOffer } from '../../../shared-model/bill'
import { addOffer, deleteFrom, editOffer, inOwnCurrency } from '../../../shared-model/design'
import { NEED_NAMES } from '../../../shared-model/words'
import { ChoiceField } from '../../fields/ChoiceField'
import { NumberField } from '../../fields/NumberField'
import { TextField } from '../../fields/TextField'
import { Icon } from '../../icons/Icon'
import { useFullPlan } from '../../plan/use-plan'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { breakColumns } from './break-columns'
import { EditableTable } from './EditableTable'
import { ForeignPrice } from './ForeignPrice'
import { priceColumns } from './price-columns'
import { breakPairs } from './rows/break-cells'
import { offerRows } from './rows/offer-rows'
import { RowsInOut } from './rows/RowsInOut'
import { usePaste } from './rows/use-paste'
import { useRowsFor } from './rows/use-rows-for'

interface Wanted {
  readonly need: NeedKind
  readonly partId: string
  readonly name: string
}

/** What is bought in packs; bars and sheets have tables of their own. */
const KINDS = (Object.entries(NEED_NAMES) as readonly (readonly [NeedKind, string])[])
  .filter(([kind]) => kind !== 'stock' && kind !== 'sheet')
  .map(([value, label]) => ({ value, label }))

/** Packs on offer: caps, cups, sealant and whatever else is bought. */
export function OffersTable() {
  const offers = useApp((state) => state.workshop.offers)
  const today = useApp((state) => state.on)
  const edit = useEdit()
  const workshop = useApp((state) => state.workshop)
  const rowsFor = useRowsFor()
  const table = offerRows(workshop, rowsFor)
  const paste = usePaste('packs', table, rowsFor)
  const { plan } = useFullPlan()
  const lines: readonly Wanted[] = (plan?.bill.lines ?? []).filter(
    (line) => line.need !== 'stock' && line.need !== 'sheet'
  )
  const missing = lines.filter(
    (line) => !offers.some((offer) => offer.need === line.need && offer.partId === line.partId)
  )
  const set = (offer: PackOffer, changes: Parameters<typeof editOffer>[2]): string | null =>
    edit.workshop('change a pack', (workshop) => editOffer(workshop, offer.id, changes))
  const countAsOwn = (offer: PackOffer): unknown =>
    edit.workshop('count a price in the workshop’s currency', (now) => inOwnCurrency(now, offer.id))
  const addFor = (line: Wanted): string | null =>
    edit.workshop('add a pack on offer', (workshop) =>
      addOffer(workshop, {
        need: line.need,
        partId: line.partId,
        name: line.name,
        packSize: 1,
        offer: { priceMinor: null, supplier: '', pricedOn: '', taxInside: false },
        breaks: [],
        leastPacks: 1
      })
    )
  return (
    <EditableTable
      list="offers"
      caption="Packs on offer"
      says="What is bought in packs, each for one thing the design needs."
      empty="No packs yet. Choose what is needed to enter its price."
      rows={offers}
      keyOf={(offer) => offer.id}
      nameOf={(offer) => offer.name}
      remove={(offer) => edit.workshop('take a pack off', (workshop) => deleteFrom(workshop, 'offers', offer.id))}
      add={
        missing.length === 0 ? null : (
          <button type="button" className="button" onClick={() => missing.every((line) => addFor(line) === null)}>
            <Icon name="plus" />
            Add what the design needs ({missing.length})
          </button>
        )
      }
      paste={paste}
      below={<RowsInOut what="packs" table={table} rowsFor={rowsFor} />}
      columns={[
        {
          head: 'For',
          cell: (offer) => (
            <ChoiceField
              inCell
              label={`What ${offer.name} is for`}
              value={offer.need}
              choices={KINDS}
              commit={(need) => set(offer, { need, partId: '' })}
            />
          )
        },
        {
          head: 'Name',
          cell: (offer) => (
            <TextField inCell wide label="Name" value={offer.name} commit={(name) => set(offer, { name })} />
          )
        },
        {
          head: 'In a pack',
          figure: true,
          cell: (offer) => (
            <NumberField
              inCell
              label={`In a pack of ${offer.name}`}
              path={`offers.${offer.id}.packSize`}
              value={offer.packSize}
              commit={(packSize) => set(offer, { packSize })}
            />
          )
        },
        {
          head: 'Least packs',
          figure: true,
          cell: (offer) => (
            <NumberField
              inCell
              whole
              label={`Least packs of ${offer.name}`}
              path={`offers.${offer.id}.leastPacks`}
              value={offer.leastPacks}
              commit={(leastPacks) => set(offer, { leastPacks })}
            />
          )
        },
        ...priceColumns<PackOffer>(
          'offers',
          edit.workshop,
          (offer) => offer.name,
          today,
          (offer) => <ForeignPrice offer={offer} own={workshop.currency} countAsOwn={countAsOwn} />
        ),
        ...breakColumns(breakPairs(offers), set)
      ]}
    />
  )
}
