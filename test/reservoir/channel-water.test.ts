import { describe, expect, test } from 'vitest'
import { channelWater, riseCheck } from '../../shared-model/reservoir'
import { build, CHANNEL, CUP, DRINKING_CUP, INDEX, must, SILL, WATER } from '../reference/small-build'

const openingAt = (
  kind: 'overflow' | 'drain',
  heightMm: number,
  closure: 'none' | 'plug'
): (typeof CHANNEL)['openings'][number] => ({
  id: kind,
  kind,
  face: 'front',
  atMm: 200,
  heightMm,
  diameterMm: 10,
  sawId: null,
  closure
})

describe('the water of a channel', () => {
  test('the fill line is a share of the inside height, told from the floor and from the top of the face', () => {
    // 0.6 × 48 = 28.8; 49 - 28.8 = 20.2 below the face's top
    const { water } = build(CHANNEL)
    expect(water.levelMm).toBeCloseTo(28.8, 9)
    expect(water.fromTopMm).toBeCloseTo(20.2, 9)
    expect(water.litresPerPlant).toBeCloseTo(water.litres / 6, 12)
  })

  test('an overflow caps the fill line at its lower edge, and says so', () => {
    // centre 25, 10 wide: lip at 20 mm
    const built = build({ ...CHANNEL, openings: [openingAt('overflow', 25, 'none')] })
    expect(built.water.levelMm).toBeCloseTo(20, 9)
    expect(built.water.cappedByOverflow).toBe(true)
    expect(built.waterFindings.find((f) => f.code === 'overflow-caps-fill')?.fix).toEqual({
      field: 'channels.c1.fillShare',
      value: 0.416
    })
  })

  test('an open drain below the fill line is a stop, a plugged one is not', () => {
    const open = build({ ...CHANNEL, openings: [openingAt('drain', 10, 'none')] })
    expect(open.waterFindings).toContainEqual(
      expect.objectContaining({ code: 'opening-below-level', severity: 'stop' })
    )
    const plugged = build({ ...CHANNEL, openings: [openingAt('drain', 10, 'plug')] })
    expect(plugged.waterFindings.some((f) => f.code === 'opening-below-level')).toBe(false)
  })

  test('5 mm per m on 1.2 m is 6 mm of gap between the ends; the low end rules; shims bring it level', () => {
    const built = build(
      {
        ...CHANNEL,
        sites: [
          { ...CHANNEL.sites[0], atMm: 0 },
          { ...CHANNEL.sites[0], id: 's2', atMm: 1196 }
        ].map((s) => ({ id: 's1', seatId: 'seat', cropId: null, locked: false, ...s }))
      },
      { ...SILL, fallAlongMmPerM: 5 }
    )
    const { leastGapMm, greatestGapMm } = built.water
    expect((greatestGapMm ?? 0) - (leastGapMm ?? 0)).toBeCloseTo(5 * 1.196, 9)
    // the cup's bottom of 35 lies as the channel does: its low edge is 0.005 × 17.5 nearer to the surface
    expect(leastGapMm).toBeCloseTo(1 - 28.8 - 0.0875, 9)
    expect(built.water.shims).toEqual([
      { atMm: 0, shimMm: expect.closeTo(5.98, 9), lowSide: null, lowSideMm: expect.closeTo(5.98, 9) },
      { atMm: 1196, shimMm: expect.closeTo(0, 9), lowSide: null, lowSideMm: expect.closeTo(0, 9) }
    ])
  })

  test('a fall across a channel turns its surface: less air at the cups’ front edge, a thicker shim at the front', () => {
    // 20 mm per m towards the glass: the front is low. Bottom 35: 0.02 × 17.5 = 0.35; width 76: 0.02 × 76 = 1.52
    const level = build(CHANNEL)
    const built = build(CHANNEL, { ...SILL, fallAcrossMmPerM: 20 })
    expect(built.water.litres).toBeCloseTo(level.water.litres, 9)
    expect(built.water.leastGapMm).toBeCloseTo((level.water.leastGapMm ?? 0) - 0.35, 9)
    // at the walls, half the bore of 74 times 0.02 = 0.74 more in front and less at the back
    const site = built.water.sites[0]
    expect(site?.frontLevelMm).toBeCloseTo((site?.levelMm ?? 0) + 0.74, 9)
    expect(site?.backLevelMm).toBeCloseTo((site?.levelMm ?? 0) - 0.74, 9)
    expect(level.water.sites[0]).toMatchObject({
      frontLevelMm: level.water.sites[0]?.levelMm,
      backLevelMm: level.water.sites[0]?.levelMm
    })
    expect(built.water.shims).toEqual([
      { atMm: 0, shimMm: 0, lowSide: 'front', lowSideMm: expect.closeTo(1.52, 9) },
      { atMm: 1196, shimMm: 0, lowSide: 'front', lowSideMm: expect.closeTo(1.52, 9) }
    ])
  })

  test('turned about, the same channel wants the same shim at its back; set on end it tilts along', () => {
    const about = build({ ...CHANNEL, heading: 180 }, { ...SILL, fallAcrossMmPerM: 20 })
    expect(about.water.shims[0]).toMatchObject({ lowSide: 'back', lowSideMm: expect.closeTo(1.52, 9) })
    const endOn = build({ ...CHANNEL, heading: 90 }, { ...SILL, fallAlongMmPerM: 20 })
    expect(endOn.water.shims[0]).toMatchObject({ lowSide: 'back', lowSideMm: expect.closeTo(1.52, 9) })
    const along = build({ ...CHANNEL, heading: 90 }, { ...SILL, fallAcrossMmPerM: 20 })
    expect(along.water.shims[0]).toMatchObject({ lowSide: null, shimMm: expect.closeTo(23.92, 9) })
  })

  test('nearly brimful, a fall across puts the surface against the face on the low side', () => {
    // level 0.99 × 48 = 47.52; half the bore of 74 times 0.02 = 0.74: 47.52 + 0.74 - 48 = 0.26 over
    const over = (fallAcrossMmPerM: number, fillShare: number) =>
      build({ ...CHANNEL, fillShare }, { ...SILL, fallAcrossMmPerM }).waterFindings.find(
        (f) => f.code === 'spills-over-low-side'
      )
    expect(over(20, 0.99)).toMatchObject({
      severity: 'warn',
      figures: { side: 'front', overMm: expect.closeTo(0.26, 9) }
    })
    expect(over(-20, 0.99)?.figures).toMatchObject({ side: 'back' })
    expect(over(0, 0.99)).toBeUndefined()
    expect(over(20, 0.97)).toBeUndefined()
  })

  test('an overflow in the low side runs sooner, in the high side later', () => {
    // lip 25 - 5 = 20; half the bore of 74 times 0.02 = 0.74
    const opening = openingAt('overflow', 25, 'none')
    const levelWith = (face: 'front' | 'back'): number =>
      build({ ...CHANNEL, openings: [{ ...opening, face }] }, { ...SILL, fallAcrossMmPerM: 20 }).water.levelMm
    expect(levelWith('front')).toBeCloseTo(19.26, 9)
    expect(levelWith('back')).toBeCloseTo(20.74, 9)
  })

  test('each stage has its highest safe line: wanted gap below the cup, or that deep up it', () => {
    const { stages } = build(CHANNEL).water
    // cup's underside 1 mm above the floor: unrooted 1 + 20, rooting 1; a gap of 25.4 cannot be had
    expect(stages.map((s) => s.safeLevelMm)).toEqual([21, 1, 0, 0])
    expect(stages.map((s) => s.reachable)).toEqual([true, true, false, false])
  })

  test('the ladder lifts by where the cup’s body measures the hole, and no cut changes it', () => {
    // At 0.1: level 4.8; unrooted 4.8 - 20 - 1 < 0: none needed. Rooting: 3.8 mm; a riser in the 51 mm hole stands
    // 2 + 5 × 6.25 = 33.25 less the press 0.5 / 0.16 = 3.125: 30.125 mm, enough also for rooted (29.2 mm)
    const { ladder } = build({ ...CHANNEL, fillShare: 0.1 }).water
    expect(ladder[0]?.how.kind).toBe('none-needed')
    expect(ladder[1]?.liftMm).toBeCloseTo(3.8, 9)
    expect(ladder[2]).toMatchObject({ how: { kind: 'riser', cupId: DRINKING_CUP.id, openingMm: 51 } })
    // wedge depth 33.25, and 3 mm more
    expect(ladder[2]?.how).toMatchObject({ cutBelowRimMm: expect.closeTo(36.25, 9) })
    expect(ladder[3]).toMatchObject({ how: { kind: 'other-saw' } })
  })

  test('where no cup is high enough the ladder says how far the best one lifts', () => {
    const low = { ...INDEX, cups: new Map([['cup', CUP]]) }
    const rung = build({ ...CHANNEL, fillShare: 0.95 }, SILL, WATER, low).water.ladder[2]
    expect(rung?.how).toEqual({ kind: 'no-cup-reaches', mostMm: 0 })
  })

  test('Acta Hort. 648: coming up more than 20 mm on roots that hung in the air drowns them', () => {
    expect(riseCheck(30, 9)).toMatchObject({ riseMm: 21, drowns: true, mostMm: 20 })
    expect(riseCheck(30, 10).drowns).toBe(false)
    expect(riseCheck(-1, -40).drowns).toBe(false)
  })

  test('a cup that hangs dry is to be refilled before the level has sunk 20 mm', () => {
    const dry = { ...WATER, stageGapsMm: { ...WATER.stageGapsMm } }
    const short = { ...CUP, heightMm: 20, bottomMm: 43 }
    const built = build({ ...CHANNEL, fillShare: 0.5 }, SILL, dry, { ...INDEX, cups: new Map([['cup', short]]) })
    // Underside 49 + 2 - 20 = 31; level 24: gap 7. 300 mL a day on 74 × 1196 mm is 3.39 mm a day: 5 days sink 16.95, 6 days 20.3
    expect(built.water.leastGapMm).toBeCloseTo(7, 9)
    expect(built.water.drawDown?.refillDay).toBe(5)
  })

  test('a channel with no plants has its level and litres, and no figure for a plant or a gap', () => {
    const { water } = build({ ...CHANNEL, sites: [] })
    expect(water).toMatchObject({ sites: [], leastGapMm: null, greatestGapMm: null, litresPerPlant: null })
    expect(JSON.stringify(water)).not.toMatch(/NaN|Infinity/)
    expect(water.litres).toBeGreaterThan(0)
    expect(Number.isFinite(water.endLevelMm)).toBe(true)
  })

  test('a fill share above the bore and a conductivity of 40 are problems with both bounds', () => {
    const built = build(CHANNEL)
    const input = {
      channel: CHANNEL,
      layout: built.layout,
      fits: built.fits,
      index: INDEX,
      sill: SILL,
      water: WATER,
      cupsOnHand: [],
      sawsOnHand: []
    }
    expect(channelWater({ ...input, channel: { ...CHANNEL, fillShare: 1.2 } })).toMatchObject({
      ok: false,
      problem: {
        code: 'out-of-range',
        figures: { value: 1.2, least: 0, most: 1 },
        where: { field: 'channels.c1.fillShare' }
      }
    })
    expect(channelWater({ ...input, water: { ...WATER, sourceEcMsPerCm: 40 } })).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', figures: { value: 40, most: 20 } }
    })
  })

  test('a channel without sites or solution still has a plan', () => {
    const built = build({ ...CHANNEL, sites: [], fillShare: 0 })
    expect(must({ ok: true, value: built.water }).litres).toBe(0)
    expect(built.water.leastGapMm).toBeNull()
    expect(built.water.drawDown).toBeNull()
  })
})
