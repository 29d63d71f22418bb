import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CostInput, labourByStep, materialByLine, pricePlan, unitCost } from '../../shared-model/pricing'
import { bill, priceInput, setup } from './a-price'

const input: CostInput = {
  quantity: 4,
  materialMinor: 8000,
  cutListMinor: 6000,
  restMinor: 500,
  work: priceInput.work,
  tools: priceInput.tools,
  setup
}
const costOf = (part: Partial<CostInput>) => {
  const cost = unitCost({ ...input, ...part })
  if (!cost.ok) throw new Error(cost.problem.code)
  return cost.value.cost
}
const withSetup = (part: Partial<CostInput['setup']>) => costOf({ setup: { ...setup, ...part } })

describe('cost of one unit', () => {
  it('is material at pack share, labour, wear and overhead: worked by hand', () => {
    // Four hours: labour 80.00, overhead 12.00. Wear (24.00 - 4.00) / 1000 x 16 = 0.32. Material 80.00. Batch 172.32, one 43.08.
    const cost = costOf({})
    expect(cost.batch).toEqual({
      materialMinor: 8000,
      labourMinor: 8000,
      toolWearMinor: 32,
      overheadMinor: 1200,
      scrapMinor: 0,
      packRestMinor: 0
    })
    expect([cost.batchMinor, cost.totalMinor, cost.workedS]).toEqual([17_232, 4308, 14_400])
  })

  it('takes scrap as gross less net, and never on top of a cut list or of set-up', () => {
    // On loose material 20.00, run 3.5 h x 23.00 = 80.50 and wear 0.32: net 100.82; / 0.8 = 126.025; scrap 25.205, half up 25.21.
    expect(withSetup({ scrapPercent: 20 }).batch.scrapMinor).toBe(2521)
  })

  it('charges the rest of packs to the batch only where the grower says so', () => {
    expect(withSetup({ chargePackRestTo: 'batch' }).batch.packRestMinor).toBe(500)
    expect(withSetup({ chargePackRestTo: 'nobody' }).batch.packRestMinor).toBe(0)
  })

  it('learns on run time only', () => {
    // Cumulative average at 80 %: 4 units take 0.64 of the time: 12 600 x 0.64 = 8064 s, and 1800 s of set-up stay.
    expect(withSetup({ learning: { model: 'cumulative-average', ratePercent: 80 } }).workedS).toBe(9864)
    // Unit model at 80 %: 3150 x (1 + 0.8 + 3^log2(0.8) + 0.64), 3^log2(0.8) = 0.702104: 3150 x 3.142104 = 9897.627
    expect(withSetup({ learning: { model: 'unit', ratePercent: 80 } }).workedS).toBeCloseTo(1800 + 9897.627, 2)
  })

  it('says that the wear of a tool without a price or a life is not in it', () => {
    const tools = [{ toolId: 'saw', name: 'Hole saw', priceMinor: null, salvageMinor: 0, lifeUses: 1000, uses: 16 }]
    const cost = unitCost({ ...input, tools })
    expect(cost.ok && cost.value.findings).toMatchObject([
      { code: 'tool-wear-unknown', figures: { toolName: 'Hole saw' } }
    ])
  })

  it('splits into parts that add up, for the batch and for one, to the minor unit', () => {
    const minor = fc.integer({ min: 0, max: 10_000_000 })
    fc.assert(
      fc.property(
        minor,
        minor,
        fc.integer({ min: 1, max: 10_000 }),
        fc.integer({ min: 0, max: 90 }),
        (material, rate, quantity, scrap) => {
          const cost = costOf({
            quantity,
            materialMinor: material,
            cutListMinor: 0,
            setup: { ...setup, hourlyRateMinor: rate, scrapPercent: scrap, chargePackRestTo: 'batch' }
          })
          const sum = (parts: typeof cost.batch) =>
            parts.materialMinor +
            parts.labourMinor +
            parts.toolWearMinor +
            parts.overheadMinor +
            parts.scrapMinor +
            parts.packRestMinor
          expect(sum(cost.batch)).toBe(cost.batchMinor)
          expect(sum(cost)).toBe(cost.totalMinor)
          expect(Math.abs(cost.totalMinor * quantity - cost.batchMinor)).toBeLessThanOrEqual(quantity / 2)
        }
      ),
      { seed: 20_250_611, numRuns: 200 }
    )
  })

  it('refuses a batch of none, of a thousand million or of a broken number, and a scrap of all of it', () => {
    const field = (part: Partial<CostInput>) => {
      const cost = unitCost({ ...input, ...part })
      return cost.ok ? null : [cost.problem.code, cost.problem.where?.field]
    }
    expect(field({ quantity: 0 })).toEqual(['out-of-range', 'quantity'])
    expect(field({ quantity: 1e9 })).toEqual(['out-of-range', 'quantity'])
    expect(field({ quantity: 2.5 })).toEqual(['out-of-range', 'quantity'])
    expect(field({ setup: { ...setup, scrapPercent: 100 } })).toEqual(['out-of-range', 'pricing.scrapPercent'])
    expect(field({ setup: { ...setup, hourlyRateMinor: -1 } })).toEqual(['out-of-range', 'pricing.hourlyRateMinor'])
    expect(field({ work: { setUpS: 0, runS: Number.NaN } })).toEqual(['not-finite', 'work.runS'])
    const tools = [{ toolId: 'saw', name: 'Saw', priceMinor: 100, salvageMinor: 200, lifeUses: 10, uses: 1 }]
    expect(field({ tools })).toEqual(['out-of-range', 'saws.saw'])
  })
})

describe('where the cost comes from', () => {
  const { plan } = pricePlan(priceInput)
  const cost = plan.cost
  if (cost === null) throw new Error('there is no cost')

  it('splits the material over the lines of the bill, to the minor unit', () => {
    const rows = materialByLine(bill, cost)
    // 80.00 for four: 60.00 of stock and 20.00 of cups; 4.00 and 5.00 are left over beside it.
    expect(rows.map(({ name, eachMinor, usedMinor, restMinor }) => [name, eachMinor, usedMinor, restMinor])).toEqual([
      ['stock', 1500, 6000, 400],
      ['cup', 500, 2000, 500]
    ])
  })

  it('splits the labour over the kinds of steps by their time; a wait is neither worked nor paid', () => {
    const step = (kind: 'cut' | 'saw' | 'cure', runS: number, waitS = 0) => ({
      id: kind,
      kind,
      needs: [],
      toolId: null,
      toolName: '',
      machine: 'hand' as const,
      drillId: null,
      rpmCeiling: null,
      rpmGrade: null,
      setUpS: 0,
      runS,
      waitS,
      serves: [],
      count: 8,
      figures: {},
      cautionIds: []
    })
    // 4 h at 20.00: set-up 1800 s, cuts twice 3600 s, saw 5400 s of 14,400 s.
    const steps = [step('cut', 3600), step('saw', 5400), step('cut', 3600), step('cure', 0, 86_400)]
    const rows = labourByStep({ steps, workedS: 14_400 }, cost)
    expect(rows.map(({ kind, workedS, waitS, labourMinor }) => [kind, workedS, waitS, labourMinor])).toEqual([
      [null, 1800, 0, 1000],
      ['cut', 7200, 0, 4000],
      ['saw', 5400, 0, 3000],
      ['cure', 0, 86_400, 0]
    ])
  })
})
