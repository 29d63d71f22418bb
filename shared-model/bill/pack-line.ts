import { ok, type Result } from '../outcome'
import type { BillLine } from './bill'
import type { BillShop, Need } from './bill-input'
import { choosePacks } from './choose-packs'
import type { BillProblem } from './codes'
import { drawFromShelf, portion, settle, suits } from './draw-from-shelf'
import type { PackOffer, ShelfItem } from './offer'
import { pricePaid } from './price-paid'
import { oldest } from './stock-line'

/**
 * One thing bought in packs: the shelf first, then the cheapest whole packs. The batch carries what it uses at pack share; used
 * and rest together are what was paid and what came off the shelf, to the minor unit.
 */
export function packLine(need: Need, shelf: readonly ShelfItem[], shop: BillShop): Result<ShelvedLine, BillProblem> {
  const drawn = drawFromShelf(shelf, need, need.needed)
  const fromShelf = drawn.amount
  const fromShelfMinor = drawn.worthMinor
  const toBuy = settle(need.needed - fromShelf)
  const offers = shop.offers.filter((offer) => suits(need, offer)).map((offer) => asPaid(offer, shop))
  const choice = choosePacks(toBuy, offers)
  if (!choice.ok) return choice
  const bought = toBuy > 0 ? choice.value : { totalMinor: 0, bought: 0, left: 0, packs: [] }
  if (bought === null) return ok({ line: { ...bare(need), fromShelf, fromShelfMinor }, shelf: drawn.shelf })
  const usedOfBought = bought.bought > 0 ? portion(bought.totalMinor, toBuy, bought.bought) : 0
  const packs = bought.packs.flatMap((pack) => {
    const offer = offers.find((one) => one.id === pack.offerId)
    if (offer === undefined) return []
    const { supplier, pricedOn, taxInside } = offer.offer
    return [{ ...pack, name: offer.name, packSize: offer.packSize, supplier, pricedOn, taxInside }]
  })
  const line: BillLine = {
    ...need,
    fromShelf,
    bought: bought.bought,
    left: settle(bought.left),
    packs,
    totalMinor: bought.totalMinor,
    usedMinor: usedOfBought + fromShelfMinor,
    restMinor: bought.totalMinor - usedOfBought,
    fromShelfMinor,
    oldestPriceOn: oldest(packs.map((pack) => pack.pricedOn))
  }
  return ok({ line, shelf: drawn.shelf })
}

interface ShelvedLine {
  readonly line: BillLine
  /** The shelf without what this line took. */
  readonly shelf: readonly ShelfItem[]
}

const bare = (need: Need): BillLine => ({
  ...need,
  fromShelf: 0,
  bought: 0,
  left: 0,
  packs: [],
  totalMinor: null,
  usedMinor: null,
  restMinor: null,
  fromShelfMinor: 0,
  oldestPriceOn: null
})

function asPaid(offer: PackOffer, shop: BillShop): PackOffer {
  const { priceMinor, taxInside } = offer.offer
  const paid = (minor: number) => (Number.isSafeInteger(minor) ? pricePaid(minor, taxInside, shop.buyingTax) : minor)
  return {
    ...offer,
    offer: { ...offer.offer, priceMinor: priceMinor === null ? null : paid(priceMinor) },
    breaks: offer.breaks.map((step) => ({ ...step, priceMinor: paid(step.priceMinor) }))
  }
}
