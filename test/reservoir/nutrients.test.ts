import { describe, expect, test } from 'vitest'
import {
  concentrateDose,
  conductivityPpm,
  fillDepth,
  firstFill,
  litresPerPlant,
  oxideToElement,
  saltForTarget,
  solutionPpm,
  tankDrawDown,
  usableSolution
} from '../../shared-model/reservoir'
import { litres, litresFromUsGallons, mm, mmFromInches } from '../../shared-model/units'
import { HERB, must, WATER } from '../reference/small-build'

describe('tanks', () => {
  test('J. Vegetable Science 11(2), 2005, abstract: 109 L at 7.6 cm drawn down to 1.3 cm leaves 17.1 %', () => {
    const tank = must(tankDrawDown(litres(109), mm(76), mm(13)))
    expect(tank.planAreaM2).toBeCloseTo(1.4342, 4)
    expect(tank.litresPerCm).toBeCloseTo(14.342, 3)
    expect(tank.leftLitres).toBeCloseTo(18.64, 2)
    expect(tank.usedLitres).toBeCloseTo(90.36, 2)
    expect(tank.leftShare).toBeCloseTo(0.171, 3)
  })

  test('Florida State Horticultural Society: 80 gal for 72 plants is 4.206 L each, and 4.01 in deep on 4 × 8 ft', () => {
    expect(must(litresPerPlant(litresFromUsGallons(80), 72))).toBeCloseTo(4.206, 3)
    const depth = must(fillDepth(mmFromInches(96), mmFromInches(48), litresFromUsGallons(80)))
    expect(depth / 25.4).toBeCloseTo(4.01, 2)
  })

  test('Acta Hort. 648: with 10 % left of 3.785 L, 3.4065 L are for the plants', () => {
    expect(must(usableSolution(litres(3.785), 0.1))).toEqual({
      usableLitres: expect.closeTo(3.4065, 4),
      leftLitres: expect.closeTo(0.3785, 4)
    })
  })

  test('no plants, or a million, is a problem with both bounds', () => {
    for (const plants of [0, 1e6]) {
      expect(litresPerPlant(litres(5), plants)).toMatchObject({
        ok: false,
        problem: { figures: { value: plants, least: 1, most: 100000 } }
      })
    }
  })
})

describe('nutrients', () => {
  test('Cornell e-GRO Edible Alert 3(5), 2018: 40 ppm Mg from a salt of 9.7 % Mg and 13 % S', () => {
    const salt = must(
      saltForTarget({ targetPpm: 40, elementShare: 0.097, otherShares: { S: 0.13 }, litres: litres(378.5) })
    )
    expect(Math.abs(salt.saltMgPerL - 412)).toBeLessThan(0.5)
    expect(Math.abs((salt.otherPpm.S ?? 0) - 53.56)).toBeLessThan(0.15)
    expect(Math.abs(salt.saltG - 155.9)).toBeLessThan(0.2)
  })

  test('Cornell e-GRO Edible Alert 3(5), 2018: 12 % P2O5 is 5.24 % P; P and K factors 0.4364 and 0.8301', () => {
    expect(must(oxideToElement('P2O5', 12)).percent).toBeCloseTo(5.24, 2)
    expect(must(oxideToElement('P2O5', 100)).percent).toBeCloseTo(43.64, 2)
    expect(must(oxideToElement('K2O', 100))).toEqual({ element: 'K', percent: expect.closeTo(83.01, 1) })
    expect(oxideToElement('Quark', 10)).toMatchObject({ ok: false, problem: { code: 'unknown-oxide' } })
  })

  test('Hoagland & Arnon solution 1: ppm from millimoles by the CIAAW 2021 weights', () => {
    const ppm = must(solutionPpm({ KH2PO4: 1, KNO3: 5, 'Ca(NO3)2': 5, MgSO4: 2 }))
    const printed = { N: 210, K: 235, Ca: 200, P: 31, S: 64, Mg: 48.6 }
    for (const [element, expected] of Object.entries(printed)) {
      expect(Math.abs((ppm[element] ?? 0) - expected), element).toBeLessThan(0.7)
    }
  })

  test('water of crystallisation brings no nutrient, and what cannot be read is named', () => {
    expect(must(solutionPpm({ 'MgSO4.7H2O': 2 }))).toEqual(must(solutionPpm({ MgSO4: 2 })))
    for (const formula of ['', 'Xx2', 'Ca(NO3', 'NO3)2', 'k2o']) {
      expect(solutionPpm({ [formula]: 1 }), formula).toMatchObject({ ok: false, problem: { code: 'unknown-formula' } })
    }
  })

  test('meter practice: EC 4.0 reads 2800 on the 700 scale and 2000 on the 500 scale; EC 40 is refused', () => {
    expect(must(conductivityPpm(4, 700))).toBe(2800)
    expect(must(conductivityPpm(4, 500))).toBe(2000)
    expect(conductivityPpm(40, 500)).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', figures: { value: 40, least: 0, most: 20 } }
    })
  })
})

