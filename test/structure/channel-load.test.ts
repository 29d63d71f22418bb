import { describe, expect, test } from 'vitest'
import { type Channel, mirrorChannels, type Sill } from '../../shared-model/layout'
import type { PartIndex } from '../../shared-model/seating'
import { channelLoad, type LoadedChannel, sillLoad } from '../../shared-model/structure'
import { build, CHANNEL, INDEX, must, SILL, SIZE, WATER } from '../reference/small-build'

function load(channel: Channel, sill: Sill = SILL, index: PartIndex = INDEX): LoadedChannel {
  const built = build(channel, sill, WATER, index)
  return must(
    channelLoad({
      channel,
      layout: built.layout,
      fits: built.fits,
      index,
      sill,
      size: SIZE,
      channelWater: built.water,
      water: WATER
    })
  )
}
const foot = (id: string, atMm: number): Channel['supports'][number] => ({
  id,
  atMm,
  alongMm: 40,
  acrossMm: 60,
  heightMm: 30
})
const codes = (found: LoadedChannel): readonly string[] => found.findings.map((f) => f.code)

describe('what a channel weighs', () => {
  test('profile less its holes, closures, cups; solution; plants', () => {
    // profile (76 × 50 - 74 × 48) × 1196 mm × 1.4 g/cm³ = 415.25 g; six holes pi/4 × 51² × 1 × 1.4 = 17.16 g;
    // closures 40 g, cups 48 g: 486.09 g
    const { load: weight } = load(CHANNEL)
    expect(weight.emptyG).toBeCloseTo(486.09, 1)
    // 2.43513 L at 0.998207 kg/L = 2430.76 g. Medium: inside of a cup 47.583 at the top of its rim, 33 at its floor, 49 high:
    // pi × 49 / 3 × (23.792² + 23.792 × 16.5 + 16.5²) = 63.158 mL at 800 g/L = 50.53 g, six times. Six plants of 100 g
    expect(weight.filledG - weight.emptyG).toBeCloseTo(2435.13 * 0.998207 + 6 * 50.526, 1)
    expect(weight.grownG - weight.filledG).toBeCloseTo(600, 9)
    expect(weight.newtonsPerMetre).toBeCloseTo(((weight.grownG / 1000) * 9.80665) / 1.2, 6)
  })

  test('a lighter medium weighs less', () => {
    const light = build(CHANNEL, SILL, { ...WATER, mediumGPerL: 100 })
    const input = { channel: CHANNEL, index: INDEX, sill: SILL, size: SIZE }
    const { load: weight } = must(
      channelLoad({
        ...input,
        layout: light.layout,
        fits: light.fits,
        channelWater: light.water,
        water: { ...WATER, mediumGPerL: 100 }
      })
    )
    const full = load(CHANNEL).load
    expect(full.filledG - weight.filledG).toBeCloseTo(6 * 0.063158 * 700, 1)
  })

  test('the mass centre lies at mid-length, and tipping goes from the flat underside', () => {
    const { load: weight } = load(CHANNEL)
    expect(weight.centre.xMm).toBeCloseTo(4 + 598, 6)
    expect(weight.centre.yMm).toBe(100)
    // atan(38 / height of the centre)
    expect(weight.tipDeg.grown).toBeCloseTo((Math.atan(38 / weight.centre.zMm) * 180) / Math.PI, 9)
  })

  test('a fall of the sill is taken off the angle to tip', () => {
    const level = load(CHANNEL).load.tipDeg.empty
    const fallen = load(CHANNEL, { ...SILL, fallAcrossMmPerM: 20 }).load.tipDeg.empty
    expect(level - fallen).toBeCloseTo((Math.atan(0.02) * 180) / Math.PI, 6)
  })

  test('Trunking page: 70e-6 per °C; 1200 mm of PVC warmed by 25 °C grows 2.1 mm', () => {
    expect(load(CHANNEL).load.thermalGrowthMm).toBeCloseTo(1200 * 70e-6 * 25, 9)
  })
})

