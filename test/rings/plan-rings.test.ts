import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  EMPTY_RING_PLAN,
  type PlateNeed,
  planRings,
  type RingNeed,
  type RingPlan,
  type RingsInput,
  ringFindings,
  type SheetStock
} from '../../shared-model/rings'
import { worstOfPlan } from './check-layout'

const SEED = 61_002
const FOAM = { material: 'eva-foam', thicknessMm: 10 } as const
const setup = { webMm: 4, edgeMm: 6 }
const atOnce = { work: 0, stop: () => false }

const collar = (id: string, outer: number, inner: number | null, count: number): RingNeed => ({
  id,
  name: id,
  outerSawId: `saw-${outer}`,
  innerSawId: inner === null ? null : `saw-${inner}`,
  cutDiameterMm: outer,
  outsideMm: outer - 4,
  holeMm: inner,
  coreMm: inner === null ? null : inner - 4,
  count,
  ...FOAM
})

const plate = (id: string, widthMm: number, heightMm: number, count: number): PlateNeed => ({
  id,
  name: id,
  widthMm,
  heightMm,
  count,
  ...FOAM
})

const sheet = (id: string, widthMm: number, heightMm: number, priceMinor: number | null): SheetStock => ({
  id,
  name: id,
  widthMm,
  heightMm,
  ...FOAM,
  offer: { priceMinor, supplier: '', pricedOn: '', taxInside: true },
  count: null,
  isOffcut: false
})

const offcut = (id: string, widthMm: number, heightMm: number): SheetStock => ({
  ...sheet(id, widthMm, heightMm, 0),
  count: 1,
  isOffcut: true
})

const planned = (input: Partial<RingsInput>): RingPlan => {
  const result = planRings({ needs: [], plates: [], sheets: [], setup, budget: atOnce, ...input })
  if (!result.ok) throw new Error(result.problem.code)
  return result.value
}

