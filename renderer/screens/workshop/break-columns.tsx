import type { PackOffer } from '../../../shared-model/bill'
import { MoneyField } from '../../fields/MoneyField'
import type { EditableColumn } from './EditableTable'
import { MaybeCountField } from './MaybeCountField'
import { fromHead, thenHead } from './rows/break-cells'

type Set = (offer: PackOffer, changes: { readonly breaks: PackOffer['breaks'] }) => string | null

/** Price breaks, two columns each: from how many packs on, and the price then. Emptying the count takes the break away. */
export function breakColumns(pairs: number, set: Set): readonly EditableColumn<PackOffer>[] {
  return Array.from({ length: pairs }, (_, at) => at).flatMap((at): readonly EditableColumn<PackOffer>[] => [
    {
      head: fromHead(at),
      figure: true,
      cell: (offer) => (
        <MaybeCountField
          inCell
          label={`${fromHead(at)} of ${offer.name}`}
          path={`offers.${offer.id}.breaks.${at}.fromPacks`}
          value={offer.breaks[at]?.fromPacks ?? null}
          disabled={at > offer.breaks.length}
          whenEmpty="none"
          commit={(fromPacks) => set(offer, { breaks: withCount(offer, at, fromPacks) })}
        />
      )
    },
    {
      head: thenHead(at),
      figure: true,
      cell: (offer) => (
        <MoneyField
          inCell
          label={`${thenHead(at)} of ${offer.name}`}
          path={`offers.${offer.id}.breaks.${at}.priceMinor`}
          value={offer.breaks[at]?.priceMinor ?? null}
          disabled={offer.breaks[at] === undefined}
          commit={(priceMinor) => set(offer, { breaks: withPrice(offer, at, priceMinor) })}
        />
      )
    }
  ])
}

/** A new break starts at the price before it, to be typed over. */
function withCount(offer: PackOffer, at: number, fromPacks: number | null): PackOffer['breaks'] {
  if (fromPacks === null) return offer.breaks.filter((_, index) => index !== at)
  if (at < offer.breaks.length) return offer.breaks.map((part, index) => (index === at ? { ...part, fromPacks } : part))
  return [...offer.breaks, { fromPacks, priceMinor: offer.breaks.at(-1)?.priceMinor ?? offer.offer.priceMinor ?? 0 }]
}

const withPrice = (offer: PackOffer, at: number, priceMinor: number | null): PackOffer['breaks'] =>
  priceMinor === null
    ? offer.breaks.filter((_, index) => index !== at)
    : offer.breaks.map((part, index) => (index === at ? { ...part, priceMinor } : part))
