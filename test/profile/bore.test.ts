import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  averageBore,
  boreArea,
  boreFromWall,
  boreOf,
  checkLevel,
  checkSection,
  flatWidth,
  insideHeight,
  insideWidth,
  levelFromArea,
  massPerMetre,
  outsideArea,
  type Profile,
  roundSection,
  type Section,
  sectionOf,
  surfaceWidth,
  wetArea
} from '../../shared-model/profile'
import { GRAMS_PER_POUND, MM_PER_FOOT, mm, mm2, mmFromInches } from '../../shared-model/units'

const bore = (diameterMm: number): Section => roundSection(mm(diameterMm), mm(diameterMm))
const box = (widthMm: number, heightMm: number, wallMm: number, cornerRadiusMm = 0): Section => ({
  shape: 'rectangle',
  widthMm,
  heightMm,
  averageWallMm: wallMm,
  leastWallMm: wallMm,
  cornerRadiusMm
})

describe('area of a partly filled round bore', () => {
  it('is the segment table of Encyclopaedia Britannica, 11th edition, Hydraulics, section 110, within 1 %: it was worked by hand', () => {
    for (const [depth, printed] of [
      [0.05, 0.0211],
      [0.25, 0.228],
      [0.4, 0.45]
    ] as const) {
      expect(Math.abs(wetArea(bore(2), mm(depth)) - printed)).toBeLessThanOrEqual(printed * 0.01)
    }
  })
  it('is the channel geometry table after Chow (1959) and FHWA HDS-4: 0.014681, 0.040875, 0.442616 of D2', () => {
    for (const [depth, printed] of [
      [0.05, 0.014681],
      [0.1, 0.040875],
      [0.55, 0.442616]
    ] as const) {
      expect(Math.abs(wetArea(bore(1), mm(depth)) - printed)).toBeLessThan(2e-6)
    }
  })
  it('is 1251.2018147383194 mm2 at 22 mm in a 96 mm bore (open-source fluids library, documentation)', () => {
    expect(wetArea(bore(96), mm(22))).toBeCloseTo(1251.2018147383194, 9)
  })
})

describe('bores', () => {
  it('rectangular: 2 x 3 in is 6.00 in2 (Copper in Architecture Handbook, Table 10.7A)', () => {
    expect(boreArea(box(76.2, 50.8, 0)) / 25.4 ** 2).toBeCloseTo(6, 9)
  })
  it('with corner radii: less four corners of (1 - pi/4) r2', () => {
    // inside 96 x 46, radius 6 - 2 = 4: 4416 - (4 - pi) 16 = 4402.2655
    expect(boreArea(box(100, 50, 2, 6))).toBeCloseTo(4402.2655, 4)
    expect(boreOf(box(100, 50, 2, 6))).toEqual({ widthMm: 96, heightMm: 46, cornerRadiusMm: 4 })
  })
  it('average bore of Schedule 40 is printed 2.058 in (2 in) and 4.012 in (4 in) by the wall factor 1.03', () => {
    for (const [outside, wall, printed] of [
      [2.375, 0.154, 2.058],
      [4.5, 0.237, 4.012]
    ] as const) {
      const result = averageBore(mmFromInches(outside), mmFromInches(wall), 1.03)
      expect(result.ok && Math.abs(result.value / 25.4 - printed)).toBeLessThanOrEqual(0.0005)
    }
  })
  it('is refused with both bounds where the wall leaves none', () => {
    expect(boreFromWall(mm(60), mm(30))).toMatchObject({
      problem: { code: 'wall-outside', figures: { valueMm: 30, leastMm: 0, mostMm: 30 } }
    })
    expect(boreFromWall(mm(60), mm(-1))).toMatchObject({ ok: false })
    expect(averageBore(mm(60), mm(Number.NaN), 1)).toMatchObject({ ok: false })
  })
  it('weighs 0.682 lb a foot as 2 in Schedule 40, 1.409 as 3 in, within 3 % (PVC pipe data page)', () => {
    for (const [outside, average, printed] of [
      [2.375, 2.049, 0.682],
      [3.5, 3.042, 1.409]
    ] as const) {
      const grams = massPerMetre(roundSection(mmFromInches(outside), mmFromInches(average)), 1.4)
      const lbPerFt = (grams * MM_PER_FOOT) / 1000 / GRAMS_PER_POUND
      expect(Math.abs(lbPerFt - printed)).toBeLessThan(printed * 0.03)
    }
  })
  it('has a flat face between its corner radii, and none on a round pipe', () => {
    expect(flatWidth(box(100, 50, 2, 6))).toBe(88)
    expect(flatWidth(bore(100))).toBe(0)
  })
  it('changes places when turned', () => {
    const profile: Profile = {
      ...box(100, 50, 2, 6),
      id: 'p',
      name: 'p',
      family: 'p',
      outsideToleranceMm: 0,
      material: 'pvc',
      opaque: true,
      foodContactMark: null,
      evidence: {}
    }
    expect(insideHeight(sectionOf(profile, false))).toBe(46)
    expect(insideHeight(sectionOf(profile, true))).toBe(96)
    expect(insideWidth(sectionOf(profile, true))).toBe(46)
    expect(outsideArea(sectionOf(profile, true))).toBe(outsideArea(sectionOf(profile, false)))
  })
})

