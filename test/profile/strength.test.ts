import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  checkProfile,
  grossStrength,
  netStrength,
  type Profile,
  pipeStrip,
  roundSection,
  type Section,
  saddleGap,
  sawDepthOnPipe
} from '../../shared-model/profile'
import { mm, mmFromInches } from '../../shared-model/units'

const IN = 25.4
const box = (widthMm: number, heightMm: number, wallMm: number, cornerRadiusMm = 0): Section => ({
  shape: 'rectangle',
  widthMm,
  heightMm,
  averageWallMm: wallMm,
  leastWallMm: wallMm,
  cornerRadiusMm
})

describe('a round pipe in bending (R. L. Mott, Machine Elements in Mechanical Design, 4th ed., Table A16-6)', () => {
  for (const [outside, bore, area, second, modulus] of [
    [1.315, 1.049, 0.494, 0.08734, 0.1328],
    [1.9, 1.61, 0.799, 0.3099, 0.3262],
    [3.5, 3.068, 2.228, 3.017, 1.724],
    [4.5, 4.026, 3.174, 7.233, 3.215]
  ] as const) {
    it(`${outside} in outside, ${bore} in bore`, () => {
      const strength = grossStrength(roundSection(mmFromInches(outside), mmFromInches(bore)))
      expect(Math.abs(strength.areaMm2 / IN ** 2 / area - 1)).toBeLessThan(0.0015)
      expect(Math.abs(strength.secondMomentMm4 / IN ** 4 / second - 1)).toBeLessThan(0.0015)
      expect(Math.abs(strength.sectionModulusMm3 / IN ** 3 / modulus - 1)).toBeLessThan(0.0015)
    })
  }
})

describe('a rectangular tube in bending (tube mill section properties, square corners)', () => {
  for (const [wall, area, upright, flat] of [
    [0.065, 0.3731, 0.1926, 0.064],
    [0.083, 0.4704, 0.2379, 0.078],
    [0.12, 0.6624, 0.3213, 0.1023]
  ] as const) {
    it(`1 x 2 x ${wall} in, upright and flat`, () => {
      const up = grossStrength(box(IN, 2 * IN, wall * IN))
      const lying = grossStrength(box(2 * IN, IN, wall * IN))
      expect(Math.abs(up.areaMm2 / IN ** 2 / area - 1)).toBeLessThan(0.0015)
      expect(Math.abs(up.secondMomentMm4 / IN ** 4 / upright - 1)).toBeLessThan(0.0015)
      expect(Math.abs(lying.secondMomentMm4 / IN ** 4 / flat - 1)).toBeLessThan(0.003)
    })
  }
  it('8 outside, 5 inside: area 39, second moment 289.25 (published worked example)', () => {
    const strength = grossStrength(box(8, 8, 1.5))
    expect(strength.areaMm2).toBeCloseTo(39, 9)
    expect(strength.secondMomentMm4).toBeCloseTo(289.25, 9)
  })
  it('becomes a round pipe when its corners are as round as they go', () => {
    const round = grossStrength(roundSection(mm(50), mm(44)))
    const square = grossStrength(box(50, 50, 3, 25))
    expect(square.areaMm2).toBeCloseTo(round.areaMm2, 9)
    expect(square.secondMomentMm4).toBeCloseTo(round.secondMomentMm4, 6)
    // pi (50^4 - 44^4) / 64 = 122 812.4... worked: 6 250 000 - 3 748 096 = 2 501 904; x pi / 64 = 122 811.9
    expect(round.secondMomentMm4).toBeCloseTo((Math.PI * 2_501_904) / 64, 6)
  })
})

