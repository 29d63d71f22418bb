import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { basinOf, levelAtLitres, litresAtLevel, solidBelow } from '../../shared-model/reservoir'
import { litres, mm } from '../../shared-model/units'
import { build, CHANNEL, CUP, must, SILL } from '../reference/small-build'

const channelOn = (profileId: string): typeof CHANNEL =>
  profileId === 'pipe'
    ? { ...CHANNEL, profileId, datumClosureId: 'pipe-cap', farClosureId: 'pipe-cap' }
    : { ...CHANNEL, profileId }

const basin = (profileId: string, fallAlongMmPerM: number): ReturnType<typeof basinOf> => {
  const channel = channelOn(profileId)
  const sill = { ...SILL, fallAlongMmPerM }
  const built = build(channel, sill)
  return basinOf(channel, built.layout, built.fits, sill)
}

describe('level and volume', () => {
  test('an empty rectangle holds width × level × length, less the cups by hand', () => {
    // bore 74 × 28.8 × 1196 mm = 2.548915 L. Each cup from 1 mm up, diameter 35 + 14 (z - 1) / 48:
    // outside 35 to 43.1083 over 27.8 mm: pi/12 × 27.8 × (1225 + 1508.79 + 1858.33) = 33 422 mm³
    // inside from 2 mm, 33 at the bottom to 47 over 47 mm: 40.9830 at 28.8: pi/12 × 26.8 × (1089 + 1352.44 + 1679.60) = 28 914
    // displaced 33 422 - 0.5 × 28 914 = 18 965 mm³; six cups 0.113788 L
    const level = mm(28.8)
    expect(must(litresAtLevel(basin('tube', 0), level))).toBeCloseTo(2.548915 - 0.113788, 5)
  })

  test('a tilted rectangle holds its mean depth: 5 mm per m on 1196 mm takes 2.99 mm of level at the middle', () => {
    const empty = { ...basin('tube', 5), stands: [] }
    // 74 × (28.8 - 5 × 1.196 / 2) × 1196
    expect(must(litresAtLevel(empty, mm(28.8)))).toBeCloseTo((74 * (28.8 - 2.99) * 1196) / 1e6, 9)
  })

  test('on a steep fall only the low end is wet: the wedge is half its depth times its reach', () => {
    // 100 mm per m: 10 mm of level reaches 100 mm: 74 × 10 × 100 / 2
    const empty = { ...basin('tube', 100), stands: [] }
    expect(must(litresAtLevel(empty, mm(10)))).toBeCloseTo((74 * 10 * 100) / 2 / 1e6, 9)
  })

  test('a half-full round bore is half its circle', () => {
    // bore 103.6: pi/4 × 103.6² / 2 × 1196 mm
    const empty = { ...basin('pipe', 0), stands: [] }
    expect(must(litresAtLevel(empty, mm(51.8)))).toBeCloseTo(((Math.PI / 8) * 103.6 ** 2 * 1196) / 1e6, 6)
  })

  const cases = fc.record({
    profileId: fc.constantFrom('tube', 'pipe'),
    fall: fc.constantFrom(0, 0, 2, -5, 30),
    share: fc.double({ min: 0.001, max: 0.999, noNaN: true })
  })

  test('volume strictly rises with level, and level → volume → level returns within 0.01 mm', () => {
    fc.assert(
      fc.property(cases, ({ profileId, fall, share }) => {
        const water = basin(profileId, fall)
        const level = mm(share * water.insideHeightMm)
        const amount = must(litresAtLevel(water, level))
        const more = must(litresAtLevel(water, mm(Math.min(water.insideHeightMm, level + 0.05))))
        expect(more).toBeGreaterThan(amount)
        expect(Math.abs(must(levelAtLitres(water, amount)) - level)).toBeLessThan(0.01)
      }),
      { seed: 3301, numRuns: 300 }
    )
  })

  test('displacement never exceeds the bodies’ own volume', () => {
    fc.assert(
      fc.property(cases, ({ profileId, fall, share }) => {
        const water = basin(profileId, fall)
        const level = mm(share * water.insideHeightMm)
        const full = must(litresAtLevel({ ...water, stands: [] }, level))
        const bodies = water.stands.reduce(
          (sum, stand) => sum + stand.count * stand.solids.reduce((all, solid) => all + solidBelow(solid, 1e9), 0),
          0
        )
        const displaced = full * 1e6 - must(litresAtLevel(water, level)) * 1e6
        expect(displaced).toBeGreaterThanOrEqual(-1e-3)
        expect(displaced).toBeLessThanOrEqual(bodies + 1e-3)
      }),
      { seed: 3302, numRuns: 200 }
    )
  })

  test('a level above the bore and more litres than it holds are problems with both bounds', () => {
    const water = basin('tube', 0)
    expect(litresAtLevel(water, mm(60))).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', figures: { least: 0, most: 48 } }
    })
    expect(levelAtLitres(water, litres(9))).toMatchObject({
      ok: false,
      problem: { code: 'volume-outside-bore', figures: { least: 0 } }
    })
    expect(litresAtLevel(water, mm(Number.NaN))).toMatchObject({ problem: { code: 'not-finite' } })
  })

  test('a sealed body displaces its whole frustum, an open one its wall only', () => {
    const solid = {
      fromMm: 0,
      toMm: CUP.heightMm,
      lowerOutsideMm: 40,
      upperOutsideMm: 40,
      lowerInsideMm: 38,
      upperInsideMm: 38,
      insideFromMm: 0,
      floodedShare: 0
    }
    // pi/4 × 40² × 10 and pi/4 × (40² - 38²) × 10
    expect(solidBelow(solid, 10)).toBeCloseTo(Math.PI * 4000, 6)
    expect(solidBelow({ ...solid, floodedShare: 1 }, 10)).toBeCloseTo((Math.PI / 4) * 156 * 10, 6)
  })
})
