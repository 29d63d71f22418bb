import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { choosePacks, type PackChoice, type PackOffer } from '../../shared-model/bill'
import { coverByLabels } from '../../shared-model/bill/cover-by-labels'
import { coverBySteps } from '../../shared-model/bill/cover-by-steps'
import { packModes } from '../../shared-model/bill/pack-modes'

const SEED = 20_250_611

interface Terms {
  readonly size: number
  readonly price: number | null
  readonly breaks?: readonly (readonly [from: number, price: number])[]
  readonly least?: number
}

const offer = (terms: Terms, index: number): PackOffer => ({
  id: `o${index}`,
  need: 'cup',
  partId: 'cup-2in',
  name: `Pack of ${terms.size}`,
  packSize: terms.size,
  offer: { priceMinor: terms.price, supplier: `Supplier ${index}`, pricedOn: '2025-06-01', taxInside: false },
  breaks: (terms.breaks ?? []).map(([fromPacks, priceMinor]) => ({ fromPacks, priceMinor })),
  leastPacks: terms.least ?? 0
})

const choose = (need: number, terms: readonly Terms[]): PackChoice | null => {
  const choice = choosePacks(need, terms.map(offer))
  if (!choice.ok) throw new Error(choice.problem.code)
  return choice.value
}

/** Price of so many packs of one offer; null: that many are not sold. */
const priceOf = (terms: Terms, packs: number): number | null => {
  if (packs === 0) return 0
  if (terms.price === null || packs < Math.max(1, terms.least ?? 0)) return null
  const each = (terms.breaks ?? []).filter(([from]) => packs >= from).map(([, price]) => price)
  return packs * Math.min(terms.price, ...each)
}

/** Complete enumeration: every count of packs up to the need, the largest break and the least order. */
const enumerate = (need: number, terms: readonly Terms[]): readonly [cost: number, amount: number] | null => {
  let best: readonly [number, number] | null = null
  const walk = (index: number, cost: number, amount: number) => {
    const one = terms[index]
    if (one === undefined) {
      const better = best === null || cost < best[0] || (cost === best[0] && amount < best[1])
      if (amount >= need && better) best = [cost, amount]
      return
    }
    const most = Math.max(Math.ceil(need / one.size), one.least ?? 0, ...(one.breaks ?? []).map(([from]) => from))
    for (let packs = 0; packs <= most; packs += 1) {
      const price = priceOf(one, packs)
      if (price !== null) walk(index + 1, cost + price, amount + packs * one.size)
    }
  }
  walk(0, 0, 0)
  return best
}

const greedy = (need: number, offers: readonly Terms[]): number => {
  let [rest, cost] = [need, 0]
  const byUnitPrice = [...offers].sort((a, b) => (a.price ?? 0) / a.size - (b.price ?? 0) / b.size)
  for (const one of byUnitPrice) {
    const packs = Math.floor(rest / one.size)
    const price = priceOf(one, packs)
    if (price === null || one === byUnitPrice.at(-1)) continue
    cost += price
    rest -= packs * one.size
  }
  if (rest === 0) return cost
  const toCover = byUnitPrice.map((one) => priceOf(one, Math.max(Math.ceil(rest / one.size), one.least ?? 0)) ?? 0)
  return cost + Math.min(...toCover)
}

const terms = fc.record({
  size: fc.integer({ min: 1, max: 9 }),
  price: fc.integer({ min: 0, max: 60 }),
  breaks: fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 60 })), { maxLength: 2 }),
  least: fc.integer({ min: 0, max: 4 })
})

