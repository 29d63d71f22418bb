import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  density,
  jointHolds,
  MATERIAL_IDS,
  MATERIALS,
  material,
  modulusLongMPa,
  thermalGrowth,
  waterDensity,
  waterMass
} from '../../shared-model/materials'
import { source } from '../../shared-model/sources'
import { celsius, fahrenheitFromCelsius, litres, mm, psiFromMegapascals } from '../../shared-model/units'

const kgPerL = (degrees: number): number => {
  const result = waterDensity(celsius(degrees))
  return result.ok ? result.value : Number.NaN
}

describe('density of water (CIPM formula, Metrologia 38:301, 2001; CRC Handbook)', () => {
  // CRC Handbook, 53rd edition, page F-4, and later editions from 20 C on; kg/L.
  const table = [
    [5, 0.999965],
    [10, 0.9997],
    [15, 0.999099],
    [20, 0.9982071],
    [25, 0.997],
    [30, 0.9956502],
    [35, 0.994]
  ] as const
  for (const [degrees, printed] of table) {
    it(`is ${printed} at ${degrees} C`, () => expect(Math.abs(kgPerL(degrees) - printed)).toBeLessThan(0.00005))
  }
  it('is greatest near 4 C, 999.97495 kg/m3 at 3.983035 C by the formula', () => {
    expect(kgPerL(3.983035)).toBeCloseTo(0.99997495, 10)
    expect(kgPerL(3)).toBeLessThan(kgPerL(3.983035))
  })
  it('names both bounds outside 0 to 40 C, and refuses what is no number', () => {
    expect(waterDensity(celsius(41))).toMatchObject({
      problem: { code: 'out-of-range', figures: { value: 41, least: 0, most: 40 } }
    })
    expect(waterDensity(celsius(Number.NaN))).toMatchObject({ problem: { code: 'not-finite' } })
    expect(waterMass(litres(1), celsius(-1))).toMatchObject({ ok: false })
  })
})

describe('materials', () => {
  it('has the printed figures of PVC: 1.40 g/cm3, 400 000 psi, 140 F, 1200 over 3200 MPa at 50 years', () => {
    expect(density('pvc')).toBe(1.4)
    expect(psiFromMegapascals(material('pvc').modulusShortMPa) / 1000).toBeCloseTo(400, 0)
    expect(fahrenheitFromCelsius(material('pvc').mostServiceC)).toBe(140)
    expect(material('pvc').creepFactor).toBe(1200 / 3200)
    expect(modulusLongMPa('pvc')).toBeCloseTo(2758 * 0.375, 6)
  })
  it('has HDPE creep from PE3XXX at 73 F: 28 000 of 78 000 psi at 50 years (PPI handbook, Table B.1.1)', () => {
    expect(psiFromMegapascals(material('hdpe').modulusShortMPa) / 1000).toBeCloseTo(78, 0)
    expect(material('hdpe').creepFactor).toBeCloseTo(28 / 78, 2)
  })
  it('takes the larger expansion where two are published: 70e-6 of 52e-6 and 70e-6 for PVC', () => {
    expect(material('pvc').expansionPerC).toBe(70e-6)
    expect(material('aluminium').expansionPerC).toBe(23.9e-6)
  })
  it('grows a 3 m length of trunking by 5.25 mm over 25 C (trunking technical page)', () => {
    expect(thermalGrowth(mm(3000), 25, 70e-6)).toBeCloseTo(5.25, 2)
  })
  it('gives every figure of every material a grade and a source of the register', () => {
    for (const id of MATERIAL_IDS) {
      const { evidence, ...rest } = MATERIALS[id]
      expect(rest.id).toBe(id)
      for (const field of ['densityGPerCm3', 'modulusShortMPa', 'creepFactor', 'expansionPerC', 'mostServiceC']) {
        expect(source(evidence[field]?.source ?? ''), `${id}.${field}`).toBeDefined()
      }
      expect(rest.creepFactor).toBeGreaterThan(0)
      expect(rest.creepFactor).toBeLessThanOrEqual(1)
    }
  })
})

describe('joints (common practice, no source, but for solvent cement: ASTM D2855)', () => {
  it('solvent cement joins PVC to PVC and ABS to ABS only', () => {
    expect(jointHolds('solvent-cement', 'pvc', 'pvc')).toEqual({ holds: true, reason: 'joint-holds' })
    expect(jointHolds('solvent-cement', 'abs', 'abs').holds).toBe(true)
    expect(jointHolds('solvent-cement', 'pvc', 'abs').reason).toBe('joint-cement-needs-same-plastic')
    expect(jointHolds('solvent-cement', 'hdpe', 'hdpe').reason).toBe('joint-cement-only-pvc-abs')
    expect(jointHolds('solvent-cement', 'aluminium', 'pvc').holds).toBe(false)
  })
  it('no silicone holds on polyolefins, and on metal only that of neutral cure', () => {
    expect(jointHolds('silicone-neutral', 'hdpe', 'pvc').reason).toBe('joint-no-silicone-on-polyolefin')
    expect(jointHolds('silicone-acetoxy', 'pvc', 'pp').holds).toBe(false)
    expect(jointHolds('silicone-neutral', 'pvc', 'aluminium').holds).toBe(true)
    expect(jointHolds('silicone-acetoxy', 'pvc', 'aluminium').reason).toBe('joint-acetoxy-on-metal')
  })
  it('a gasket grips any firm wall, tape and foam hold no water, and what is not known does not hold', () => {
    expect(jointHolds('gasket', 'hdpe', 'rubber').holds).toBe(true)
    expect(jointHolds('tape', 'pvc', 'pvc').holds).toBe(false)
    expect(jointHolds('push-fit', 'eva-foam', 'pvc').holds).toBe(false)
    expect(jointHolds('silicone-neutral', 'unknown', 'pvc').reason).toBe('joint-material-unknown')
  })
  it('is the same whichever side is named first', () => {
    const methods = ['solvent-cement', 'silicone-neutral', 'silicone-acetoxy', 'gasket', 'push-fit', 'tape'] as const
    const ids = fc.constantFrom(...MATERIAL_IDS)
    fc.assert(
      fc.property(fc.constantFrom(...methods), ids, ids, (method, a, b) => {
        expect(jointHolds(method, a, b)).toEqual(jointHolds(method, b, a))
      }),
      { seed: 2855, numRuns: 500 }
    )
  })
})
