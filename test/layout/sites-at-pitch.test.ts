import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gridPitch, leastEnd, leastPitch, sitesAtPitch, sitesByCount } from '../../shared-model/layout'
import { mm } from '../../shared-model/units'
import { must } from '../reference/small-build'

describe('sites along a channel', () => {
  test('Hobby Hydroponics (CRC), chapter 6: a 12 ft gully at 8 in centres has 18 sites', () => {
    // 12 ft = 3657.6 mm, 8 in = 203.2 mm, 4 in ends = 101.6 mm: (3657.6 - 203.2) / 203.2 + 1 = 18
    const sites = must(sitesAtPitch({ lengthMm: 3657.6, pitchMm: 203.2, leastEndMm: 101.6, spread: 'even' }))
    expect(sites.sites).toBe(18)
    expect(sites.endMm).toBeCloseTo(101.6, 6)
  })

  test('sill layouts solved by enumeration: 1470 mm at 150 with 60 mm ends has 10 sites, 120 mm has one', () => {
    const count = (lengthMm: number): number =>
      must(sitesAtPitch({ lengthMm, pitchMm: 150, leastEndMm: 60, spread: 'even' })).sites
    expect([119.9, 120, 270, 1469, 1470].map(count)).toEqual([0, 1, 2, 9, 10])
  })

  test('spread evenly both ends are the same; from the datum end the first site stands at the least end', () => {
    // 1000 at 300 with 60 mm ends: floor(880 / 300) + 1 = 3 sites over 600 mm; ends (1000 - 600) / 2 = 200
    const even = must(sitesAtPitch({ lengthMm: 1000, pitchMm: 300, leastEndMm: 60, spread: 'even' }))
    expect(even.positionsMm).toEqual([200, 500, 800])
    const datum = must(sitesAtPitch({ lengthMm: 1000, pitchMm: 300, leastEndMm: 60, spread: 'from-datum' }))
    expect(datum.positionsMm).toEqual([60, 360, 660])
    expect(datum.farEndMm).toBe(340)
  })

  test('every site keeps the least end, sites are a pitch apart, and one more would not fit', () => {
    const nm = fc.integer({ min: 1_000_000, max: 3_000_000_000 })
    fc.assert(
      fc.property(
        nm,
        fc.integer({ min: 20_000_000, max: 400_000_000 }),
        fc.integer({ min: 0, max: 300_000_000 }),
        (l, p, e) => {
          const [lengthMm, pitchMm, leastEndMm] = [l / 1e6, p / 1e6, e / 1e6]
          const found = must(sitesAtPitch({ lengthMm, pitchMm, leastEndMm, spread: 'even' }))
          expect(found.sites).toBe(l < 2 * e ? 0 : Math.floor((l - 2 * e) / p) + 1)
          if (found.sites === 0) return
          expect(found.endMm).toBeGreaterThanOrEqual(leastEndMm - 1e-6)
          expect(found.endMm + (found.sites - 1) * pitchMm + found.farEndMm).toBeCloseTo(lengthMm, 5)
        }
      ),
      { seed: 3201, numRuns: 300 }
    )
  })

  test('a count is spread by equal shares, unless that comes nearer to an end than allowed', () => {
    expect(must(sitesByCount({ lengthMm: 1000, count: 4, leastEndMm: 60 })).positionsMm).toEqual([125, 375, 625, 875])
    expect(must(sitesByCount({ lengthMm: 1000, count: 5, leastEndMm: 150 })).positionsMm).toEqual([
      150, 325, 500, 675, 850
    ])
  })

  test('a pitch of nothing and a length below nothing are problems that name both bounds', () => {
    const bad = sitesAtPitch({ lengthMm: -5, pitchMm: 100, leastEndMm: 10, spread: 'even' })
    expect(bad).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', figures: { value: -5, least: 0.001, most: 20000 } }
    })
    expect(sitesAtPitch({ lengthMm: 500, pitchMm: 0, leastEndMm: 10, spread: 'even' }).ok).toBe(false)
    expect(sitesAtPitch({ lengthMm: Number.NaN, pitchMm: 1, leastEndMm: 10, spread: 'even' })).toMatchObject({
      problem: { code: 'not-finite' }
    })
  })
})

describe('pitches', () => {
  test('FAO Technical Paper 589: 20 lettuces to the square metre stand 223.6 mm apart on a square grid', () => {
    expect(must(gridPitch(20))).toBeCloseTo(223.6, 1)
    expect(gridPitch(0)).toMatchObject({ ok: false, problem: { code: 'out-of-range' } })
  })

  test('the least end is closure, web and half the hole; the least pitch hole and web', () => {
    expect(leastEnd(mm(5), mm(10), mm(51))).toBe(40.5)
    expect(leastPitch(mm(51), mm(10))).toBe(61)
  })
})
