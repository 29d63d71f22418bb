import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { jointHolds } from '../../shared-model/materials'
import {
  bodyDiameter,
  CATALOGUE,
  type Cup,
  cataloguePart,
  checkClosure,
  checkCollar,
  checkCup,
  checkPlantCollar,
  checkRiser,
  checkSaw,
  collarRing,
  cupSolidVolume,
  cupVolume,
  frustumVolume,
  halfAngleDeg,
  halfAngleTangent,
  unmeasuredFields
} from '../../shared-model/parts'
import { checkProfile } from '../../shared-model/profile'
import { source } from '../../shared-model/sources'
import { mm } from '../../shared-model/units'

const KINDS = ['profiles', 'cups', 'risers', 'collars', 'plantCollars', 'saws', 'closures'] as const

const part = <K extends (typeof KINDS)[number]>(kind: K, id: string) => {
  const found = cataloguePart(kind, id)
  if (found === undefined) throw new Error(`no ${id}`)
  return found
}

describe('the starting catalogue', () => {
  it('gives every part an id of its own, over all kinds', () => {
    const ids = KINDS.flatMap((kind) => CATALOGUE[kind].map((each) => each.id))
    expect(new Set(ids).size).toBe(ids.length)
    for (const id of ids) expect(id).toMatch(/^[a-z0-9.-]+$/)
  })

  it('holds parts that can be: no problem with any of them', () => {
    const problems = [
      ...CATALOGUE.profiles.flatMap(checkProfile),
      ...CATALOGUE.cups.flatMap(checkCup),
      ...CATALOGUE.risers.flatMap(checkRiser),
      ...CATALOGUE.collars.flatMap(checkCollar),
      ...CATALOGUE.plantCollars.flatMap(checkPlantCollar),
      ...CATALOGUE.saws.flatMap(checkSaw),
      ...CATALOGUE.closures.flatMap(checkClosure)
    ]
    expect(problems).toEqual([])
  })

  it('gives every figure a grade and a source of the register', () => {
    const graded = [
      ...CATALOGUE.profiles,
      ...CATALOGUE.cups,
      ...CATALOGUE.collars,
      ...CATALOGUE.plantCollars,
      ...CATALOGUE.saws,
      ...CATALOGUE.closures
    ]
    for (const { id, evidence } of graded) {
      expect(Object.keys(evidence).length, id).toBeGreaterThan(0)
      for (const [field, each] of Object.entries(evidence)) expect(source(each.source), `${id}.${field}`).toBeDefined()
    }
  })

  it('has the printed sizes: 3 in corrugated downspout 2-3/8 x 3-1/4, Schedule 40 4 in pipe 4.500 (Tables 10.7A and 4.E.4)', () => {
    const downspout = part('profiles', 'downspout-corrugated-3in')
    expect([downspout.widthMm / 25.4, downspout.heightMm / 25.4]).toEqual([3.25, 2.375])
    const pipe = part('profiles', 'pvc-schedule-40-4in')
    expect(pipe.widthMm).toBeCloseTo(114.3, 9)
    expect(pipe.leastWallMm).toBeCloseTo(6.02, 2)
    expect(part('saws', 'saw-in-2-1-8').diameterMm).toBeCloseTo(53.97, 1)
  })

  it('has for every profile an end closure that holds by its joint, material and size', () => {
    for (const profile of CATALOGUE.profiles) {
      const shape = profile.shape === 'round' ? 'round' : 'rectangle'
      const fitting = CATALOGUE.closures.filter(({ holdsOn, joint, material }) => {
        const near = (made: number | null, side: number) =>
          made === null || Math.abs(made - side) <= holdsOn.toleranceMm + profile.outsideToleranceMm
        return (
          holdsOn.shape === shape &&
          near(holdsOn.widthMm, profile.widthMm) &&
          near(holdsOn.heightMm, profile.heightMm) &&
          holdsOn.materials.includes(profile.material) &&
          jointHolds(joint, material, profile.material).holds
        )
      })
      expect(fitting.length, profile.id).toBeGreaterThan(0)
    }
  })

  it('cuts every collar with two saws of the catalogue, the hole smaller than the ring', () => {
    for (const collar of CATALOGUE.collars) {
      const ring = collarRing(collar, part('saws', collar.outerSawId), part('saws', collar.innerSawId))
      expect(ring.ok, collar.id).toBe(true)
    }
    for (const { sawId } of CATALOGUE.plantCollars) if (sawId !== null) expect(part('saws', sawId)).toBeDefined()
  })

  it('asks for what is from memory or common practice to be measured', () => {
    expect(unmeasuredFields(part('cups', 'cup-2in'))).toContain('rimOutsideMm')
    expect(unmeasuredFields(part('profiles', 'pvc-schedule-40-2in'))).not.toContain('widthMm')
    expect(cataloguePart('cups', 'no-such-cup')).toBeUndefined()
  })
})

