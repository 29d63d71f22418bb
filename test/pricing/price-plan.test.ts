import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type PriceInput, type PricingSetup, pricePlan, type WayOfSelling } from '../../shared-model/pricing'
import { bill, online, priceInput, setup, stall } from './a-price'

const withSetup = (part: Partial<PricingSetup>): PriceInput => ({ ...priceInput, setup: { ...setup, ...part } })
const way = (part: Partial<WayOfSelling>, more: Partial<PricingSetup> = {}) => {
  const priced = pricePlan(withSetup({ ways: [{ ...stall, ...part }], ...more }))
  return { ...priced, way: priced.plan.ways[0] }
}

describe('ways of selling side by side', () => {
  it('prices the stall and the online sale of one design: worked by hand', () => {
    const { plan, problems } = pricePlan(priceInput)
    expect(problems).toEqual([])
    expect([plan.currency, plan.digits, plan.cost?.totalMinor]).toEqual(['USD', 2, 4308])
    // Stall: 43.08 / 0.6 = 71.80, up to 72.00. Profit 28.92 a unit, 4 x 28.92 - 30.00 = 85.68 for four hours: 21.42 an hour;
    // with labour of 80.00 41.42 earned. Fixed 30.00 and the saw's 20.00; contribution 28.92 + 0.08 wear = 29.00: 2 units.
    expect(plan.ways[0]).toEqual({
      wayId: 'stall',
      name: 'Own stall',
      priceMinor: 7200,
      shownMinor: 7200,
      taxMinor: 0,
      feesMinor: 0,
      postingMinor: 0,
      profitMinor: 2892,
      batchProfitMinor: 8568,
      marginShare: 2892 / 7200,
      markupShare: 2892 / 4308,
      profitPerHourMinor: 2142,
      earningPerHourMinor: 4142,
      breakEvenUnits: 2,
      // The stall fee alone: 30.00 / 28.92 is over one.
      feeBreakEvenUnits: 2,
      // A batch of four costs 172.32 - 0.32 wear and the stall 30.00; with the saw's 20.00 that is 222.00, four bring 288.00:
      // three do not. A second batch takes 202.00 more: 424.00, six bring 432.00 and five do not; a third is paid by nine.
      crossings: [
        { units: 4, direction: 'into-profit' },
        { units: 5, direction: 'into-loss' },
        { units: 6, direction: 'into-profit' }
      ],
      fixedMinor: 5000,
      toolsMinor: 2000,
      contributionMinor: 2900,
      safetyShare: 0.5
    })
    // Online: C 43.08 + 9.50, F 0.30, S 8.00 with the fee on it: (52.88 - 8 x 0.9) / (1 - 0.1 - 0.4) = 91.36, up to 92.00.
    // Fees 10 % of 100.00 and 0.30 = 10.30; profit 92 + 8 - 52.58 - 10.30 = 37.12.
    expect(plan.ways[1]).toMatchObject({ priceMinor: 9200, feesMinor: 1030, profitMinor: 3712 })
  })

  it('charges the time of posting one to the way that posts, once and never learned: worked by hand', () => {
    // Six minutes at 20.00 and 3.00 an hour: 2.00 and 0.30. (43.08 + 2.30) / 0.6 = 75.63, up to 76.00; 76 - 45.38 = 30.62.
    const learning = { model: 'unit', ratePercent: 100 } as const
    for (const more of [{}, { learning }]) {
      const got = way({ postPerUnitS: 360 }, more).way
      expect(got).toMatchObject({ postingMinor: 230, priceMinor: 7600, profitMinor: 3062 })
      // 4 x 30.62 - 30.00 = 92.48 in four hours and 24 minutes of posting: 21.02 an hour; labour 80.00 and 8.00: 41.02.
      expect(got).toMatchObject({ batchProfitMinor: 9248, profitPerHourMinor: 2102, earningPerHourMinor: 4102 })
    }
    expect(way({ postPerUnitS: -1 }).problems).toMatchObject([
      { code: 'out-of-range', where: { field: 'pricing.ways.stall.postPerUnitS' } }
    ])
  })

  it('lists every crossing as a walk over each number of units finds it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 3000, max: 9000 }),
        (quantity, givenPriceMinor) => {
          const input = {
            ...withSetup({ ways: [{ ...stall, givenPriceMinor }] }),
            bill: { ...bill, lines: [], quantity }
          }
          const { cost, ways } = pricePlan(input).plan
          const found: string[] = []
          let before = Number.NEGATIVE_INFINITY
          for (let units = 1; units <= 10_000 && cost !== null; units += 1) {
            const batches = Math.ceil(units / quantity)
            const spent = batches * (cost.batchMinor - cost.batch.toolWearMinor + 3000) + 2000
            const now = units * givenPriceMinor - spent
            if (before < 0 && now >= 0) found.push(`${units} into-profit`)
            if (before >= 0 && now < 0) found.push(`${units} into-loss`)
            before = now
          }
          expect(ways[0]?.crossings.map(({ units, direction }) => `${units} ${direction}`)).toEqual(found)
        }
      ),
      { seed: 20_250_611, numRuns: 40 }
    )
  })

  it('leaves at least the wanted margin after rounding up, to the rounding of fee and tax', () => {
    const percent = (most: number) => fc.integer({ min: 0, max: most })
    const kind = fc.constantFrom('none', 'sales-tax-on-top', 'value-added-inside') as fc.Arbitrary<
      PricingSetup['taxKind']
    >
    fc.assert(
      fc.property(
        percent(40),
        percent(40),
        percent(25),
        kind,
        fc.boolean(),
        (feePercent, marginPercent, taxPercent, taxKind, feeOnTax) => {
          const got = way({ ...online, feePercent, feeOnTax }, { marginPercent, taxPercent, taxKind }).way
          expect(got).toBeDefined()
          expect(got?.profitMinor ?? 0).toBeGreaterThanOrEqual(((got?.priceMinor ?? 0) * marginPercent) / 100 - 1.5)
          expect((got?.shownMinor ?? 1) % 100).toBe(0)
          if (taxKind === 'value-added-inside')
            expect((got?.priceMinor ?? 0) + (got?.taxMinor ?? 0)).toBe(got?.shownMinor)
        }
      ),
      { seed: 20_250_611, numRuns: 80 }
    )
  })

  it('has the profit of the batch from what the batch costs, not from the rounded cost of one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 0, max: 1_000_000 }), (quantity, usedMinor) => {
        const { plan } = pricePlan({ ...priceInput, bill: { ...bill, lines: [], quantity, usedMinor } })
        for (const one of plan.ways) {
          const { postageChargedMinor, postageCostMinor, fixedPerBatchMinor } = one.wayId === 'stall' ? stall : online
          const taken = (one.priceMinor + postageChargedMinor - postageCostMinor - one.feesMinor) * quantity
          expect(one.batchProfitMinor).toBe(taken - (plan.cost?.batchMinor ?? Number.NaN) - fixedPerBatchMinor)
        }
      }),
      { seed: 20_250_611, numRuns: 100 }
    )
  })

  it('takes a given price as it is, and says when it loses money', () => {
    const got = way({ givenPriceMinor: 4000 })
    expect(got.way).toMatchObject({ priceMinor: 4000, profitMinor: -308, breakEvenUnits: null, safetyShare: null })
    expect(got.findings.map((finding) => finding.code)).toContain('sells-at-a-loss')
    expect(got.problems).toMatchObject([{ code: 'contribution-not-positive', figures: { contributionMinor: -300 } }])
  })

  it('keeps the other ways when one has no price, and names what is too high', () => {
    const priced = pricePlan(withSetup({ ways: [{ ...online, feePercent: 60 }, stall] }))
    expect(priced.plan.ways.map((one) => one.wayId)).toEqual(['stall'])
    const problem = { code: 'no-price', figures: { tooHigh: 'fee-and-margin', mostMarginPercent: 40 } }
    expect(priced.problems).toMatchObject([{ ...problem, where: { field: 'pricing.marginPercent' } }])
  })

  it('counts neither tax on top nor tax inside as revenue', () => {
    const top = way({ givenPriceMinor: 10_000 }, { taxKind: 'sales-tax-on-top', taxPercent: 8.25 }).way
    expect(top).toMatchObject({ shownMinor: 10_000, taxMinor: 825, profitMinor: 5692 })
    const inside = way({ givenPriceMinor: 10_000 }, { taxKind: 'value-added-inside', taxPercent: 20 }).way
    expect(inside).toMatchObject({ shownMinor: 12_000, taxMinor: 2000, profitMinor: 5692 })
  })
})