describe('the net section at a hole', () => {
  it('is the box without the strip of its upper face, worked by parallel axes', () => {
    // 60 x 40 x 2, hole 50: area 384 - 100 = 284; box I = (60 40^3 - 56 36^3)/12 = 102 272;
    // strip at 19 above the middle: 50 2^3/12 + 100 19^2 = 36 133.333; shift = 100 19/284 = 6.690141
    // I = 102 272 - 36 133.333 - 284 6.690141^2 = 53 427.40
    const net = netStrength(box(60, 40, 2), mm(50))
    expect(net.ok && net.value.areaMm2).toBeCloseTo(284, 9)
    expect(net.ok && net.value.secondMomentMm4).toBeCloseTo(53_427.4, 1)
    expect(net.ok && net.value.centroidMm).toBeCloseTo(20 - 6.690141, 5)
  })
  it('of a round pipe agrees with the strip summed in thin slices', () => {
    const [outer, inner, half] = [30, 26, 20]
    const slices = 200_000
    let [area, first, second] = [Math.PI * (outer ** 2 - inner ** 2), 0, (Math.PI * (outer ** 4 - inner ** 4)) / 4]
    for (let i = 0; i < slices; i += 1) {
      const x = -half + ((i + 0.5) * 2 * half) / slices
      const [a, b] = [Math.sqrt(outer ** 2 - x ** 2), Math.sqrt(inner ** 2 - x ** 2)]
      const dx = (2 * half) / slices
      area -= (a - b) * dx
      first -= ((a ** 2 - b ** 2) / 2) * dx
      second -= ((a ** 3 - b ** 3) / 3) * dx
    }
    const net = netStrength(roundSection(mm(60), mm(52)), mm(40))
    expect(net.ok && net.value.areaMm2).toBeCloseTo(area, 3)
    expect(net.ok && net.value.secondMomentMm4).toBeCloseTo(second - first ** 2 / area, 1)
  })
  it('never gains by a wider hole', () => {
    const hole = fc.double({ min: 0, max: 50, noNaN: true })
    fc.assert(
      fc.property(fc.boolean(), hole, hole, (round, a, b) => {
        const section = round ? roundSection(mm(60), mm(54)) : box(60, 40, 2, 4)
        const [less, more] = [netStrength(section, mm(Math.min(a, b))), netStrength(section, mm(Math.max(a, b)))]
        if (!less.ok || !more.ok) throw new Error('a hole inside the face has a net section')
        expect(more.value.secondMomentMm4).toBeLessThanOrEqual(less.value.secondMomentMm4 + 1e-6)
        expect(more.value.areaMm2).toBeLessThanOrEqual(less.value.areaMm2 + 1e-9)
      }),
      { seed: 16, numRuns: 500 }
    )
  })
  it('is refused with both bounds where the hole is wider than the bore', () => {
    expect(netStrength(box(60, 40, 2), mm(57))).toMatchObject({
      problem: { code: 'hole-outside-face', figures: { valueMm: 57, leastMm: 0, mostMm: 56 } }
    })
  })
  it('of trunking is the open channel, since its lid does not stiffen it', () => {
    const trunking: Section = { ...box(100, 50, 2), shape: 'trunking' }
    const open = netStrength(box(100, 50, 2), mm(96))
    expect(open.ok && grossStrength(trunking)).toEqual(open.ok && open.value)
    expect(grossStrength(trunking).secondMomentMm4).toBeLessThan(grossStrength(box(100, 50, 2)).secondMomentMm4)
  })
})

describe('a hole on a round pipe is a saddle', () => {
  it('drops by right-angled triangles: R 50, d 60 leaves a gap of 50 - 40 = 10', () => {
    expect(saddleGap(mm(50), mm(60))).toEqual({ ok: true, value: 10 })
    expect(saddleGap(mm(50), mm(100))).toEqual({ ok: true, value: 50 })
  })
  it('needs a saw depth of R - sqrt((R - wall)2 - (d/2)2): R 55, wall 5, d 60 is 55 - 40 = 15', () => {
    expect(sawDepthOnPipe(mm(55), mm(5), mm(60))).toEqual({ ok: true, value: 15 })
    expect(sawDepthOnPipe(mm(55), mm(5), mm(100))).toMatchObject({
      problem: { code: 'hole-outside-face', figures: { valueMm: 100, leastMm: 0, mostMm: 100 } }
    })
    expect(saddleGap(mm(50), mm(101))).toMatchObject({ ok: false })
    expect(pipeStrip(mm(50), mm(60))).toBe(20)
  })
})

describe('a profile that cannot be is named with both bounds', () => {
  const sound: Profile = {
    ...box(80, 60, 2, 3),
    id: 'p1',
    name: 'a profile',
    family: 'test',
    outsideToleranceMm: 0.5,
    material: 'pvc',
    opaque: true,
    foodContactMark: null,
    evidence: {}
  }
  it('passes a sound one', () => expect(checkProfile(sound)).toEqual([]))
  it('a negative wall, a wall thicker than half the side, a least wall over the average', () => {
    for (const [change, most] of [
      [{ averageWallMm: -1 }, 30],
      [{ averageWallMm: 30 }, 30],
      [{ leastWallMm: 2.5 }, 2]
    ] as const) {
      const [problem] = checkProfile({ ...sound, ...change })
      expect(problem).toMatchObject({ code: 'wall-outside', figures: { leastMm: 0.1, mostMm: most } })
      expect(problem?.where?.partId).toBe('p1')
    }
  })
  it('sizes, corners, tolerance, and a pipe that is not round', () => {
    expect(checkProfile({ ...sound, widthMm: 0 })).toMatchObject([{ code: 'profile-size-outside' }])
    expect(checkProfile({ ...sound, heightMm: Number.NaN })).toMatchObject([{ code: 'profile-size-outside' }])
    expect(checkProfile({ ...sound, cornerRadiusMm: 31 })).toMatchObject([{ code: 'corner-radius-outside' }])
    expect(checkProfile({ ...sound, outsideToleranceMm: -1 })).toMatchObject([{ code: 'outside-tolerance-outside' }])
    expect(checkProfile({ ...sound, shape: 'round' })).toMatchObject([{ code: 'profile-not-round' }])
  })
})
