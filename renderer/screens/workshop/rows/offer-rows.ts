import type { NeedKind, PackOffer } from '../../../../shared-model/bill'
import { addOffer, editOffer, type Workshop } from '../../../../shared-model/design'
import { failed, ok } from '../../../../shared-model/outcome'
import { NEED_NAMES } from '../../../../shared-model/words'
import { breakCells, breakPairs, MOST_BREAKS, wholeBreaks } from './break-cells'
import { numberCell, numberText, priceCells } from './price-cells'
import type { RowsFor, RowTable } from './row-table'

const BLANK: PackOffer = {
  id: '',
  need: 'packing',
  partId: '',
  name: '',
  packSize: 1,
  leastPacks: 1,
  breaks: [],
  offer: { priceMinor: null, supplier: '', pricedOn: '', taxInside: false }
}

/** Packs on offer as rows, each price break in two columns of its own. */
export function offerRows(workshop: Workshop, rowsFor: RowsFor): RowTable<PackOffer> {
  const pairs = breakPairs(workshop.offers)
  return {
    name: 'packs',
    items: workshop.offers,
    blank: BLANK,
    columns: [
      {
        head: 'For',
        needed: true,
        read: (cell, offer) => {
          const need = needOf(cell)
          return need === undefined
            ? failed(`“${cell.slice(0, 40)}” is nothing that is bought in packs here.`)
            : ok({ ...offer, need })
        },
        write: (offer) => NEED_NAMES[offer.need]
      },
      {
        head: 'Name',
        needed: true,
        read: (cell, offer) => ok({ ...offer, name: cell }),
        write: (offer) => offer.name
      },
      {
        head: 'In a pack',
        read: (cell, offer) => {
          if (cell === '') return ok(offer)
          const read = numberCell(cell, rowsFor)
          return read.ok ? ok({ ...offer, packSize: read.value }) : read
        },
        write: (offer) => numberText(offer.packSize, rowsFor)
      },
      {
        head: 'Least packs',
        read: (cell, offer) => {
          if (cell === '') return ok(offer)
          const read = numberCell(cell, rowsFor)
          return read.ok ? ok({ ...offer, leastPacks: read.value }) : read
        },
        write: (offer) => `${offer.leastPacks}`
      },
      ...priceCells<PackOffer>(rowsFor),
      ...breakCells(pairs, rowsFor),
      {
        head: 'Part',
        also: ['part id'],
        read: (cell, offer) => ok({ ...offer, partId: cell }),
        write: (offer) => offer.partId
      }
    ],
    more: breakCells(MOST_BREAKS, rowsFor).slice(2 * pairs),
    whole: wholeBreaks,
    put: (now, { id, ...offer }) => (id === '' ? addOffer(now, offer) : editOffer(now, id, offer))
  }
}

const needOf = (cell: string): NeedKind | undefined => {
  const word = cell.toLowerCase()
  const kinds = Object.entries(NEED_NAMES) as readonly (readonly [NeedKind, string])[]
  return kinds.find(([kind, name]) => kind === word || name.toLowerCase() === word)?.[0]
}
