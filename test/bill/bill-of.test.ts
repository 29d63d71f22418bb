import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Bill,
  type BillInput,
  type BillShop,
  billOf,
  needsOf,
  putOnShelf,
  shoppingList
} from '../../shared-model/bill'
import { batch, cuts, pack, shop } from './a-batch'

const billed = (input: BillInput, from: BillShop) => {
  const bill = billOf(input, from)
  if (!bill.ok) throw new Error(bill.problem.code)
  return bill.value
}
const line = (bill: Bill, id: string) => bill.lines.find((one) => one.id === id)

describe('what a batch needs', () => {
  it('counts each channel once for every unit, and a riser as one more cup', () => {
    const needs = Object.fromEntries(needsOf(batch).map((need) => [need.id, [need.perUnit, need.needed, need.unit]]))
    expect(needs).toEqual({
      // 3048 - 1232 kept = 1816: two pieces, two kerfs and a trim; nothing is added as a percentage.
      'stock:post': [908, 1816, 'mm'],
      'closure:cap': [2, 4, 'piece'],
      'cup:cup': [5, 10, 'piece'],
      // 400 mm x 5 mm x 5 mm = 10 000 mm3 = 10 mL a unit
      'sealant:silicone-neutral': [10, 20, 'mL'],
      'feed:feed-a': [30, 60, 'mL']
    })
  })

  it('measures cement by joints and primer by half of it', () => {
    const joints = [{ id: 'j', method: 'solvent-cement', wettedMm: 280, outsideMm: 88.9 }] as const
    const channels = batch.channels.map((channel) => ({ ...channel, joints }))
    const needs = needsOf({ ...batch, channels, primer: true })
    const amount = (id: string) => needs.find((need) => need.id === id)?.needed
    // Two joints of 3 in pipe: 2 x 946.352946 / 40 mL
    expect(amount('cement:solvent-cement')).toBeCloseTo(47.317_647_3, 6)
    expect(amount('cement:primer')).toBeCloseTo(23.658_823_65, 6)
  })
})

