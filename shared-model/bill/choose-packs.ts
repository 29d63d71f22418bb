import { failed, ok, type Result } from '../outcome'
import type { BillProblem } from './codes'
import type { PackOffer } from './offer'
import { type PackMode, packModes } from './pack-modes'

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

/** Most amount steps searched: need divided by the greatest common step of the pack sizes. */
export const MOST_PACK_STEPS = 1_000_000

/**
 * The cheapest whole packs that cover an amount, exactly: price breaks, least orders, any number of suppliers. Of equally cheap
 * ones, the one with the least left over.
 *
 * A programme over the amount still to cover: f_k(t) = least cost of covering t with the first k offers. Each offer is a set of
 * modes (at least `from` packs, each at `priceMinor`): m(t) = min(f_(k-1)(t - from * size) + from * price, m(t - size) + price),
 * f_k(t) = min(f_(k-1)(t), m(t)). Pack sizes are decimals of up to three places and are counted in their greatest common step.
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
  if (steps > MOST_PACK_STEPS) {
    const figures = { name: priced[0]?.name ?? '', steps, most: MOST_PACK_STEPS }
    return failed({ code: 'packs-too-fine', figures })
  }
  const counts = cheapest(
    Math.max(steps, 0),
    priced.map((offer, index) => packModes(offer, (sizes[index] ?? step) / step))
  )
  return ok(choiceOf(need, priced, counts))
}

const PLACES = 1000
/** Absorbs the binary noise of a decimal need; far below the smallest step. */
const SLACK = 1e-9
const MOST_NEED = 1e10
const MOST_PRICE = 1e12

/** How many packs of each offer, least cost first, then least amount. */
function cheapest(steps: number, offers: readonly (readonly PackMode[])[]): readonly number[] {
  let cost = new Float64Array(steps + 1).fill(Number.POSITIVE_INFINITY)
  let amount = new Float64Array(steps + 1).fill(Number.POSITIVE_INFINITY)
  cost[0] = 0
  amount[0] = 0
  const taken: Int32Array[] = []
  for (const modes of offers) {
    const next = { cost: cost.slice(), amount: amount.slice(), packs: new Int32Array(steps + 1) }
    for (const mode of modes) tryMode(mode, { cost, amount }, next)
    cost = next.cost
    amount = next.amount
    taken.push(next.packs)
  }
  return readBack(steps, offers, taken)
}

interface Best {
  readonly cost: Float64Array
  readonly amount: Float64Array
}

function tryMode(mode: PackMode, before: Best, next: Best & { readonly packs: Int32Array }): void {
  const size = mode.steps
  const last = next.cost.length - 1
  const within = {
    cost: new Float64Array(last + 1),
    amount: new Float64Array(last + 1),
    packs: new Int32Array(last + 1)
  }
  for (let t = 0; t <= last; t += 1) {
    const start = Math.max(0, t - mode.from * size)
    let cost = (before.cost[start] ?? 0) + mode.from * mode.priceMinor
    let amount = (before.amount[start] ?? 0) + mode.from * size
    let packs = mode.from
    if (t > mode.from * size) {
      const more = t - size
      const moreCost = (within.cost[more] ?? 0) + mode.priceMinor
      const moreAmount = (within.amount[more] ?? 0) + size
      if (moreCost < cost || (moreCost === cost && moreAmount < amount)) {
        cost = moreCost
        amount = moreAmount
        packs = (within.packs[more] ?? 0) + 1
      }
    }
    within.cost[t] = cost
    within.amount[t] = amount
    within.packs[t] = packs
    const held = next.cost[t] ?? 0
    if (cost < held || (cost === held && amount < (next.amount[t] ?? 0))) {
      next.cost[t] = cost
      next.amount[t] = amount
      next.packs[t] = packs
    }
  }
}

function readBack(
  steps: number,
  offers: readonly (readonly PackMode[])[],
  taken: readonly Int32Array[]
): readonly number[] {
  const counts = offers.map(() => 0)
  let t = steps
  for (let k = offers.length - 1; k >= 0; k -= 1) {
    const packs = taken[k]?.[t] ?? 0
    counts[k] = packs
    t = Math.max(0, t - packs * (offers[k]?.[0]?.steps ?? 0))
  }
  return counts
}

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