describe('a collar by two hole saws (saw diameter over the tooth set, ASME B94.54)', () => {
  it('outside 76.2 - 2 x 2 = 72.2, hole 50.8, core 50.8 - 2 x 1.5 = 47.8', () => {
    const saw = { ...part('saws', 'saw-in-3'), kerfMm: 2 }
    const inner = { ...part('saws', 'saw-in-2'), kerfMm: 1.5 }
    const ring = collarRing(part('collars', 'collar-3-2'), saw, inner)
    expect(ring.ok && ring.value.outsideMm).toBeCloseTo(72.2, 9)
    expect(ring.ok && ring.value.holeMm).toBeCloseTo(50.8, 9)
    expect(ring.ok && ring.value.coreMm).toBeCloseTo(47.8, 9)
  })
  it('is refused with both bounds where the hole is as wide as the ring', () => {
    const saw = part('saws', 'saw-in-2')
    expect(collarRing(part('collars', 'collar-3-2'), saw, saw)).toMatchObject({
      problem: { code: 'collar-hole-outside-ring', figures: { leastMm: 0 } }
    })
  })
})

describe('a cup as a tapered body', () => {
  it('holds the frusta of worked examination solutions: D 4 and 2, h 14; radii 1 and 0.25, h 5', () => {
    expect(frustumVolume(mm(2), mm(1), mm(14))).toBeCloseTo(102.625693, 3)
    expect(frustumVolume(mm(1), mm(0.25), mm(5))).toBeCloseTo(6.872234, 4)
  })
  const cup: Cup = {
    ...part('cups', 'cup-2in'),
    rimThicknessMm: 2,
    bodyUnderRimMm: 50,
    bottomMm: 34,
    heightMm: 52,
    wallMm: 1
  }
  it('narrows evenly from under its rim: 50 to 34 over 50 mm is 42 half way, half angle atan 0.16', () => {
    expect(bodyDiameter(cup, mm(27))).toBe(42)
    expect(bodyDiameter(cup, mm(0))).toBe(50)
    expect(bodyDiameter(cup, mm(99))).toBe(34)
    expect(halfAngleTangent(cup)).toBeCloseTo(0.16, 12)
    expect(halfAngleDeg(cup)).toBeCloseTo(9.0903, 4)
  })
  it('holds less than its outside, and has less solid than outside', () => {
    fc.assert(
      fc.property(fc.constantFrom(...CATALOGUE.cups), fc.double({ min: 0.2, max: 2, noNaN: true }), (each, wallMm) => {
        const thick = { ...each, wallMm }
        const outside = frustumVolume(mm(each.rimOutsideMm / 2), mm(each.bottomMm / 2), mm(each.heightMm))
        expect(cupVolume(thick)).toBeLessThan(outside)
        expect(cupSolidVolume(thick)).toBeGreaterThan(0)
        expect(cupSolidVolume(thick)).toBeLessThan(outside)
      }),
      { seed: 64, numRuns: 300 }
    )
  })
  it('names a bottom wider than its top, and every other size that cannot be, with both bounds', () => {
    expect(checkCup({ ...cup, bottomMm: 51 })).toMatchObject([
      { code: 'cup-bottom-wider-than-body', figures: { valueMm: 51, leastMm: 0, mostMm: 50 } }
    ])
    expect(checkCup({ ...cup, rimOutsideMm: 49 })).toMatchObject([{ code: 'cup-body-wider-than-rim' }])
    expect(checkCup({ ...cup, wallMm: 18 })).toMatchObject([{ code: 'cup-wall-too-thick' }])
    expect(checkCup({ ...cup, rimThicknessMm: 52 })).toMatchObject([{ code: 'cup-rim-higher-than-cup' }])
    expect(checkCup({ ...cup, heightMm: Number.NaN })).toMatchObject([{ code: 'part-size-outside' }])
    expect(checkCup({ ...cup, floodedShare: 1.2 })).toMatchObject([{ code: 'part-share-outside' }])
    expect(checkCup({ ...cup, massG: -1 })).toMatchObject([{ code: 'part-mass-outside' }])
    expect(checkRiser({ id: 'r', name: 'r', cup, opened: { by: 'cut', belowRimMm: 60 } })).toMatchObject([
      { code: 'riser-opened-outside-cup', figures: { valueMm: 60, leastMm: 2, mostMm: 52 } }
    ])
    expect(checkSaw({ ...part('saws', 'saw-in-2'), kerfMm: 30 })).toMatchObject([{ code: 'part-size-outside' }])
  })
})