describe('what it stands on', () => {
  test('without supports the sill carries it and it does not sag', () => {
    expect(load(CHANNEL).load.sag).toBeNull()
  })

  test('on two feet it sags over its net section, and more after years by the creep factor 0.375', () => {
    const { load: weight } = load({ ...CHANNEL, supports: [foot('a', 98), foot('b', 1098)] })
    expect(weight.sag?.spanMm).toBe(1000)
    // overhang: 98 mm and 2 mm of closure
    expect(weight.sag?.overhangMm).toBe(100)
    const sag = weight.sag
    expect((sag?.longTermMm ?? 0) / (sag?.shortTermMm ?? 1)).toBeCloseTo(1 / 0.375, 9)
    // Net section, upper face open over 51 mm, by parts about the underside. Tube 248 mm² at 25 mm, face 51 mm² at 49.5:
    // area 197, centroid (6200 - 2524.5) / 197 = 18.657.
    // Tube I = (76 × 50³ - 74 × 48³) / 12 = 109 691 mm⁴; about the underside 109 691 + 248 × 625 = 264 691
    // less the face 51 / 12 + 51 × 49.5² = 124 967; less 197 × 18.657² = 68 574: I = 71 150 mm⁴
    const w = ((weight.grownG / 1000) * 9.80665) / 1200
    expect(sag?.shortTermMm).toBeCloseTo((5 * w * 1000 ** 4) / (384 * 2758 * 71_150), 3)
  })

  test('on closures that stand proud it is carried by its ends, and sags no further than the sill', () => {
    const cap = INDEX.closures.get('cap')
    if (!cap) throw new Error('the build has a cap')
    const proud = (proudMm: number): LoadedChannel =>
      load(CHANNEL, SILL, { ...INDEX, closures: new Map([['cap', { ...cap, proudMm }]]) })
    expect(proud(0.2).load.sag).toBeNull()
    expect(proud(30).load.sag?.spanMm).toBe(1196)
    expect(proud(1).load.sag?.longTermMm).toBe(1)
  })

  test('a support off the channel and a foot beside the mass centre are stops', () => {
    expect(codes(load({ ...CHANNEL, supports: [foot('a', 100), foot('b', 1400)] }))).toContain('support-off-channel')
    expect(codes(load({ ...CHANNEL, supports: [foot('a', 100), foot('b', 300)] }))).toContain('tips-over')
  })

  test('over the sill’s front edge it tips when its mass centre is past it', () => {
    expect(codes(load({ ...CHANNEL, yMm: -1 }))).toContain('tips-over')
    expect(codes(load({ ...CHANNEL, yMm: 5 }))).toContain('tips-easily')
  })

  test('a round pipe without feet rolls', () => {
    const pipe = { ...CHANNEL, profileId: 'pipe', datumClosureId: 'pipe-cap', farClosureId: 'pipe-cap' }
    expect(codes(load(pipe))).toEqual(['round-rolls'])
  })

  test('mirrored across the sill, weights and angles stay and the centre is mirrored', () => {
    const channel = { ...CHANNEL, sites: CHANNEL.sites.slice(0, 3) }
    const [mirrored] = mirrorChannels([channel], SIZE.lengthMm)
    if (!mirrored) throw new Error('one channel gives one')
    const here = load(channel, { ...SILL, fallAlongMmPerM: 4 }).load
    const there = load(mirrored, { ...SILL, fallAlongMmPerM: -4 }).load
    expect(there.grownG).toBeCloseTo(here.grownG, 6)
    expect(there.centre.xMm).toBeCloseTo(SIZE.lengthMm - here.centre.xMm, 6)
    expect(there.tipDeg.grown).toBeCloseTo(here.tipDeg.grown, 6)
  })
})

describe('the sill in all', () => {
  const one = load(CHANNEL).load

  test('a limit is only the user’s own; with none given it says that no published one exists', () => {
    const channels = [{ load: one, overallLengthMm: 1200 }]
    expect(sillLoad(channels, SILL, SIZE).findings.map((f) => f.code)).toContain('no-sill-limit')
    expect(sillLoad(channels, { ...SILL, loadLimitKg: 3 }, SIZE).findings).toContainEqual(
      expect.objectContaining({ code: 'over-sill-limit', severity: 'stop' })
    )
    expect(sillLoad(channels, { ...SILL, loadLimitKg: 7 }, SIZE).load.shareOfLimit).toBeCloseTo(one.grownG / 7000, 12)
  })

  test.each([
    [4000, 500, 'yes'],
    [5000, 1200, 'fill-in-place'],
    [10_000, 500, 'fill-in-place'],
    [24_000, 500, 'not-by-one-person']
  ] as const)('%s g filled and %s mm long: %s', (filledG, overallLengthMm, how) => {
    const channels = [{ load: { ...one, filledG }, overallLengthMm }]
    expect(sillLoad(channels, SILL, SIZE).load.lift.carryFilled).toBe(how)
  })
})