describe('what one unit of each input does', () => {
  it('lists the changes of the batch profit, largest first', () => {
    const { plan } = pricePlan(priceInput)
    const change = (input: string) => plan.sensitivity.find((row) => row.input === input)?.changeMinor
    const sizes = plan.sensitivity.map((row) => Math.abs(row.changeMinor))
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a))
    // Four units: one more in price is 4.00, one more of material each 4.00; an hour's rate of one more over four hours 4.00.
    // A minute a unit: 4 / 60 h at 20.00 and 3.00 is 1.33 of labour and 0.20 of overhead.
    expect([change('price'), change('material'), change('hourly-rate'), change('batch-fee')]).toEqual([
      400, -400, -400, -100
    ])
    expect(change('work-time')).toBe(-153)
    // One point of 72.00 is 0.72 a unit.
    expect(change('fee-share')).toBe(-288)
    expect(plan.sensitivity.some((row) => row.input === 'tax-share')).toBe(false)
  })

  it('holds what the buyer sees when the tax inside it rises', () => {
    const { plan } = pricePlan(withSetup({ taxKind: 'value-added-inside', taxPercent: 20 }))
    // Shown 87.00: 71.80 x 1.2 = 86.16 up; 87 / 1.2 = 72.50, 87 / 1.21 = 71.90: 0.60 less a unit.
    expect(plan.sensitivity.find((row) => row.input === 'tax-share')?.changeMinor).toBe(-240)
  })
})

