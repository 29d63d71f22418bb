import type { BillInput, BillShop, ChannelNeeds } from './bill-input'
import type { BillProblem } from './codes'

/** Largest batch that is billed and priced. */
export const MOST_UNITS = 10_000

/** The first figure of a bill's input that cannot be used; null: none. */
export function billProblem(input: BillInput, shop: BillShop): BillProblem | null {
  if (!Number.isInteger(input.quantity)) return bad('quantity', input.quantity, 1, MOST_UNITS)
  const figures: readonly Bounded[] = [
    ['quantity', input.quantity, 1, MOST_UNITS],
    ['bead.widthMm', input.bead.widthMm, 0.5, 50],
    ['bead.depthMm', input.bead.depthMm, 0.5, 50],
    ['labelsPerUnit', input.labelsPerUnit, 0, 1000],
    ['pricing.priceAgeDays', shop.priceAgeDays, 0, 36_500],
    ['sheetSetup.keptWorthPercent', shop.sheetWorthPercent ?? 0, 0, 100],
    ['pricing.buyingTax.percent', shop.buyingTax?.percent ?? 0, 0, 100],
    ...input.channels.flatMap(ofChannel),
    ...input.amounts.map((one): Bounded => [`amounts.${one.partId}`, one.amount, 0, 1e7]),
    ...input.packing.map((part): Bounded => [`packing.${part.partId}`, part.count, 0, MOST_COUNT]),
    ...shop.shelf.map((item): Bounded => [`shelf.${item.partId || item.need}.amount`, item.amount, 0, 1e7]),
    ...shop.shelf.map(
      (item): Bounded => [`shelf.${item.partId || item.need}.worthMinor`, item.worthMinor ?? 0, 0, 1e12]
    ),
    ...shop.stock.map((bar): Bounded => [`stock.${bar.id}.priceMinor`, bar.offer.priceMinor ?? 0, 0, 1e12]),
    ...shop.sheets.map((sheet): Bounded => [`sheets.${sheet.id}.priceMinor`, sheet.offer.priceMinor ?? 0, 0, 1e12])
  ]
  const off = figures.find(([, value, least, most]) => !(value >= least && value <= most))
  if (off !== undefined) return bad(...off)
  const part = figures.find(([field, value]) => field.endsWith('Minor') && !Number.isInteger(value))
  if (part !== undefined) return bad(...part)
  const foreign = shop.offers.find((offer) => offer.currency !== undefined && offer.currency !== shop.currency)
  if (foreign?.currency === undefined) return null
  const field = `offers.${foreign.id}.currency`
  return {
    code: 'currency-mixed',
    figures: { field, name: foreign.name, found: foreign.currency, wanted: shop.currency },
    where: { field }
  }
}

type Bounded = readonly [field: string, value: number, least: number, most: number]
const MOST_COUNT = 10_000

/** Only what is out of its bounds is named: a batch has hundreds of counts. */
function ofChannel(channel: ChannelNeeds): readonly Bounded[] {
  const at = `channels.${channel.channelId}`
  const lists = ['closures', 'cups', 'riserCups', 'plantCollars', 'supports', 'fittings', 'couplings'] as const
  return [
    ...lists.flatMap((list) =>
      channel[list]
        .filter(({ count }) => !(count >= 0 && count <= MOST_COUNT))
        .map((part): Bounded => [`${at}.${list}.${part.partId}`, part.count, 0, MOST_COUNT])
    ),
    ...channel.joints
      .filter(({ wettedMm }) => !(wettedMm >= 0 && wettedMm <= 1e6))
      .map((joint): Bounded => [`${at}.joints.${joint.id}.wettedMm`, joint.wettedMm, 0, 1e6]),
    ...channel.joints
      .filter(({ outsideMm }) => !(outsideMm >= 1 && outsideMm <= 10_000))
      .map((joint): Bounded => [`${at}.joints.${joint.id}.outsideMm`, joint.outsideMm, 1, 10_000])
  ]
}

function bad(what: string, value: number, least: number, most: number): BillProblem {
  const where = { field: what }
  if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what }, where }
  return { code: 'out-of-range', figures: { what, value, least, most }, where }
}
