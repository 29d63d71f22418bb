import { failed, ok, type Result } from '../outcome'
import type { BillProblem } from './codes'
import { coverByLabels } from './cover-by-labels'
import { coverBySteps } from './cover-by-steps'
import type { PackOffer } from './offer'
import { packModes } from './pack-modes'

export interface PackChoice {
  readonly totalMinor: number
  readonly bought: number
  readonly left: number
  /** In the order of the offers; offers not bought from are left out. */
  readonly packs: readonly {
    readonly offerId: string
    readonly packs: number
    readonly eachMinor: number
    readonly totalMinor: number
  }[]
}

/** Most steps in the table: need divided by the greatest common step of the pack sizes. */
export const MOST_PACK_STEPS = 1_000_000

/**
 * The cheapest whole packs that cover an amount, exactly: price breaks, least orders, any number of suppliers. Of equally cheap
 * ones, the one with the least left over.
 *
 * Pack sizes are decimals of up to three places, counted in their greatest common step: a table over those steps where they are
 * few (`cover-by-steps.ts`), else over the amounts that packs can make (`cover-by-labels.ts`). Both are exact.
 *
 * @param need amount in the offers' unit, 0 or more
 * @returns null where no offer has a price; `out-of-range` for a need or pack that is no amount, `packs-too-fine`
 * @source exact-packs
 */
export function choosePacks(need: number, offers: readonly PackOffer[]): Result<PackChoice | null, BillProblem> {
  if (!Number.isFinite(need) || need < 0 || need > MOST_NEED) return outside('need', need, 0, MOST_NEED)
  for (const offer of offers) {
    const problem = badOffer(offer)
    if (problem !== null) return failed(problem)
  }
  const priced = offers.filter((offer) => offer.offer.priceMinor !== null)
  if (priced.length === 0) return ok(null)
  const sizes = priced.map((offer) => Math.round(offer.packSize * PLACES))
  const step = sizes.reduce(greatestCommon)
  const steps = Math.ceil((need * PLACES) / step - SLACK)
  const modes = priced.map((offer, index) => packModes(offer, (sizes[index] ?? step) / step))
  const counts = steps <= MOST_PACK_STEPS ? coverBySteps(Math.max(steps, 0), modes) : coverByLabels(steps, modes)
  if (counts === null) {
    const figures = { name: priced[0]?.name ?? '', steps, most: MOST_PACK_STEPS }
    return failed({ code: 'packs-too-fine', figures })
  }
  return ok(choiceOf(need, priced, counts))
}

const PLACES = 1000
/** Absorbs the binary noise of a decimal need; far below the smallest step. */
const SLACK = 1e-9
const MOST_NEED = 1e10
const MOST_PRICE = 1e12

function choiceOf(need: number, offers: readonly PackOffer[], counts: readonly number[]): PackChoice {
  const packs = offers.flatMap((offer, index) => {
    const count = counts[index] ?? 0
    if (count === 0) return []
    const prices = packModes(offer, 1).filter((mode) => mode.from <= count)
    const eachMinor = Math.min(...prices.map((mode) => mode.priceMinor))
    return [
      { offerId: offer.id, packs: count, eachMinor, totalMinor: eachMinor * count, amount: count * offer.packSize }
    ]
  })
  const bought = packs.reduce((sum, pack) => sum + pack.amount, 0)
  return {
    totalMinor: packs.reduce((sum, pack) => sum + pack.totalMinor, 0),
    bought,
    left: Math.max(0, bought - need),
    packs: packs.map(({ offerId, packs: count, eachMinor, totalMinor }) => ({
      offerId,
      packs: count,
      eachMinor,
      totalMinor
    }))
  }
}

function badOffer(offer: PackOffer): BillProblem | null {
  const least = 1 / PLACES
  if (!(offer.packSize >= least && offer.packSize <= MOST_NEED)) {
    return range(`offers.${offer.id}.packSize`, offer.packSize, least, MOST_NEED)
  }
  const prices = [offer.offer.priceMinor ?? 0, ...offer.breaks.map((from) => from.priceMinor)]
  const bad = prices.find((price) => !Number.isSafeInteger(price) || price < 0 || price > MOST_PRICE)
  if (bad !== undefined) return range(`offers.${offer.id}.priceMinor`, bad, 0, MOST_PRICE)
  const counts = [offer.leastPacks, ...offer.breaks.map((from) => from.fromPacks)]
  const odd = counts.find((count) => !Number.isSafeInteger(count) || count < 0 || count > MOST_PACK_STEPS)
  return odd === undefined ? null : range(`offers.${offer.id}.leastPacks`, odd, 0, MOST_PACK_STEPS)
}

const range = (what: string, value: number, least: number, most: number): BillProblem =>
  Number.isFinite(value)
    ? { code: 'out-of-range', figures: { what, value, least, most }, where: { field: what } }
    : { code: 'not-finite', figures: { what }, where: { field: what } }

const outside = (what: string, value: number, least: number, most: number) => failed(range(what, value, least, most))

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b)
}
