import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { waterMass } from '../../shared-model/materials'
import { roundSection } from '../../shared-model/profile'
import {
  fullPipeSag,
  liftingLimit,
  OVER_SILL,
  overhangSag,
  simpleSpanSag,
  tipAngleDeg
} from '../../shared-model/structure'
import {
  celsius,
  gramsFromPounds,
  litresFromUsGallons,
  megapascals,
  megapascalsFromPsi,
  mm,
  mm4,
  mmFromFeet,
  mmFromInches,
  poundsFromGrams
} from '../../shared-model/units'
import { must } from '../reference/small-build'

describe('sag', () => {
  test('open beam benchmark, 2026 (AWC Design Aid No. 6, Fig. 1): 2.4 kN/m over 4.8 m sags 21.18 mm', () => {
    const beam = { loadNPerMm: 2.4, modulusMPa: megapascals(11_000), secondMomentMm4: mm4(7119e4) }
    expect(Math.abs(must(simpleSpanSag(beam, mm(4800))) - 21.18)).toBeLessThan(0.03)
  })

  test.each([
    [1.9, 1.592, 0.509, 6, 0.31],
    [3.5, 3.042, 1.409, 7, 0.19],
    [4.5, 3.998, 2.006, 7.5, 0.17]
  ])(
    'published PVC support spacing, Schedule 40 at 60 F: %s in pipe full of water',
    (outside, bore, lbPerFt, spanFt, sagIn) => {
      // 62.27 lb/ft³ = 0.99747 kg/L
      const sag = must(
        fullPipeSag(
          roundSection(mmFromInches(outside), mmFromInches(bore)),
          {
            gramsPerMm: gramsFromPounds(lbPerFt) / 304.8,
            densityKgPerL: gramsFromPounds(62.27) / 1000 / 28.316846592,
            modulusMPa: megapascalsFromPsi(400_000)
          },
          mmFromFeet(spanFt)
        )
      )
      expect(Math.abs(sag / 25.4 - sagIn)).toBeLessThan(sagIn / 10)
    }
  )

  test('AWC Design Aid No. 6, load on the overhang alone: w a³ (4 L + 3 a) ÷ 24 E I', () => {
    // w 0.03 N/mm, a 200, L 800, E 2758, I 100 000: 0.03 × 8e6 × 3800 / (24 × 2.758e8) = 0.13778 mm
    const beam = { loadNPerMm: 0.03, modulusMPa: megapascals(2758), secondMomentMm4: mm4(100_000) }
    expect(must(overhangSag(beam, mm(200), mm(800)))).toBeCloseTo(0.13778, 5)
    // on one support a cantilever: 0.03 × 1.6e9 / (8 × 2.758e8)
    expect(must(overhangSag(beam, mm(200), null))).toBeCloseTo(0.021755, 6)
  })

  test('sag goes with the fourth power of the span', () => {
    const beam = { loadNPerMm: 0.05, modulusMPa: megapascals(2758), secondMomentMm4: mm4(90_000) }
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 5000, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (span, times) => {
          const once = must(simpleSpanSag(beam, mm(span)))
          expect(must(simpleSpanSag(beam, mm(span * times))) / once).toBeCloseTo(times ** 4, 6)
        }
      ),
      { seed: 3401, numRuns: 200 }
    )
  })

  test('a span below nothing and a modulus of nothing are problems with both bounds', () => {
    const beam = { loadNPerMm: 0.05, modulusMPa: megapascals(0), secondMomentMm4: mm4(90_000) }
    expect(simpleSpanSag(beam, mm(100))).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', figures: { value: 0, least: 1 } }
    })
    expect(simpleSpanSag({ ...beam, modulusMPa: megapascals(1) }, mm(-1)).ok).toBe(false)
  })
})

describe('tipping', () => {
  test('worked stability example: half base 1500, mass centre 1000 high tips at 56.3°', () => {
    expect(must(tipAngleDeg(mm(1500), mm(1000)))).toBeCloseTo(56.3, 1)
    expect(tipAngleDeg(mm(10), mm(0)).ok).toBe(false)
  })
})

describe('lifting (Applications Manual, DHHS (NIOSH) 94-110)', () => {
  const rwl = (h: number, v: number, d: number, grip: number): number =>
    poundsFromGrams(
      must(
        liftingLimit({
          horizontalMm: h * 25.4,
          verticalMm: v * 25.4,
          travelMm: d * 25.4,
          asymmetryDeg: 0,
          frequencyFactor: 1,
          gripFactor: grip
        })
      )
    )

  test.each([
    [10, 30, 10, 1, 51.0],
    [16, 36, 10, 0.95, 28.9],
    [20, 36, 10, 0.9, 21.9],
    [20, 36, 36, 0.9, 19.1],
    [24, 42, 10, 0.9, 17.4]
  ])('reach %s in, hands at %s in, travel %s in, grip %s: %s lb', (h, v, d, grip, lb) => {
    expect(Math.abs(rwl(h, v, d, grip) - lb)).toBeLessThan(0.06)
  })

  test('multipliers are held to their ranges', () => {
    expect(rwl(5, 30, 5, 1)).toBeCloseTo(51, 9)
    expect(rwl(26, 30, 10, 1)).toBe(0)
    expect(rwl(10, 71, 10, 1)).toBe(0)
    expect(rwl(10, 30, 71, 1)).toBe(0)
    expect(poundsFromGrams(must(liftingLimit(OVER_SILL)))).toBeCloseTo(21.9, 1)
  })
})

test('CRC density of water: a US gallon at 20 °C weighs 8.3304 lb', () => {
  expect(poundsFromGrams(must(waterMass(litresFromUsGallons(1), celsius(20))))).toBeCloseTo(8.3304, 3)
})