describe('choosing packs', () => {
  it('equals complete enumeration on small cases, cost and amount alike', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20 }), fc.array(terms, { minLength: 1, maxLength: 3 }), (need, offers) => {
        const got = choose(need, offers)
        expect([got?.totalMinor, got?.bought]).toEqual(enumerate(need, offers))
      }),
      { seed: SEED, numRuns: 400 }
    )
  })

  it('finds the same cover by the amounts that packs can make as by steps', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.array(terms, { minLength: 1, maxLength: 4 }), (need, offers) => {
        const modes = offers.map((one, index) => packModes(offer(one, index), one.size))
        const costOf = (counts: readonly number[] | null) => {
          const each = offers.map((one, index) => [one, counts?.[index] ?? 0] as const)
          const cost = each.reduce((sum, [one, packs]) => sum + (priceOf(one, packs) ?? Number.NaN), 0)
          return [cost, each.reduce((sum, [one, packs]) => sum + packs * one.size, 0)]
        }
        expect(costOf(coverByLabels(need, modes))).toEqual(costOf(coverBySteps(need, modes)))
      }),
      { seed: SEED, numRuns: 300 }
    )
  })

  it('mixes pounds and kilograms, whose common step is a few milligrams', () => {
    // 12 kg of salt: a bag of 5 lb (2267.96 g) 6.00, of 1 kg 3.00. Five bags of 5 lb (11 339.8 g) and one of 1 kg: 33.00;
    // six of 5 lb would be 36.00, four and three of 1 kg (12 071.84 g) 33.00 with less left over.
    const got = choose(12_000, [
      { size: 2267.96, price: 600 },
      { size: 1000, price: 300 }
    ])
    expect(got?.totalMinor).toBe(3300)
    expect(got?.packs.map((one) => one.packs)).toEqual([4, 3])
    expect(got?.left).toBeCloseTo(71.84, 6)
  })

  it('is never dearer than greedy: packs of the least unit price while they fit, then the cheapest way to cover the rest', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.array(terms, { minLength: 1, maxLength: 6 }),
        (need, offers) => {
          expect(choose(need, offers)?.totalMinor).toBeLessThanOrEqual(greedy(need, offers))
        }
      ),
      { seed: SEED, numRuns: 100 }
    )
  })

  it('buys whole packs whose prices add up to the total and whose amounts cover the need', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), fc.array(terms, { minLength: 1, maxLength: 4 }), (need, offers) => {
        const got = choose(need, offers)
        const sum = (got?.packs ?? []).reduce((total, pack) => total + pack.totalMinor, 0)
        expect(sum).toBe(got?.totalMinor)
        for (const pack of got?.packs ?? []) {
          const one = offers[Number(pack.offerId.slice(1))]
          expect(one && priceOf(one, pack.packs)).toBe(pack.totalMinor)
        }
        expect((got?.bought ?? 0) - (got?.left ?? 0)).toBe(need)
      }),
      { seed: SEED, numRuns: 200 }
    )
  })

  it('mixes packs of two suppliers where that is cheapest', () => {
    // 23 cups: 2 of ten at 4.00 and 1 of three at 1.50 cost 9.50; three of ten 12.00; eight of three 12.00.
    const got = choose(23, [
      { size: 10, price: 400 },
      { size: 3, price: 150 }
    ])
    expect(got).toMatchObject({ totalMinor: 950, bought: 23, left: 0 })
    expect(got?.packs.map((pack) => pack.packs)).toEqual([2, 1])
  })

  it('buys more than needed to reach a break that makes the order cheaper', () => {
    // 9 packs at 1.00 cost 9.00; 10 at the break price of 0.80 cost 8.00.
    const got = choose(9, [{ size: 1, price: 100, breaks: [[10, 80]] }])
    expect(got).toMatchObject({ totalMinor: 800, bought: 10, left: 1 })
  })

  it('keeps a least order, and goes elsewhere when that is dearer', () => {
    expect(choose(1, [{ size: 1, price: 10, least: 5 }])).toMatchObject({ totalMinor: 50, left: 4 })
    expect(
      choose(1, [
        { size: 1, price: 10, least: 5 },
        { size: 1, price: 45 }
      ])
    ).toMatchObject({ totalMinor: 45, left: 0 })
  })

  it('counts packs of broken sizes without binary noise', () => {
    // 0.1 + 0.2 of a 0.1 pack is three packs, not four.
    expect(choose(0.1 + 0.2, [{ size: 0.1, price: 7 }])).toMatchObject({ totalMinor: 21 })
  })

  it('finds no choice where no offer has a price, and leaves unpriced offers out', () => {
    expect(choose(5, [{ size: 1, price: null }])).toBeNull()
    expect(
      choose(5, [
        { size: 1, price: null },
        { size: 2, price: 30 }
      ])
    ).toMatchObject({ totalMinor: 90 })
  })

  it('refuses a negative price, an empty pack and a need that is no amount, naming the field', () => {
    const wrong = (need: number, one: Terms) => {
      const got = choosePacks(need, [offer(one, 0)])
      return got.ok ? null : [got.problem.code, 'what' in got.problem.figures ? got.problem.figures.what : '']
    }
    expect(wrong(1, { size: 1, price: -1 })).toEqual(['out-of-range', 'offers.o0.priceMinor'])
    expect(wrong(1, { size: 0, price: 1 })).toEqual(['out-of-range', 'offers.o0.packSize'])
    expect(wrong(-1, { size: 1, price: 1 })).toEqual(['out-of-range', 'need'])
    expect(wrong(Number.NaN, { size: 1, price: 1 })).toEqual(['not-finite', 'need'])
    expect(wrong(1e9, { size: 0.001, price: 1 })).toEqual(['packs-too-fine', ''])
  })
})
