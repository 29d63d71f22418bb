import type { ReactNode } from 'react'
import type { PricedOffer } from '../../../shared-model/cutting'
import { type Edited, setPrice, type Workshop } from '../../../shared-model/design'
import { CheckField } from '../../fields/CheckField'
import { MoneyField } from '../../fields/MoneyField'
import { TextField } from '../../fields/TextField'
import type { EditableColumn } from './EditableTable'

interface Priced {
  readonly id: string
  readonly offer: PricedOffer
}

type EditWorkshop = (what: string, change: (workshop: Workshop) => Edited<Workshop>) => string | null

/** Price (and what stands below it), supplier, day of the price, tax inside or not: the same for bars, sheets and packs. */
export function priceColumns<T extends Priced>(
  list: 'stock' | 'sheets' | 'offers',
  edit: EditWorkshop,
  nameOf: (row: T) => string,
  today: string,
  below: (row: T) => ReactNode = () => null
): readonly EditableColumn<T>[] {
  const set = (row: T, offer: Partial<PricedOffer>): string | null =>
    edit('change a price', (workshop) => setPrice(workshop, list, row.id, offer))
  return [
    {
      head: 'Price',
      figure: true,
      cell: (row) => (
        <>
          <MoneyField
            inCell
            label={`Price of ${nameOf(row)}`}
            path={`${list}.${row.id}.offer.priceMinor`}
            value={row.offer.priceMinor}
            commit={(priceMinor) =>
              set(row, { priceMinor, pricedOn: row.offer.pricedOn === '' ? today : row.offer.pricedOn })
            }
          />
          {below(row)}
        </>
      )
    },
    {
      head: 'Supplier',
      cell: (row) => (
        <TextField
          inCell
          label={`Supplier of ${nameOf(row)}`}
          value={row.offer.supplier}
          commit={(supplier) => set(row, { supplier })}
        />
      )
    },
    {
      head: 'Price of (day)',
      cell: (row) => (
        <TextField
          inCell
          label={`Day of the price of ${nameOf(row)}`}
          path={`${list}.${row.id}.offer.pricedOn`}
          value={row.offer.pricedOn}
          commit={(pricedOn) => set(row, { pricedOn })}
        />
      )
    },
    {
      head: 'Tax inside',
      cell: (row) => (
        <CheckField
          inCell
          label={`Tax inside the price of ${nameOf(row)}`}
          value={row.offer.taxInside}
          commit={(taxInside) => set(row, { taxInside })}
        />
      )
    }
  ]
}