const sections: fc.Arbitrary<Section> = fc
  .record({
    round: fc.boolean(),
    width: fc.double({ min: 30, max: 200, noNaN: true }),
    height: fc.double({ min: 30, max: 200, noNaN: true }),
    wall: fc.double({ min: 0.3, max: 6, noNaN: true }),
    radius: fc.double({ min: 0, max: 15, noNaN: true })
  })
  .map(({ round, width, height, wall, radius }) =>
    round ? roundSection(mm(width), mm(width - 2 * wall)) : box(width, height, wall, radius)
  )
const share = fc.double({ min: 0, max: 1, noNaN: true })
const RUNS = { seed: 110, numRuns: 1000 }

describe('level and area', () => {
  it('area strictly grows with the level, from nothing to the whole bore', () => {
    fc.assert(
      fc.property(sections, share, share, (section, a, b) => {
        const height = insideHeight(section)
        const [low, high] = [Math.min(a, b) * height, Math.max(a, b) * height]
        if (high - low > 1e-6) expect(wetArea(section, mm(high))).toBeGreaterThan(wetArea(section, mm(low)))
        expect(wetArea(section, mm(0))).toBe(0)
        expect(wetArea(section, height)).toBeCloseTo(boreArea(section), 8)
      }),
      RUNS
    )
  })
  it('level to area to level comes back within 1e-6 mm', () => {
    fc.assert(
      fc.property(sections, share, (section, at) => {
        const level = at * insideHeight(section)
        const back = levelFromArea(section, wetArea(section, mm(level)))
        expect(back.ok && Math.abs(back.value - level)).toBeLessThan(1e-6)
      }),
      RUNS
    )
  })
  it('the surface is as wide as the area grows', () => {
    fc.assert(
      fc.property(sections, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (section, at) => {
        const level = at * insideHeight(section)
        const step = 1e-3
        const slope = (wetArea(section, mm(level + step)) - wetArea(section, mm(level - step))) / (2 * step)
        expect(Math.abs(slope - surfaceWidth(section, mm(level)))).toBeLessThan(0.05)
      }),
      RUNS
    )
  })
  it('a level above the bore, below its floor or no number is a problem with both bounds', () => {
    const section = box(100, 50, 2)
    expect(checkLevel(section, mm(23))).toBeNull()
    expect(checkLevel(section, mm(46.5))).toMatchObject({
      code: 'level-outside-bore',
      figures: { valueMm: 46.5, leastMm: 0, mostMm: 46 }
    })
    expect(checkLevel(section, mm(Number.NaN))).not.toBeNull()
    expect(levelFromArea(section, mm2(1e6))).toMatchObject({
      problem: { code: 'wet-area-outside-bore', figures: { leastMm2: 0, mostMm2: 4416 } }
    })
  })
})

describe('a section that cannot be', () => {
  const tube = {
    shape: 'rectangle',
    widthMm: 76,
    heightMm: 50,
    averageWallMm: 1,
    leastWallMm: 1,
    cornerRadiusMm: 0
  } as const

  it.each([
    ['a negative wall', { averageWallMm: -1 }, 'wall-outside', -1, 0, 25],
    ['a wall of half the shorter side', { averageWallMm: 25 }, 'wall-outside', 25, 0, 25],
    ['a side of nothing', { heightMm: 0 }, 'profile-size-outside', 0, 0, 100_000],
    ['a corner rounder than half the shorter side', { cornerRadiusMm: 26 }, 'corner-radius-outside', 26, 0, 25]
  ])('%s is named with both bounds', (_, change, code, valueMm, leastMm, mostMm) => {
    expect(checkSection(tube)).toBeNull()
    expect(checkSection({ ...tube, ...change })).toMatchObject({ code, figures: { valueMm, leastMm, mostMm } })
  })
})
