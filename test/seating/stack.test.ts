import { describe, expect, test } from 'vitest'
import { sectionOf } from '../../shared-model/profile'
import {
  channelSeats,
  faceOf,
  type PartIndex,
  riserProudMm,
  type Seat,
  sawAdvice,
  seatFit
} from '../../shared-model/seating'
import { CHANNEL, CUP, DRINKING_CUP, INDEX, must, PIPE, SAW, SEAT, TUBE, withRiser } from '../reference/small-build'

const FACE = faceOf(sectionOf(TUBE, false))
const sawOf = (diameterMm: number): typeof SAW => ({
  ...SAW,
  id: `saw-${diameterMm}`,
  name: `${diameterMm} mm`,
  diameterMm
})
const found = (
  index: PartIndex,
  profile = TUBE,
  saws = [...index.saws.values()]
): readonly { readonly code: string }[] =>
  must(channelSeats({ id: 'c1', sites: CHANNEL.sites }, sectionOf(profile, false), index, saws)).findings

describe('a stack, from the hole up', () => {
  test('a bored riser keeps a flange: a cup wider than the bored hole stands on it', () => {
    // A riser of the drinking cup, bored 20 through its bottom of 40, wall 0.5. Inside it a cup of body 30, rim 40, bottom 25,
    // 30 high: rim and body pass the mouth of 55, the bottom of 25 does not pass the 20: it stands on the flange.
    const small = { ...CUP, id: 'small', rimOutsideMm: 36, bodyUnderRimMm: 30, bottomMm: 25, heightMm: 30 }
    const riser = { id: 'riser', name: 'Riser', cup: DRINKING_CUP }
    const withBore = (sawDiameterMm: number): PartIndex => ({
      ...withRiser(40, 51),
      cups: new Map([['small', small]]),
      risers: new Map([['riser', { ...riser, opened: { by: 'bore', sawDiameterMm, sawId: 'saw' } }]])
    })
    const stacked: Seat = {
      ...SEAT,
      sawId: 'saw-riser',
      stack: [
        { kind: 'riser', partId: 'riser' },
        { kind: 'cup', partId: 'small' }
      ]
    }
    const held = must(seatFit(stacked, FACE, withBore(20)))
    const floorMm = held.interfaces[0]?.undersideMm ?? 0
    expect(held.interfaces[1]?.undersideMm).toBeCloseTo(floorMm + 0.5, 9)
    // bored 39 wide the bottom passes, and the rim of 36 with it
    expect(must(seatFit(stacked, FACE, withBore(39))).interfaces[1]?.hold).toBe('drops-through')
    // ring of 40 about 20, 0.5 thick, in the place of nothing: pi/4 × (40² - 20²) × 0.5 = 471 mm³
    const ring = held.solids[0]
    expect(ring).toMatchObject({ lowerOutsideMm: 40, lowerInsideMm: 20 })
    expect((ring?.toMm ?? 0) - (ring?.fromMm ?? 0)).toBeCloseTo(0.5, 9)
    expect(held.massG).toBeGreaterThan(must(seatFit(stacked, FACE, withBore(39))).massG)
  })

  test('a rim wider than the whole channel is said as such, not as a rim past the flat', () => {
    const wide = { ...CUP, rimOutsideMm: 80 }
    const codes = found({ ...INDEX, cups: new Map([['cup', wide]]) })
    expect(codes).toContainEqual(
      expect.objectContaining({
        code: 'rim-past-face',
        figures: { part: 'Cup 2 in', rimMm: 80, faceMm: 76, overMm: 2 }
      })
    )
    expect(codes.some((f) => f.code === 'land-past-flat')).toBe(false)
    expect(found(INDEX).some((f) => f.code === 'rim-past-face')).toBe(false)
  })

  test('a cup hung in a riser stands as far above the face as the riser does', () => {
    // Riser in a 51 mm hole: 2 + (56 - 51) × 6.25 = 33.25, pressed 0.5 / (2 × 0.08) = 3.125: its rim 30.125 above the face at 49.
    // Its mouth is 56 - 1 = 55: the cup's body 49 goes in, its rim 60 hangs; its underside 79.125 + 2 - 50.
    const index = withRiser(40, 51)
    const risen = index.seats.get('seat') ?? SEAT
    const fit = must(seatFit(risen, FACE, index))
    expect(riserProudMm(DRINKING_CUP, 51)).toBeCloseTo(30.125, 9)
    expect(fit.interfaces.map((i) => i.hold)).toEqual(['wedges', 'hangs-on-rim'])
    expect(fit.interfaces[1]?.openingAtMm).toBeCloseTo(79.125, 9)
    expect(fit.undersideMm).toBeCloseTo(31.125, 9)
    expect(fit.topMm).toBeCloseTo(81.125, 9)
    // cut 40 below its rim, the riser's lower edge is at 39.125: the cup hangs lower
    expect(fit.lowestPartId).toBe('cup')
  })

  test('a foam collar by saws A and B: outside A less two kerfs, hole B; the cup hangs in it', () => {
    const outer = sawOf(80)
    const inner = sawOf(51)
    const collar = {
      id: 'collar',
      name: 'Collar',
      outerSawId: outer.id,
      innerSawId: inner.id,
      thicknessMm: 10,
      foam: true,
      squeezeShare: 0.15,
      material: 'eva-foam' as const,
      evidence: {}
    }
    const index = {
      ...INDEX,
      collars: new Map([['collar', collar]]),
      saws: new Map([outer, inner, sawOf(70)].map((saw) => [saw.id, saw]))
    }
    const seat: Seat = {
      id: 'seat',
      name: 'Collar',
      sawId: 'saw-70',
      stack: [{ kind: 'collar', partId: 'collar' }, ...SEAT.stack]
    }
    // outside 80 - 4 = 76 in a 70 mm hole: 6 over, under 15 % of 76: flush with the face at 49
    const fit = must(seatFit(seat, FACE, index))
    expect(fit.interfaces[0]).toMatchObject({ hold: 'pressed-in', topMm: 49, undersideMm: 39, held: true })
    expect(fit.interfaces[1]).toMatchObject({ hold: 'hangs-on-rim', openingMm: 51, topMm: 51 })
    expect(fit.seals).toBe(true)
    // hole of 60: 16 over, lies on the face and is kept there by the cup that hangs through it
    const lying = must(seatFit({ ...seat, sawId: 'saw-70' }, FACE, index, 60))
    expect(lying.interfaces[0]).toMatchObject({ hold: 'stands-on-face', located: true, topMm: 59 })
  })

  test('a soft plant collar presses into the cup’s mouth', () => {
    const plant = { id: 'plant', name: 'Foam', outsideMm: 50, thicknessMm: 10, sawId: null, evidence: {} }
    const index = { ...INDEX, plantCollars: new Map([['plant', plant]]) }
    const seat: Seat = { ...SEAT, stack: [...SEAT.stack, { kind: 'plant-collar', partId: 'plant' }] }
    const fit = must(seatFit(seat, FACE, index))
    // mouth 49 - 2 × 1 = 47, 3 mm over
    expect(fit.interfaces[1]).toMatchObject({ hold: 'pressed-in', openingMm: 47 })
    expect(fit.undersideMm).toBe(1)
  })

  test('a missing part, an empty stack and a bottom wider than the body are problems that name the field', () => {
    const lost: Seat = { ...SEAT, stack: [{ kind: 'cup', partId: 'lost' }] }
    expect(seatFit(lost, FACE, INDEX)).toMatchObject({
      ok: false,
      problem: { code: 'part-missing', where: { seatId: 'seat' } }
    })
    expect(seatFit({ ...SEAT, stack: [] }, FACE, INDEX)).toMatchObject({ problem: { code: 'empty-stack' } })
    const wide = { ...INDEX, cups: new Map([['cup', { ...CUP, bottomMm: 55 }]]) }
    expect(seatFit(SEAT, FACE, wide)).toMatchObject({
      ok: false,
      problem: { code: 'cup-bottom-wider-than-body', figures: { valueMm: 55, leastMm: 0, mostMm: 49 } }
    })
  })
})

