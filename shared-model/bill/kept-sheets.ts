import type { SheetCut } from '../rings'
import { divideRatio, multiplyRatio, type Ratio, ratio, ratioFromDecimal, roundRatio } from '../units'
import type { BillShop } from './bill-input'
import { pricePaid } from './price-paid'

/**
 * Stated worth of each piece that is kept of a cut sheet, in minor units, in the order of its offcuts.
 *
 * worth = price paid * kept area / sheet's area * stated per cent / 100, each rounded down, so that together they never pass
 * what the sheet cost. A sheet without a price keeps nothing of worth.
 *
 * @source practice
 */
export function keptSheetWorth(
  cut: Pick<SheetCut, 'sheetId' | 'widthMm' | 'heightMm' | 'offcuts' | 'costMinor'>,
  shop: Pick<BillShop, 'sheets' | 'buyingTax' | 'sheetWorthPercent'>
): readonly number[] {
  const offer = shop.sheets.find((sheet) => sheet.id === cut.sheetId)
  const stated = offer?.isOffcut === true ? cut.costMinor : (offer?.offer.priceMinor ?? cut.costMinor)
  if (stated === null || offer === undefined) return cut.offcuts.map(() => 0)
  const paid = offer.isOffcut ? stated : pricePaid(stated, offer.offer.taxInside, shop.buyingTax)
  const percent = ratioFromDecimal(shop.sheetWorthPercent ?? 0)
  const area = areaOf(cut)
  return cut.offcuts.map((kept) => {
    const share = divideRatio(multiplyRatio(areaOf(kept), percent), multiplyRatio(area, ratio(100)))
    return roundRatio(multiplyRatio(ratio(paid), share), 'down')
  })
}

const areaOf = ({ widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }): Ratio =>
  multiplyRatio(ratioFromDecimal(widthMm), ratioFromDecimal(heightMm))
