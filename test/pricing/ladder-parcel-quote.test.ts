import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  billedParcelWeight,
  ladder,
  ladderSteps,
  lengthPlusGirth,
  parcelOf,
  type QuoteInput,
  quote
} from '../../shared-model/pricing'
import { priceInput, setup } from './a-price'

describe('batch ladder', () => {
  const bars = (count: number) => ({ offerId: 'bar', kind: 'bar', name: 'Pipe', size: 3000, count }) as const
  const packs = (count: number) => ({ offerId: 'box', kind: 'pack', name: 'Caps', size: 12, count }) as const
  /** Three units from a bar, twelve to a pack; invented. */
  const at = (units: number) => ({
    bought: [bars(Math.ceil(units / 3)), packs(Math.ceil(units / 12))],
    unitCostMinor: 4000 + Math.round(1000 / units),
    priceMinor: null,
    bars: Math.ceil(units / 3),
    packs: Math.ceil(units / 12),
    toolChanges: 2,
    workedS: 1800 + 3150 * units
  })

  it('works each size out on its own and marks where another bar or pack opens', () => {
    const steps = ladder([12, 1, 2, 4, 4, 24], at)
    expect(steps.ok && steps.value.map((step) => [step.units, step.bars, step.opensStock, step.opensPack])).toEqual([
      [1, 1, false, false],
      [2, 1, false, false],
      [4, 2, true, false],
      [12, 4, true, false],
      [24, 8, true, true]
    ])
  })

  it('names the bar and the pack that a size opens, and how many more of each', () => {
    const steps = ladder([12, 24, 25], at)
    expect(steps.ok && steps.value.map((step) => step.opens)).toEqual([[], [bars(4), packs(1)], [bars(1), packs(1)]])
  })

  it('names a pack of another size that a larger batch changes to, though fewer packs are bought', () => {
    const small = { offerId: 'one', kind: 'pack', name: 'One', size: 1, count: 9 } as const
    const large = { offerId: 'ten', kind: 'pack', name: 'Ten', size: 10, count: 1 } as const
    const steps = ladder([9, 10], (units) => ({ ...at(units), bought: [units === 9 ? small : large] }))
    expect(steps.ok && steps.value[1]).toMatchObject({ opens: [large], opensStock: false, opensPack: true })
  })

  it('gives the first step before the second is worked out, so that it can be shown and stopped', () => {
    const asked: number[] = []
    const steps = ladderSteps([2, 4, 8], (units) => {
      asked.push(units)
      return at(units)
    })
    expect(steps.next().value?.units).toBe(2)
    steps.return()
    expect(asked).toEqual([2])
  })

  it('refuses sizes that are no batch', () => {
    const field = (sizes: readonly number[]) => {
      const steps = ladder(sizes, at)
      return steps.ok ? null : steps.problem.where?.field
    }
    expect([field([1, 0]), field([1e9]), field([1.5]), field([1, 2])]).toEqual([
      'pricing.ladder.1',
      'pricing.ladder.0',
      'pricing.ladder.0',
      null
    ])
  })
})