describe('what a seat’s findings say', () => {
  const withHole = (diameterMm: number): PartIndex => ({
    ...INDEX,
    saws: new Map([['saw-51', { ...SAW, diameterMm }]])
  })

  test('a cup that seats well has none, told once for a channel', () => {
    expect(found(INDEX)).toEqual([])
  })

  test('dropping through is a stop, cleared by the one saw at hand that does', () => {
    const findings = found(withHole(62), TUBE, [sawOf(62), sawOf(51)])
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatchObject({
      code: 'part-drops-through',
      severity: 'stop',
      figures: { openingMm: 62, rimMm: 60 },
      fix: { field: 'seats.seat.sawId', value: 'saw-51' }
    })
  })

  test('not entering names the smallest saw that lets the bottom in', () => {
    const findings = found(withHole(32), TUBE, [sawOf(32), sawOf(35), sawOf(44), sawOf(51)])
    expect(findings).toContainEqual(
      expect.objectContaining({
        code: 'part-does-not-enter',
        figures: expect.objectContaining({ saw: '44 mm', leastMm: 44 })
      })
    )
  })

  test('a land under 1.5 mm is a warning', () => {
    // (60 - 58) / 2 = 1
    expect(found(withHole(58))).toContainEqual(
      expect.objectContaining({
        code: 'land-thin',
        severity: 'warn',
        figures: expect.objectContaining({ landMm: 1, leastMm: 1.5 })
      })
    )
  })

  test('a cup longer than the channel is deep is a stop with what it is short of', () => {
    const tall = { ...INDEX, cups: new Map([['cup', { ...CUP, heightMm: 60 }]]) }
    expect(found(tall)).toContainEqual(
      expect.objectContaining({ code: 'reaches-floor', figures: expect.objectContaining({ shortMm: 9 }) })
    )
  })

  test('where no saw at hand does, the range that would is named', () => {
    // body 49 up to 60 less two lands of 1.5
    expect(found(withHole(62), TUBE, [sawOf(62)])).toContainEqual(
      expect.objectContaining({ code: 'no-saw-fits', figures: expect.objectContaining({ leastMm: 49, mostMm: 57 }) })
    )
  })

  test('on a round pipe: the gap under the rim, and a saw too short for the saddle', () => {
    // R 55, hole 51: 55 - sqrt(55² - 25.5²) = 6.2686; at the rim 60: 55 - sqrt(55² - 30²) = 8.9023;
    // saw depth 55 - sqrt(51.8² - 25.5²) = 9.9113
    const findings = found({ ...INDEX, saws: new Map([['saw-51', { ...SAW, depthMm: 9 }]]) }, PIPE)
    expect(findings).toContainEqual(
      expect.objectContaining({
        code: 'saddle-gap',
        figures: { gapMm: expect.closeTo(6.2686, 3), atRimMm: expect.closeTo(8.9023, 3) }
      })
    )
    expect(findings).toContainEqual(
      expect.objectContaining({
        code: 'saw-too-shallow',
        figures: expect.objectContaining({ needMm: expect.closeTo(9.9113, 3), depthMm: 9 })
      })
    )
  })
})

describe('saw advice', () => {
  test('lists each saw at hand that gives a rim or a taper, with land, play and height, and changes nothing', () => {
    const advice = sawAdvice(SEAT, FACE, INDEX, [30, 44, 51, 58, 62].map(sawOf))
    expect(advice.options).toEqual([
      {
        sawId: 'saw-44',
        diameterMm: 44,
        hold: 'wedges',
        landMm: null,
        playMm: null,
        undersideMm: expect.closeTo(49 + 2 + 5 / 2 / (7 / 48) - 50, 9)
      },
      { sawId: 'saw-51', diameterMm: 51, hold: 'hangs-on-rim', landMm: 4.5, playMm: 1, undersideMm: 1 }
    ])
    expect(advice.wouldDoMm).toBeNull()
  })

  test('with none it names the diameters that would do', () => {
    expect(sawAdvice(SEAT, FACE, INDEX, [sawOf(62)]).wouldDoMm).toEqual({ least: 49, most: 57 })
  })
})