describe('the bill', () => {
  it('carries what is used at pack share and shows the rest beside it', () => {
    const { bill } = billed(batch, shop)
    // Stock 2400 - 485 kept. Cups: 10 of 12 at 5.00 = 4.17 (416.67), rest 0.83. Tube: 20 of 300 at 7.00 = 0.47 (46.67).
    // Feed: 60 of 500 at 9.99 = 1.20 (119.88). Caps 4 x 1.50 all used.
    expect(bill.lines.map((one) => [one.id, one.totalMinor, one.usedMinor, one.restMinor])).toEqual([
      ['stock:post', 2400, 1915, 485],
      ['closure:cap', 600, 600, 0],
      ['cup:cup', 500, 417, 83],
      ['sealant:silicone-neutral', 700, 47, 653],
      ['feed:feed-a', 999, 120, 879]
    ])
    expect([bill.totalMinor, bill.usedMinor, bill.restMinor]).toEqual([5199, 3099, 2100])
    expect(bill.oldestPriceOn).toBe('2025-05-01')
  })

  it('leaves the totals open where a price is missing, and says stop for pricing', () => {
    const offers = shop.offers.map((one) => (one.id === 'cups' ? pack({ ...one }, null) : one))
    const unpriced = offers.map((one) =>
      one.id === 'cups' ? { ...one, offer: { ...one.offer, priceMinor: null } } : one
    )
    const { bill, findings } = billed(batch, { ...shop, offers: unpriced })
    expect([bill.totalMinor, bill.usedMinor, line(bill, 'cup:cup')?.totalMinor]).toEqual([null, null, null])
    expect(bill.missing).toEqual([{ need: 'cup', partId: 'cup', name: 'Net cup' }])
    expect(findings).toMatchObject([{ code: 'price-missing', severity: 'stop', figures: { name: 'Net cup' } }])
  })

  it('says once that a shop has no prices at all', () => {
    const stock = shop.stock.map((bar) => ({ ...bar, offer: { ...bar.offer, priceMinor: null } }))
    const bare = { ...cuts, bars: cuts.bars.map((bar) => ({ ...bar, costMinor: null })) }
    const { bill, findings } = billed({ ...batch, cuts: [bare] }, { ...shop, stock, offers: [] })
    expect(bill.totalMinor).toBeNull()
    expect(findings.map((finding) => [finding.code, finding.severity])).toEqual([['prices-none', 'note']])
  })

  it('flags a price older than the set age by its days, and one without a date', () => {
    const dated = (pricedOn: string) => ({
      ...shop,
      stock: [],
      offers: shop.offers.map((one) => ({ ...one, offer: { ...one.offer, pricedOn } }))
    })
    const codes = (from: BillShop) => billed({ ...batch, cuts: [] }, from).findings.map((finding) => finding.code)
    // 2025-03-03 to 2025-06-01: 28 + 30 + 31 + 1 = 90 days
    expect(codes(dated('2025-03-03'))).toEqual([])
    expect(codes(dated('2025-03-02'))).toEqual(['price-old'])
    const old = billed({ ...batch, cuts: [] }, dated('2025-03-02')).findings[0]
    expect(old?.figures).toMatchObject({ ageDays: 91, mostDays: 90, prices: 4 })
    expect(codes(dated(''))).toEqual(['price-undated'])
  })

  it('takes from the shelf first, with its worth, and shares one open tube between two kinds of sealant', () => {
    const joints = [
      { id: 'a', method: 'silicone-neutral', wettedMm: 400, outsideMm: 100 },
      { id: 'b', method: 'silicone-acetoxy', wettedMm: 400, outsideMm: 100 }
    ] as const
    const channels = batch.channels.map((channel) => ({ ...channel, joints }))
    const shelf = [{ need: 'sealant', partId: '', amount: 30, worthMinor: 90 }] as const
    const { bill } = billed({ ...batch, channels }, { ...shop, shelf })
    const got = (id: string) => [line(bill, id)?.fromShelf, line(bill, id)?.fromShelfMinor, line(bill, id)?.bought]
    expect(got('sealant:silicone-neutral')).toEqual([20, 60, 0])
    expect(got('sealant:silicone-acetoxy')).toEqual([10, 30, 300])
  })

  it('loses nothing: what is needed and left was bought or on the shelf, and so is its money, in any currency', () => {
    const amount = fc.integer({ min: 0, max: 40 })
    const currency = fc.constantFrom('USD', 'JPY', 'KWD', 'CLF')
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), amount, amount, currency, (quantity, onShelf, worthMinor, code) => {
        const shelf = [{ need: 'cup', partId: 'cup', amount: onShelf, worthMinor }] as const
        const { bill } = billed({ ...batch, quantity, cuts: [] }, { ...shop, currency: code, shelf })
        for (const one of bill.lines) {
          expect(one.needed + one.left).toBeCloseTo(one.fromShelf + one.bought, 6)
          expect((one.usedMinor ?? 0) + (one.restMinor ?? 0)).toBe((one.totalMinor ?? 0) + one.fromShelfMinor)
        }
        const sum = (of: 'totalMinor' | 'usedMinor' | 'restMinor') =>
          bill.lines.reduce((a, one) => a + (one[of] ?? 0), 0)
        expect([bill.totalMinor, bill.usedMinor, bill.restMinor]).toEqual([
          sum('totalMinor'),
          sum('usedMinor'),
          sum('restMinor')
        ])
      }),
      { seed: 20_250_611, numRuns: 60 }
    )
  })

  it('counts the tax on purchases where the maker bears it, and takes it off where he gets it back', () => {
    const caps = (taxInside: boolean, reclaimed: boolean) => {
      const offers = [
        pack(
          {
            id: 'caps',
            need: 'closure',
            partId: 'cap',
            packSize: 1,
            offer: { priceMinor: 120, supplier: '', pricedOn: '', taxInside }
          },
          120
        )
      ]
      const { bill } = billed({ ...batch, cuts: [] }, { ...shop, offers, buyingTax: { percent: 20, reclaimed } })
      return line(bill, 'closure:cap')?.packs[0]?.eachMinor
    }
    // 1.20 with 20 % inside is 1.00 without; 1.20 without is 1.44 with.
    expect([caps(true, true), caps(true, false), caps(false, true), caps(false, false)]).toEqual([100, 120, 120, 144])
  })

  it('refuses a batch of none or of a thousand million, a negative price and another currency, naming the field', () => {
    const code = (input: BillInput, from: BillShop) => {
      const bill = billOf(input, from)
      return bill.ok ? null : [bill.problem.code, bill.problem.where?.field]
    }
    expect(code({ ...batch, quantity: 0 }, shop)).toEqual(['out-of-range', 'quantity'])
    expect(code({ ...batch, quantity: 1e9 }, shop)).toEqual(['out-of-range', 'quantity'])
    expect(code({ ...batch, quantity: Number.NaN }, shop)).toEqual(['not-finite', 'quantity'])
    expect(code({ ...batch, quantity: 1.5 }, shop)).toEqual(['out-of-range', 'quantity'])
    const negative = [pack({ id: 'caps', need: 'closure', partId: 'cap', packSize: 1 }, -5)]
    expect(code(batch, { ...shop, offers: negative })).toEqual(['out-of-range', 'offers.caps.priceMinor'])
    const foreign = [pack({ id: 'caps', need: 'closure', partId: 'cap', packSize: 1, currency: 'EUR' }, 5)]
    expect(code(batch, { ...shop, offers: foreign })).toEqual(['currency-mixed', 'offers.caps.currency'])
  })
})

describe('what follows from the bill', () => {
  it('lists the shopping by supplier, each list with its total', () => {
    const lists = shoppingList(billed(batch, shop).bill)
    expect(lists.map((list) => [list.supplier, list.rows.length, list.totalMinor])).toEqual([
      ['North yard', 4, 2799],
      ['South yard', 1, 2400]
    ])
  })

  it('puts the left-over of packs on the shelf with its worth, and the next batch uses it up first', () => {
    const { bill } = billed(batch, shop)
    const shelf = putOnShelf(shop.shelf, bill)
    expect(shelf).toContainEqual({ need: 'cup', partId: 'cup', amount: 2, worthMinor: 83 })
    expect(shelf.some((item) => item.need === 'closure' || item.need === 'stock')).toBe(false)
    const next = billed(batch, { ...shop, shelf }).bill
    expect(line(next, 'feed:feed-a')).toMatchObject({ fromShelf: 60, bought: 0, totalMinor: 0, left: 0 })
    // 440 mL left of worth 8.79, of which 60 mL are 1.20 (119.86)
    expect(line(next, 'feed:feed-a')?.usedMinor).toBe(120)
    expect(putOnShelf(shelf, next)).toContainEqual({ need: 'feed', partId: 'feed-a', amount: 380, worthMinor: 759 })
  })
})