describe('collars over sheets', () => {
  it('takes one sheet of 600 × 400 for 33 collars of the 76 mm saw, proven', () => {
    // Six and seven in hexagonal rows: the best lattice holds at least 33, one sheet is the least there is.
    const plan = planned({ needs: [collar('a', 76, 51, 33)], sheets: [sheet('big', 600, 400, 900)] })
    expect(plan).toMatchObject({ value: 900, lowerBound: 900, proven: true, leastSheets: 1, costMinor: 900, uncut: [] })
    expect(plan.sheets[0]?.circles).toHaveLength(33)
    expect(plan.coresLeft).toEqual([{ diameterMm: 47, count: 33 }])
  })

  it('needs two sheets for 41, because Oler’s bound of one is 40', () => {
    const plan = planned({ needs: [collar('a', 76, 51, 41)], sheets: [sheet('big', 600, 400, 900)] })
    expect(plan).toMatchObject({ value: 1800, lowerBound: 1800, proven: true, leastSheets: 2 })
  })

  it('takes the cheaper mix of sheet sizes', () => {
    // Eight 76 mm circles on 300 × 200 at most ((2/√3)·2.65·1.4 + 4.05 + 1 = 9.3, lattice 6); five fit the small sheet.
    const plan = planned({
      needs: [collar('a', 76, 51, 5)],
      sheets: [sheet('big', 600, 400, 900), sheet('small', 300, 200, 250)]
    })
    expect(plan.sheets.map(({ sheetId }) => sheetId)).toEqual(['small'])
    expect(plan.proven).toBe(true)
  })

  it('uses a sheet offcut on the rack before a new sheet', () => {
    const plan = planned({
      needs: [collar('a', 76, 51, 5)],
      sheets: [sheet('big', 600, 400, 900), offcut('rest', 300, 200)]
    })
    expect(plan.sheets.map(({ sheetId, isOffcut }) => [sheetId, isOffcut])).toEqual([['rest', true]])
    expect(plan.value).toBe(0)
  })

  it('cuts the smaller collar from the core of the larger where its saw is the same', () => {
    const plan = planned({
      needs: [collar('large', 102, 76, 6), collar('small', 76, 51, 8)],
      sheets: [sheet('big', 600, 400, 900)]
    })
    expect(plan.fromCores).toEqual([{ needId: 'small', fromNeedId: 'large', count: 6, sameSaw: true }])
    expect(plan.sheets[0]?.circles.filter(({ needId }) => needId === 'small')).toHaveLength(2)
    expect(plan.coresLeft).toEqual([{ diameterMm: 47, count: 8 }])
  })

  it('sets end plates and collars on one sheet and keeps what is left as rectangles', () => {
    const plan = planned({
      needs: [collar('a', 76, 51, 6)],
      plates: [plate('end', 90, 60, 4)],
      sheets: [sheet('big', 600, 400, 900)]
    })
    expect(plan.sheets).toHaveLength(1)
    expect(plan.sheets[0]?.plates).toHaveLength(4)
    expect(plan.sheets[0]?.circles).toHaveLength(6)
    expect(plan.sheets[0]?.offcuts.length).toBeGreaterThan(0)
    expect(worstOfPlan(plan, setup)).toBeLessThan(1e-5)
  })

  it('compares by area and leaves the cost open where a price is missing', () => {
    const plan = planned({ needs: [collar('a', 76, 51, 5)], sheets: [sheet('big', 600, 400, null)] })
    expect(plan).toMatchObject({ costMinor: null, value: 240_000 })
  })

  it('says which collars have no sheet', () => {
    const input = { needs: [collar('a', 76, 51, 5)], plates: [], sheets: [], setup, budget: atOnce }
    const plan = planned(input)
    expect(plan.uncut).toEqual([{ needId: 'a', count: 5 }])
    expect(plan.proven).toBe(false)
    expect(ringFindings(input, plan)).toMatchObject([
      { code: 'sheet-short', severity: 'stop', figures: { missing: 5 } }
    ])
  })

  it('says that a collar is wider than every sheet', () => {
    const input = {
      needs: [collar('a', 102, 76, 1)],
      plates: [],
      sheets: [sheet('strip', 600, 100, 300)],
      setup,
      budget: atOnce
    }
    // 102 + 2 · 6 = 114 mm is needed, the strip is 100 mm wide.
    expect(ringFindings(input, planned(input))).toMatchObject([
      { code: 'sheet-too-small', figures: { needsMm: 114, largestMm: 100 } }
    ])
  })

  it('finds the least sheets by a free search where lattices take one more', () => {
    const input = { needs: [collar('a', 76, 51, 35)], sheets: [sheet('big', 600, 400, 900)] }
    expect(planned(input).value).toBe(1800)
    expect(planned({ ...input, budget: { work: 6000, stop: () => false } })).toMatchObject({ value: 900, proven: true })
  })

  it('plans nothing for nothing', () => {
    expect(planned({})).toEqual(EMPTY_RING_PLAN)
  })

  it('refuses the same id twice, counts that are no slip and figures that are none', () => {
    const twice = planRings({
      needs: [collar('a', 76, 51, 1), collar('a', 64, 38, 1)],
      plates: [],
      sheets: [],
      setup,
      budget: atOnce
    })
    expect(twice).toMatchObject({ ok: false, problem: { code: 'sheet-id-twice', figures: { id: 'a' } } })
    const many = planRings({ needs: [collar('a', 76, 51, 1e9)], plates: [], sheets: [], setup, budget: atOnce })
    expect(many).toMatchObject({ ok: false, problem: { code: 'out-of-range', figures: { least: 0, most: 20_000 } } })
    const none = planRings({ needs: [collar('a', Number.NaN, 51, 1)], plates: [], sheets: [], setup, budget: atOnce })
    expect(none).toMatchObject({ ok: false, problem: { code: 'not-finite' } })
  })

  it('cuts every part once, keeps every web and margin, and never beats its own bound', () => {
    const count = fc.integer({ min: 0, max: 14 })
    const drawn = fc.record({
      large: count,
      middle: count,
      small: count,
      ends: fc.integer({ min: 0, max: 6 }),
      rack: fc.boolean(),
      few: fc.boolean()
    })
    fc.assert(
      fc.property(drawn, ({ large, middle, small, ends, rack, few }) => {
        const needs = [collar('l', 102, 76, large), collar('m', 76, 51, middle), collar('s', 51, 25, small)]
        const big = sheet('big', 420, 300, 700)
        const sheets = [few ? { ...big, count: 1 } : big, ...(rack ? [offcut('rest', 250, 160)] : [])]
        const plan = planned({ needs, plates: [plate('end', 90, 60, ends)], sheets })
        const cut = (id: string) =>
          plan.sheets.flatMap(({ circles, plates }) => [...circles, ...plates]).filter(({ needId }) => needId === id)
            .length +
          plan.fromCores.reduce((sum, use) => sum + (use.needId === id ? use.count : 0), 0) +
          plan.uncut.reduce((sum, line) => sum + (line.needId === id ? line.count : 0), 0)
        expect([cut('l'), cut('m'), cut('s'), cut('end')]).toEqual([large, middle, small, ends])
        expect(worstOfPlan(plan, setup)).toBeLessThan(1e-5)
        expect(plan.lowerBound).toBeLessThanOrEqual(plan.value)
        expect(plan.leastSheets).toBeLessThanOrEqual(plan.sheets.length)
        expect(plan.value).toBe(plan.sheets.reduce((sum, { costMinor }) => sum + (costMinor ?? 0), 0))
      }),
      { seed: SEED, numRuns: 60 }
    )
  })

  it('never costs more for one size when an offcut lies on the rack', () => {
    const cases = fc.tuple(
      fc.integer({ min: 1, max: 70 }),
      fc.integer({ min: 60, max: 400 }),
      fc.integer({ min: 60, max: 300 })
    )
    fc.assert(
      fc.property(cases, ([count, widthMm, heightMm]) => {
        const input = {
          needs: [collar('a', 64, 38, count)],
          sheets: [sheet('big', 420, 300, 700), sheet('small', 300, 150, 350)]
        }
        const withRack = { ...input, sheets: [...input.sheets, offcut('rest', widthMm, heightMm)] }
        return planned(withRack).value <= planned(input).value
      }),
      { seed: SEED, numRuns: 60 }
    )
  })
})

describe('how many of one ring a sheet holds', () => {
  it('is said with a bound that no layout goes over, for each sheet of its material', () => {
    const other: SheetStock = { ...sheet('cork', 300, 200, 500), material: 'pvc' }
    const input: RingsInput = {
      needs: [collar('a', 50, null, 3)],
      plates: [],
      sheets: [sheet('s', 300, 200, 500), other],
      setup: { webMm: 0, edgeMm: 0 },
      budget: { work: 2000, stop: () => false }
    }
    const plan = planRings(input)
    // Circles of 50 in 300 × 200: in squares 6 × 4 = 24. Oler 1961 for the field of centres, 5 × 3 diameters:
    // 2/√3 · 15 + 8 + 1 = 26.3, so never more than 26.
    expect(plan.ok && plan.value.perSheet).toEqual([{ needId: 'a', sheetId: 's', count: 24, upperBound: 26 }])
  })
})