describe('parcel', () => {
  it('adds padding and packing, and says which limits it is over', () => {
    const parcel = parcelOf(priceInput.unit ?? { sidesMm: [1, 1, 1], massG: 1 }, {
      ...setup.parcel,
      lengthLimitMm: 900,
      weightLimitG: 1000
    })
    // 940 x 140 x 120; 940 + 2 x 260 = 1460. 940 x 140 x 120 / 5000 = 3158.4 g, up to 3500; weighed 1800 g.
    expect(parcel.ok && parcel.value.parcel).toEqual({
      sidesMm: [940, 140, 120],
      massG: 1800,
      billedG: 3500,
      lengthPlusGirthMm: 1460
    })
    expect(parcel.ok && parcel.value.findings.map((finding) => finding.code)).toEqual([
      'parcel-too-long',
      'parcel-too-heavy',
      'parcel-billed-by-size'
    ])
  })

  it('bills by weight alone up to the threshold, and never below the weight', () => {
    const side = fc.integer({ min: 1, max: 3000 })
    fc.assert(
      fc.property(side, side, side, fc.integer({ min: 1, max: 30_000 }), (a, b, c, massG) => {
        const rules = { threshold: 1e7, divisor: 5000, sideStep: 10, sideRounding: 'up', weightStep: 100 } as const
        const billed = billedParcelWeight([a, b, c], massG, rules)
        const weight = billed.ok ? billed.value : Number.NaN
        expect(weight).toBeGreaterThanOrEqual(massG)
        expect(weight % 100).toBe(0)
        if (Math.ceil(a / 10) * Math.ceil(b / 10) * Math.ceil(c / 10) * 1000 <= 1e7)
          expect(weight - massG).toBeLessThan(100)
      }),
      { seed: 20_250_611, numRuns: 200 }
    )
  })

  it('takes the longest side as the length, in whatever order the sides come', () => {
    const values = [
      [10, 8, 5],
      [5, 10, 8],
      [8, 5, 10]
    ].map((s) => lengthPlusGirth([s[0] ?? 0, s[1] ?? 0, s[2] ?? 0]))
    expect(values).toEqual([36, 36, 36].map((value) => ({ ok: true, value })))
    expect(lengthPlusGirth([0, 1, 1])).toMatchObject({ ok: false, problem: { code: 'out-of-range' } })
  })

  it('rounds converted sides like the sides they came from', () => {
    // 8.5 in is 215.9 mm: half an inch goes up to 9 in.
    const rules = { threshold: 0, divisor: 16_387.064, sideStep: 25.4, sideRounding: 'nearest', weightStep: 0 } as const
    const billed = billedParcelWeight([215.9, 25.4, 25.4], 0.001, rules)
    expect(billed.ok && billed.value).toBeCloseTo(9, 9)
  })

  it('does not round to a step finer than its figures can tell', () => {
    const rules = {
      threshold: 0,
      divisor: null,
      sideStep: 5e-324,
      sideRounding: 'nearest',
      weightStep: 5e-324
    } as const
    expect(billedParcelWeight([100, 50, 20], 350, rules)).toEqual({ ok: true, value: 350 })
  })
})

describe('quote for a buyer', () => {
  const input: QuoteInput = {
    currency: 'USD',
    items: [{ what: 'Planter of two channels', count: 3, eachMinor: 3333 }],
    postageMinor: 1000,
    taxKind: 'sales-tax-on-top',
    taxPercent: 8.25,
    workedS: 30_000,
    waitS: 90_000,
    workHoursADay: 8
  }

  it('taxes the whole once and loses no minor unit over its rows', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            what: fc.constant('x'),
            count: fc.integer({ min: 1, max: 50 }),
            eachMinor: fc.integer({ min: 0, max: 99_999 })
          }),
          {
            minLength: 1,
            maxLength: 6
          }
        ),
        fc.constantFrom('none', 'sales-tax-on-top', 'value-added-inside') as fc.Arbitrary<QuoteInput['taxKind']>,
        (items, taxKind) => {
          const got = quote({ ...input, items, taxKind })
          if (!got.ok) throw new Error(got.problem.code)
          const sum = (of: 'netMinor' | 'taxMinor' | 'totalMinor') =>
            got.value.rows.reduce((total, row) => total + row[of], 0)
          expect([sum('netMinor'), sum('taxMinor'), sum('totalMinor')]).toEqual([
            got.value.netMinor,
            got.value.taxMinor,
            got.value.totalMinor
          ])
        }
      ),
      { seed: 20_250_611, numRuns: 150 }
    )
  })

  it('shows what, how many, price and lead time: worked by hand', () => {
    const got = quote(input)
    // 3 x 33.33 + 10.00 = 109.99; 8.25 % = 9.074175, 9.07. Two days of eight hours for 8.33 h, two days round the clock for 25 h.
    expect(got.ok && got.value).toMatchObject({ netMinor: 10_999, taxMinor: 907, totalMinor: 11_906, leadDays: 4 })
    expect(got.ok && Object.keys(got.value.rows[0] ?? {}).sort()).toEqual([
      'count',
      'eachMinor',
      'netMinor',
      'taxMinor',
      'totalMinor',
      'what'
    ])
  })

  it('refuses a quote of nothing, or of a broken count', () => {
    expect(quote({ ...input, items: [] })).toMatchObject({ ok: false, problem: { where: { field: 'items' } } })
    const items = [{ what: 'x', count: 0, eachMinor: 1 }]
    expect(quote({ ...input, items })).toMatchObject({ ok: false, problem: { where: { field: 'count' } } })
  })
})
