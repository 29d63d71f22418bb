import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  CEMENT_JOINTS,
  cementPerJointMl,
  daysBetween,
  jointsPerQuart,
  sealantRun,
  sealantVolume
} from '../../shared-model/bill'
import { mm, mm3 } from '../../shared-model/units'

describe('days between two dates', () => {
  it('agrees with the calendar of the platform', () => {
    const day = fc.integer({ min: -100_000, max: 100_000 })
    const iso = (days: number) => new Date(days * 86_400_000).toISOString().slice(0, 10)
    fc.assert(
      fc.property(day, day, (a, b) => {
        fc.pre(iso(a).length === 10 && iso(b).length === 10)
        expect(daysBetween(iso(a), iso(b))).toBe(b - a)
      }),
      { seed: 20_250_611 }
    )
  })

  it('knows no date in what is none', () => {
    for (const text of ['', '2025-02-29', '2025-13-01', '2025-04-31', '1 June']) {
      expect(daysBetween(text, '2025-06-01')).toBeNull()
    }
  })
})

describe('sealant', () => {
  it('runs as far as a cartridge holds: 10 x 10 mm joint, 10 m from one litre (sealant guide, worked example)', () => {
    const run = sealantRun({ widthMm: 10, depthMm: 10 }, mm3(1_000_000))
    expect(run).toEqual({ ok: true, value: 10_000 })
  })

  it('takes back the volume that the run was worked out from', () => {
    const bead = { widthMm: 6, depthMm: 3 }
    const run = sealantRun(bead, mm3(310_000))
    expect(run.ok && sealantVolume(bead, run.value)).toEqual({ ok: true, value: expect.closeTo(310_000, 6) })
  })

  it('refuses a bead without a section, both bounds named', () => {
    const run = sealantRun({ widthMm: 0, depthMm: 3 }, mm3(310_000))
    const figures = { what: 'bead.widthMm', value: 0, least: 0.5, most: 50 }
    expect(run).toMatchObject({ ok: false, problem: { code: 'out-of-range', figures } })
  })
})

describe('solvent cement', () => {
  it('keeps the published joints per quart (pipe maker manual, laboratory estimates)', () => {
    expect(Object.fromEntries(CEMENT_JOINTS.map((size) => [size.nominal, size.jointsPerQuart]))).toEqual({
      '1/2': 300,
      '3/4': 200,
      '1': 125,
      '1-1/2': 90,
      '2': 60,
      '3': 40,
      '4': 30,
      '6': 10,
      '8': 5
    })
  })

  it('takes the row of the next size up, so that the tin never runs short', () => {
    const nominal = (outside: number) => {
      const size = jointsPerQuart(mm(outside))
      return size.ok ? size.value.nominal : size.problem.code
    }
    // 3 in pipe is 88.9 mm outside (ASTM D1785); a rectangle of 240 mm around has 76.4 mm.
    expect([nominal(88.9), nominal(76.4), nominal(89.5), nominal(230), nominal(0)]).toEqual([
      '3',
      '3',
      '4',
      'out-of-range',
      'out-of-range'
    ])
  })

  it('needs a fortieth of a quart for a 3 in joint', () => {
    // 1 US quart = 57.75 in3 = 946.352946 mL; / 40 = 23.65882365
    const size = jointsPerQuart(mm(88.9))
    expect(size.ok && cementPerJointMl(size.value)).toBeCloseTo(23.658_823_65, 8)
  })
})
