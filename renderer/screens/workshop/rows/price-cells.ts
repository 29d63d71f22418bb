import type { PricedOffer } from '../../../../shared-model/cutting'
import { failed, ok, type Result } from '../../../../shared-model/outcome'
import { minorUnitDigits, parseDecimal, parseMoney, ratioToNumber, showMinor } from '../../../../shared-model/units'
import { shownNumber } from '../../../fields/NumberField'
import { problemText } from '../../../plan/wording'
import type { RowColumn, RowsFor } from './row-table'

interface Priced {
  readonly offer: PricedOffer
}

/** Price, supplier, day of the price, tax inside: the same columns for bars and packs, in the order of the screen. */
export function priceCells<T extends Priced>({ shows, currency, today }: RowsFor): readonly RowColumn<T>[] {
  const set = (item: T, changes: Partial<PricedOffer>): T => ({ ...item, offer: { ...item.offer, ...changes } })
  return [
    {
      head: 'Price',
      read: (cell, item) => {
        if (cell === '') return ok(set(item, { priceMinor: null }))
        const read = parseMoney(cell, currency, shows.decimalMark)
        if (!read.ok) return failed(problemText(read.problem, shows))
        if (read.value < 0) return failed('a price is never below nought.')
        return ok(set(item, { priceMinor: read.value, pricedOn: item.offer.pricedOn || today }))
      },
      write: ({ offer }) =>
        offer.priceMinor === null ? '' : showMinor(offer.priceMinor, minorUnitDigits(currency) ?? 2, shows.decimalMark)
    },
    {
      head: 'Supplier',
      read: (cell, item) => ok(set(item, { supplier: cell })),
      write: ({ offer }) => offer.supplier
    },
    {
      head: 'Price of (day)',
      also: ['priced on', 'day', 'date'],
      read: (cell, item) => {
        if (cell === '') return ok(item)
        return /^\d{4}-\d{2}-\d{2}$/.test(cell)
          ? ok(set(item, { pricedOn: cell }))
          : failed(`“${cell.slice(0, 40)}” is not a day as YYYY-MM-DD.`)
      },
      write: ({ offer }) => offer.pricedOn
    },
    {
      head: 'Tax inside',
      read: (cell, item) => {
        const said = yesOrNo(cell)
        return said === null
          ? failed(`“${cell.slice(0, 40)}” is neither yes nor no.`)
          : ok(set(item, { taxInside: said }))
      },
      write: ({ offer }) => (offer.taxInside ? 'yes' : 'no')
    }
  ]
}

/** A plain number in a cell, read with the shop's decimal mark. */
export function numberCell(cell: string, { shows }: Pick<RowsFor, 'shows'>): Result<number, string> {
  const read = parseDecimal(cell, shows.decimalMark)
  return read.ok ? ok(ratioToNumber(read.value)) : failed(problemText(read.problem, shows))
}

export const numberText = (value: number, { shows }: Pick<RowsFor, 'shows'>): string =>
  shownNumber(value, shows.decimalMark)

const yesOrNo = (cell: string): boolean | null => {
  const word = cell.toLowerCase()
  if (['yes', 'y', 'true', 'x', '1'].includes(word)) return true
  return ['', 'no', 'n', 'false', '0'].includes(word) ? false : null
}