describe('the first fill', () => {
  const feed = { kind: 'concentrate', name: 'Feed', doseMlPerL: 4, doseEcMsPerCm: 2.3, targetEcMsPerCm: 1.3 } as const

  test('concentrate adds on the source water’s own conductivity', () => {
    // (1.3 - 0.3) / (2.3 - 0.3) = half the dose of 4 mL/L on 10 L: 20 mL
    const { fill } = must(firstFill(litres(10), [HERB], { ...WATER, feed }))
    expect(fill.concentrateMl).toBeCloseTo(20, 9)
    expect(fill.expectedEcMsPerCm).toBeCloseTo(1.3, 12)
    expect(fill.ec).toEqual({ least: 1, most: 1.6 })
  })

  test('under half and over double the label’s dose is a problem', () => {
    const at = (targetEcMsPerCm: number): unknown =>
      firstFill(litres(10), [], { ...WATER, feed: { ...feed, targetEcMsPerCm } })
    expect(at(1.2)).toMatchObject({ ok: false, problem: { code: 'dose-not-linear', figures: { least: 0.5, most: 2 } } })
    expect(at(4.5)).toMatchObject({ ok: false, problem: { code: 'dose-not-linear' } })
    expect(concentrateDose({ ...feed, waterEcMsPerCm: 3, litres: litres(1) }).ok).toBe(false)
  })

  test('without the source water’s conductivity nothing is guessed: it is asked for', () => {
    const { fill, findings } = must(firstFill(litres(10), [], { ...WATER, sourceEcMsPerCm: null, feed }))
    expect(fill.concentrateMl).toBeNull()
    expect(findings.map((f) => f.code)).toEqual(['source-ec-missing'])
  })

  test('dry salts give grams and ppm by their labels, calcium dissolved last, and no conductivity', () => {
    const salts = [
      { name: 'Calcium nitrate', gPerL: 0.6, percent: { N: 15.5, Ca: 19 } },
      { name: 'Base', gPerL: 1, percent: { N: 5, P2O5: 12, K2O: 26 } }
    ]
    const { fill } = must(firstFill(litres(10), [], { ...WATER, feed: { kind: 'salts', salts } }))
    expect(fill.salts).toEqual([
      { name: 'Base', grams: 10 },
      { name: 'Calcium nitrate', grams: 6 }
    ])
    // N: 0.6 g/L × 15.5 % + 1 g/L × 5 % = 93 + 50 ppm; P: 1 g/L × 5.237 %; Ca: 0.6 × 19 % = 114
    expect(fill.ppm.N).toBeCloseTo(143, 9)
    expect(fill.ppm.P).toBeCloseTo(52.37, 2)
    expect(fill.ppm.Ca).toBeCloseTo(114, 9)
    expect(fill.expectedEcMsPerCm).toBeNull()
  })

  test('crops whose ranges have nothing in common are named with their figures', () => {
    const thirsty = { ...HERB, id: 'cabbage', name: 'Cabbage', ecMsPerCm: { least: 2.5, most: 3 } }
    const { fill, findings } = must(firstFill(litres(10), [HERB, thirsty], WATER))
    expect(fill.ec).toBeNull()
    expect(findings).toContainEqual(
      expect.objectContaining({ code: 'crops-disagree-on-ec', figures: { crops: 'Herb 1–1.6; Cabbage 2.5–3' } })
    )
  })
})
