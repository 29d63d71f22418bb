import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Body, type Opening, seatInOpening } from '../../shared-model/seating'

/** A cup: rim 60 over 2 mm, body 49 under it, bottom 35, 50 high. Its diameter falls by 14 over 48 mm: half-angle tangent 7/48. */
const cup: Body = {
  partId: 'cup',
  name: 'Cup',
  kind: 'cup',
  rimMm: 60,
  rimDepthMm: 2,
  underRimMm: 49,
  lowerMm: 35,
  heightMm: 50,
  wallMm: 1,
  flexible: false,
  openBelow: false,
  squeezeShare: null,
  ring: false,
  opening: { mouthMm: 47, lowerMm: 33, depthMm: 50, floorHoleMm: 0 },
  flangeHoleMm: null,
  floodedShare: 0.5
}
const foam: Body = {
  ...cup,
  partId: 'foam',
  kind: 'collar',
  rimMm: 100,
  rimDepthMm: 12,
  underRimMm: 100,
  lowerMm: 100,
  heightMm: 12,
  flexible: true,
  openBelow: true,
  squeezeShare: 0.15,
  ring: true
}
const hole = (mouthMm: number): Opening => ({ mouthMm, lowerMm: mouthMm, depthMm: 2, floorHoleMm: null })

describe('how a part sits in an opening (geometry worked by hand)', () => {
  test('a hole as wide as the rim lets the cup through', () => {
    expect(seatInOpening(cup, hole(60), 50).hold).toBe('drops-through')
    expect(seatInOpening(cup, hole(65), 50).hold).toBe('drops-through')
  })

  test('between body and rim the cup hangs on its rim, with land and play', () => {
    // land = (60 - 51) / 2, play = (51 - 49) / 2; rim top 2 above the face, underside 50 below it
    const sits = seatInOpening(cup, hole(51), 50)
    expect(sits).toMatchObject({ hold: 'hangs-on-rim', landMm: 4.5, playMm: 1, topMm: 52, undersideMm: 2, held: false })
  })

  test('between bottom and body the cup wedges where its body measures the hole', () => {
    // body measures 42 at 2 + (49 - 42) / 2 / (7/48) = 2 + 24 = 26 below the rim's top; half-angle 8.3° is under 11°
    const sits = seatInOpening(cup, hole(42), 50)
    expect(sits.hold).toBe('wedges')
    expect(sits.topMm).toBeCloseTo(76, 9)
    expect(sits.held).toBe(true)
  })

  test('a flexible wall is pressed further by its interference over twice the tangent', () => {
    // 0.5 / (2 × 7/48) = 1.714 mm
    const sits = seatInOpening({ ...cup, flexible: true }, hole(42), 50)
    expect(sits.pressMm).toBeCloseTo(0.5 / (14 / 48), 9)
    expect(sits.topMm).toBeCloseTo(76 - 0.5 / (14 / 48), 9)
  })

  test('a taper blunter than the friction angle is not held when turned over', () => {
    // 49 to 15 over 48 mm: tangent 17/48, 19.5°
    expect(seatInOpening({ ...cup, lowerMm: 15 }, hole(42), 50)).toMatchObject({ hold: 'wedges', held: false })
  })

  test('a closed bottom as wide as the hole does not enter', () => {
    expect(seatInOpening(cup, hole(35), 50).hold).toBe('does-not-enter')
  })

  test('an open lower edge wider than the hole stands on the face', () => {
    // land = (35 - 30) / 2
    expect(seatInOpening({ ...cup, openBelow: true }, hole(30), 50)).toMatchObject({
      hold: 'stands-on-face',
      landMm: 2.5,
      undersideMm: 50
    })
  })

  test('a parallel wall is a push fit by up to half a millimetre on its diameter, and no further', () => {
    const straight = { ...cup, lowerMm: 49 }
    expect(seatInOpening(straight, hole(48.6), 50)).toMatchObject({ hold: 'push-fit', held: true })
    expect(seatInOpening(straight, hole(48.4), 50).hold).toBe('does-not-enter')
    expect(seatInOpening({ ...straight, openBelow: true }, hole(48.4), 50).hold).toBe('stands-on-face')
  })

  test('foam up to 15 % of its outside wider than the opening presses in flush, wider lies on the face, narrower drops', () => {
    expect(seatInOpening(foam, hole(85), 50)).toMatchObject({ hold: 'pressed-in', topMm: 50, undersideMm: 38 })
    expect(seatInOpening(foam, hole(84), 50)).toMatchObject({ hold: 'stands-on-face', landMm: 8, topMm: 62 })
    expect(seatInOpening(foam, hole(101), 50).hold).toBe('drops-through')
  })

  test('a rigid ring wider than the opening lies on the face', () => {
    expect(seatInOpening({ ...foam, squeezeShare: null, flexible: false }, hole(90), 50).hold).toBe('stands-on-face')
  })

  test('a small cup sinks into a wide tapered mouth until its rim meets the wall', () => {
    // mouth 80 falling to 50 over 90 mm: the wall measures 60 at 60 mm below the mouth; the rim's lower edge stops there
    const sits = seatInOpening(cup, { mouthMm: 80, lowerMm: 50, depthMm: 90, floorHoleMm: null }, 100)
    expect(sits.hold).toBe('wedges')
    expect(sits.topMm).toBeCloseTo(100 - 60 + 2, 9)
  })
})

describe('laws of seats', () => {
  const run = { seed: 3101, numRuns: 300 }

  test('a wider hole never raises a cup, hung or wedged, and a taper sinks as the hole grows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 35.1, max: 59.9, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.boolean(),
        (narrow, more, flexible) => {
          const wide = Math.min(59.9, narrow + more)
          const body = { ...cup, flexible }
          expect(seatInOpening(body, hole(wide), 50).topMm).toBeLessThanOrEqual(
            seatInOpening(body, hole(narrow), 50).topMm + 1e-9
          )
        }
      ),
      run
    )
  })

  test('no figure of a seat is ever NaN or infinite', () => {
    const size = fc.double({ min: 0.1, max: 200, noNaN: true })
    fc.assert(
      fc.property(size, size, size, size, fc.boolean(), fc.boolean(), (mouth, a, b, height, flexible, openBelow) => {
        const lowerMm = Math.min(a, b)
        const underRimMm = Math.max(a, b)
        const body = { ...cup, lowerMm, underRimMm, rimMm: underRimMm + 3, heightMm: height + 2, flexible, openBelow }
        const sits = seatInOpening(body, hole(mouth), 50)
        for (const value of [sits.topMm, sits.undersideMm, sits.landMm ?? 0, sits.playMm ?? 0, sits.pressMm ?? 0]) {
          expect(Number.isFinite(value)).toBe(true)
        }
      }),
      run
    )
  })
})
