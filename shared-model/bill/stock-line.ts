import type { PricedOffer } from '../cutting'
import type { BillLine, PackBought } from './bill'
import type { BilledCuts, BillInput, BillShop, BuyingTax, Need } from './bill-input'
import { keptSheetWorth } from './kept-sheets'
import { pricePaid } from './price-paid'

/**
 * Bars of one profile as the cut plan uses them. The batch carries new bars and rack offcuts less the stated worth of the
 * offcuts that are kept; a piece without a bar leaves the line without a price.
 */
export function stockLine(need: Need, input: BillInput, shop: BillShop): BillLine {
  const cut = input.cuts.find((plan) => plan.profileId === need.partId)
  const bars = (cut?.bars ?? []).map((bar) => ({
    id: bar.stockId,
    size: bar.lengthMm,
    owned: bar.isOffcut,
    costMinor: bar.costMinor
  }))
  const offers = new Map(shop.stock.map((stock) => [stock.id, { name: need.name, offer: stock.offer }]))
  return plannedLine(need, bars, offers, shop.buyingTax, {
    complete: cut !== undefined && cut.uncut.length === 0,
    left: cut === undefined ? 0 : keptMm(cut),
    leftMinor: cut?.keptWorthMinor ?? 0
  })
}

/** Sheets of one kind as the ring plan uses them: the batch carries them less the stated worth of the pieces that are kept. */
export function sheetLine(need: Need, input: BillInput, shop: BillShop): BillLine {
  const sheets = (input.rings?.sheets ?? []).filter((sheet) => sheet.sheetId === need.partId)
  const name = shop.sheets.find((sheet) => sheet.id === need.partId)?.name ?? need.name
  const owned = new Set(shop.sheets.filter((sheet) => sheet.isOffcut).map((sheet) => sheet.id))
  const taken = sheets.map((sheet) => ({
    id: sheet.sheetId,
    size: 1,
    owned: sheet.isOffcut || owned.has(sheet.sheetId),
    costMinor: sheet.costMinor
  }))
  const offers = new Map(shop.sheets.map((sheet) => [sheet.id, { name: sheet.name, offer: sheet.offer }]))
  return plannedLine({ ...need, name }, taken, offers, shop.buyingTax, {
    complete: true,
    left: 0,
    leftMinor: sheets.flatMap((cut) => keptSheetWorth(cut, shop)).reduce((sum, worth) => sum + worth, 0)
  })
}

const keptMm = (cut: BilledCuts): number => cut.bars.reduce((sum, bar) => sum + (bar.keep ? bar.leftoverMm : 0), 0)

interface Taken {
  readonly id: string
  readonly size: number
  readonly owned: boolean
  readonly costMinor: number | null
}

interface Rest {
  readonly complete: boolean
  readonly left: number
  readonly leftMinor: number
}

function plannedLine(
  need: Need,
  taken: readonly Taken[],
  offers: ReadonlyMap<string, { readonly name: string; readonly offer: PricedOffer }>,
  tax: BuyingTax | undefined,
  rest: Rest
): BillLine {
  const owned = taken.filter((one) => one.owned)
  const fresh = taken.filter((one) => !one.owned)
  const packs: PackBought[] = []
  let priced = rest.complete
  for (const id of new Set(fresh.map((one) => one.id))) {
    const same = fresh.filter((one) => one.id === id)
    const offer = offers.get(id)
    const each = offer === undefined ? (same[0]?.costMinor ?? null) : offer.offer.priceMinor
    if (each === null) {
      priced = false
      continue
    }
    const eachMinor = pricePaid(each, offer?.offer.taxInside ?? false, offer === undefined ? undefined : tax)
    packs.push({
      offerId: id,
      name: offer?.name ?? need.name,
      supplier: offer?.offer.supplier ?? '',
      packSize: same[0]?.size ?? 0,
      packs: same.length,
      eachMinor,
      totalMinor: eachMinor * same.length,
      pricedOn: offer?.offer.pricedOn ?? '',
      taxInside: offer?.offer.taxInside ?? false
    })
  }
  const total = packs.reduce((sum, pack) => sum + pack.totalMinor, 0)
  const fromShelfMinor = owned.reduce((sum, one) => sum + (one.costMinor ?? 0), 0)
  const sizeOf = (of: readonly Taken[]) => of.reduce((sum, one) => sum + one.size, 0)
  return {
    ...need,
    fromShelf: sizeOf(owned),
    bought: sizeOf(fresh),
    left: rest.left,
    packs,
    totalMinor: priced ? total : null,
    usedMinor: priced ? total + fromShelfMinor - rest.leftMinor : null,
    restMinor: priced ? rest.leftMinor : null,
    fromShelfMinor,
    oldestPriceOn: oldest(packs.map((pack) => pack.pricedOn))
  }
}

/** The earliest of some ISO dates; null where none is known. */
export const oldest = (dates: readonly (string | null)[]): string | null =>
  dates.filter((date): date is string => date !== null && date !== '').sort()[0] ?? null