describe('what cannot be priced', () => {
  it('has no cost and no price while a price of the bill is missing, never zero', () => {
    const priced = pricePlan({ ...priceInput, bill: { ...bill, usedMinor: null, totalMinor: null } })
    expect([priced.plan.cost, priced.plan.ways, priced.plan.sensitivity]).toEqual([null, [], []])
    expect(priced.plan.parcel).not.toBeNull()
  })

  it('refuses mixed and unknown currencies by field', () => {
    const codes = (input: PriceInput) =>
      pricePlan(input).problems.map((problem) => [problem.code, problem.where?.field])
    expect(codes({ ...priceInput, currency: 'EUR' })).toEqual([['currency-differs', 'currency']])
    expect(codes({ ...priceInput, currency: 'QQQ' })).toEqual([['currency-unknown', 'currency']])
  })

  it('refuses rates over 100 %, negative prices and broken minor units, naming the field', () => {
    const field = (part: Partial<WayOfSelling>, more: Partial<PricingSetup> = {}) =>
      way(part, more).problems.map((problem) => [problem.code, problem.where?.field])
    expect(field({ feePercent: 101 })).toEqual([['out-of-range', 'pricing.ways.stall.feePercent']])
    expect(field({ givenPriceMinor: -1 })).toEqual([['out-of-range', 'pricing.ways.stall.givenPriceMinor']])
    expect(field({ fixedFeeMinor: 0.5 })).toEqual([['out-of-range', 'pricing.ways.stall.fixedFeeMinor']])
    expect(field({}, { taxPercent: 120 })).toEqual([['out-of-range', 'pricing.taxPercent']])
    expect(field({}, { marginPercent: 100 })).toEqual([['no-price', 'pricing.marginPercent']])
    expect(field({ postageCostMinor: Number.NaN })).toEqual([['not-finite', 'pricing.ways.stall.postageCostMinor']])
  })

  it('lets no NaN or infinity out, whatever figures come in', () => {
    const odd = fc.constantFrom(0, -1, 1e9, 1e15, 0.1, Number.NaN, Number.POSITIVE_INFINITY)
    fc.assert(
      fc.property(odd, odd, odd, odd, (a, b, c, d) => {
        const work = { setUpS: a, runS: b }
        const ways = [{ ...online, feePercent: c, fixedFeeMinor: d, givenPriceMinor: b }]
        const { plan } = pricePlan({ ...withSetup({ ways, taxPercent: c, hourlyRateMinor: d, scrapPercent: a }), work })
        const text = JSON.stringify(plan, (_key, value) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'broken' : value
        )
        expect(text).not.toContain('broken')
      }),
      { seed: 20_250_611, numRuns: 300 }
    )
  })
})
