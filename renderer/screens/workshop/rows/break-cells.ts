import type { PackOffer } from '../../../../shared-model/bill'
import { failed, ok, type Result } from '../../../../shared-model/outcome'
import { minorUnitDigits, parseMoney, showMinor } from '../../../../shared-model/units'
import { problemText } from '../../../plan/wording'
import { numberCell } from './price-cells'
import type { RowColumn, RowsFor } from './row-table'

type Break = PackOffer['breaks'][number]

/** Most breaks of one offer. */
export const MOST_BREAKS = 20
/** Stands in one half of a pair while the other is read; neither is a count or a price. */
const NO_COUNT = 0
const NO_PRICE = -1
const EMPTY: Break = { fromPacks: NO_COUNT, priceMinor: NO_PRICE }

/** Pairs of columns that a list of offers needs: each of its breaks, and an empty one to add another. */
export const breakPairs = (offers: readonly PackOffer[]): number =>
  Math.min(MOST_BREAKS, 1 + offers.reduce((most, { breaks }) => Math.max(most, breaks.length), 0))

/** Two columns for each price break: from how many packs on, and the price of a pack then. Both empty: no such break. */
export function breakCells(pairs: number, rowsFor: RowsFor): readonly RowColumn<PackOffer>[] {
  const { shows, currency } = rowsFor
  return Array.from({ length: pairs }, (_, at) => at).flatMap((at): readonly RowColumn<PackOffer>[] => [
    {
      head: fromHead(at),
      read: (cell, offer) => {
        if (cell === '') return ok(withBreak(offer, at, { fromPacks: NO_COUNT }))
        const read = numberCell(cell, rowsFor)
        if (!read.ok) return read
        if (!Number.isInteger(read.value) || read.value < 1)
          return failed(`“${cell.slice(0, 20)}” is not a whole number of packs from 1 on.`)
        return ok(withBreak(offer, at, { fromPacks: read.value }))
      },
      write: ({ breaks }) => `${breaks[at]?.fromPacks ?? ''}`
    },
    {
      head: thenHead(at),
      read: (cell, offer) => {
        if (cell === '') return ok(withBreak(offer, at, { priceMinor: NO_PRICE }))
        const read = parseMoney(cell, currency, shows.decimalMark)
        if (!read.ok) return failed(problemText(read.problem, shows))
        return read.value < 0
          ? failed('a price is never below nought.')
          : ok(withBreak(offer, at, { priceMinor: read.value }))
      },
      write: ({ breaks }) => {
        const part = breaks[at]
        return part === undefined ? '' : showMinor(part.priceMinor, minorUnitDigits(currency) ?? 2, shows.decimalMark)
      }
    }
  ])
}

export const fromHead = (at: number): string => `From packs ${at + 1}`
export const thenHead = (at: number): string => `Price then ${at + 1}`

/** The offer with its breaks in order and empty pairs gone, or what is missing of a pair. */
export function wholeBreaks(offer: PackOffer): Result<PackOffer, string> {
  for (const [at, { fromPacks, priceMinor }] of offer.breaks.entries()) {
    if (fromPacks !== NO_COUNT && priceMinor === NO_PRICE)
      return failed(`${thenHead(at)}: the price from ${fromPacks} packs on is missing.`)
    if (fromPacks === NO_COUNT && priceMinor !== NO_PRICE)
      return failed(`${fromHead(at)}: from how many packs on this price counts is missing.`)
  }
  const breaks = offer.breaks
    .filter(({ fromPacks }) => fromPacks !== NO_COUNT)
    .toSorted((a, b) => a.fromPacks - b.fromPacks)
  return ok({ ...offer, breaks })
}

function withBreak(offer: PackOffer, at: number, half: Partial<Break>): PackOffer {
  const length = Math.max(offer.breaks.length, at + 1)
  const breaks = Array.from({ length }, (_, index) => {
    const part = offer.breaks[index] ?? EMPTY
    return index === at ? { ...part, ...half } : part
  })
  return { ...offer, breaks }
}
