import { ok, type Result } from '../outcome'
import { multiplyRatio, type Ratio, ratio, ratioFromDecimal, roundRatio } from '../units'
import type { BillLine } from './bill'
import type { BillShop, Need } from './bill-input'
import { choosePacks } from './choose-packs'
import type { BillProblem } from './codes'
import type { PackOffer } from './offer'
import { pricePaid } from './price-paid'
import { oldest } from './stock-line'

/**
 * One thing bought in packs: the shelf first, then the cheapest whole packs. The batch carries what it uses at pack share; used
 * and rest together are what was paid and what came off the shelf, to the minor unit.
 */
export function packLine(need: Need, shop: BillShop): Result<BillLine, BillProblem> {
  const shelf = shop.shelf.filter((item) => suits(need, item))
  const onShelf = shelf.reduce((sum, item) => sum + item.amount, 0)
  const worth = shelf.reduce((sum, item) => sum + (item.worthMinor ?? 0), 0)
  const fromShelf = Math.min(need.needed, onShelf)
  const fromShelfMinor = onShelf > 0 ? portion(worth, fromShelf, onShelf) : 0
  const toBuy = settle(need.needed - fromShelf)
  const offers = shop.offers.filter((offer) => suits(need, offer)).map((offer) => asPaid(offer, shop))
  const choice = choosePacks(toBuy, offers)
  if (!choice.ok) return choice
  const bought = toBuy > 0 ? choice.value : { totalMinor: 0, bought: 0, left: 0, packs: [] }
  if (bought === null) return ok({ ...bare(need), fromShelf, fromShelfMinor })
  const usedOfBought = bought.bought > 0 ? portion(bought.totalMinor, toBuy, bought.bought) : 0
  const packs = bought.packs.flatMap((pack) => {
    const offer = offers.find((one) => one.id === pack.offerId)
    if (offer === undefined) return []
    const { supplier, pricedOn, taxInside } = offer.offer
    return [{ ...pack, name: offer.name, packSize: offer.packSize, supplier, pricedOn, taxInside }]
  })
  return ok({
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
  })
}

/** An offer or shelf item serves a need: the same part, a cup for a riser's cup, or a consumable named for no part. */
export function suits(need: Pick<Need, 'need' | 'partId'>, other: Pick<PackOffer, 'need' | 'partId'>): boolean {
  const kind = (of: string) => (of === 'riser-cup' ? 'cup' : of)
  if (kind(need.need) !== kind(other.need)) return false
  if (need.partId === other.partId) return true
  return other.partId === '' && CONSUMABLES.has(need.need) && !NAMED_ONLY.has(need.partId)
}

const CONSUMABLES: ReadonlySet<string> = new Set(['sealant', 'cement', 'support', 'label', 'packing', 'medium'])
const NAMED_ONLY: ReadonlySet<string> = new Set(['tape', 'primer'])

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

/** The share `part` of `whole` of an amount of money, half up. */
function portion(minor: number, part: number, whole: number): number {
  const exact: Ratio = multiplyRatio(ratioFromDecimal(minor), quotient(part, whole))
  return Math.min(minor, roundRatio(exact, 'half-up'))
}

function quotient(part: number, whole: number): Ratio {
  const [a, b] = [ratioFromDecimal(part), ratioFromDecimal(whole)]
  return ratio(a.num * b.den, a.den * b.num)
}

/** Takes the binary noise off a sum of decimals. */
const settle = (amount: number): number => Math.round(amount * 1e6) / 1e6
