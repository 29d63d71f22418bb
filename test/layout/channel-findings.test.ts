import { describe, expect, test } from 'vitest'
import {
  betweenChannels,
  type Channel,
  channelFindings,
  channelLayout,
  type LayoutFinding,
  mirrorChannels,
  type Sill,
  sillSize,
  spreadEvenly
} from '../../shared-model/layout'
import type { PartIndex } from '../../shared-model/seating'
import { build, CAP, CHANNEL, HERB, INDEX, must, PIPE_CAP, SAW, SILL, SIZE, TUBE } from '../reference/small-build'

interface Changes {
  readonly channel?: Partial<Channel>
  readonly sill?: Partial<Sill>
  readonly index?: PartIndex
  readonly onHand?: readonly (typeof CAP)[]
}

function findings({ channel, sill, index = INDEX, onHand = [] }: Changes): readonly LayoutFinding[] {
  const changed = { ...CHANNEL, xMm: 5, ...channel }
  const ground = { ...SILL, ...sill }
  const built = build(changed, ground, undefined, index)
  return channelFindings(
    { channel: changed, layout: built.layout, fits: built.fits },
    ground,
    must(sillSize(ground)),
    index,
    onHand
  )
}
const withCode = (changes: Changes, code: LayoutFinding['code']): LayoutFinding | undefined =>
  findings(changes).find((f) => f.code === code)
const site = (id: string, atMm: number): Channel['sites'][number] => ({
  id,
  atMm,
  seatId: 'seat',
  cropId: 'herb',
  locked: false
})

describe('a channel on its sill', () => {
  test('one that fits with its clearance has only the notes on refilling and reading its level', () => {
    expect(findings({}).map((f) => f.code)).toEqual(['no-refill-opening', 'no-level-sight'])
  })

  test('the least reading of the reveal rules; too long is a stop with the cut length that fits', () => {
    // readings 1210, 1206, 1208: room 1206 - 2 × 3 = 1200; closures add 4: cut 1196
    expect(SIZE.lengthMm).toBe(1206)
    expect(withCode({ channel: { lengthMm: 1200 } }, 'too-long-for-sill')).toMatchObject({
      severity: 'stop',
      figures: { overallMm: 1204, roomMm: 1200, cutMm: 1196 },
      fix: { field: 'channels.c1.lengthMm', value: 1196 }
    })
  })

  test('past an end of the sill is a stop that moving clears; past the front edge a warning', () => {
    expect(withCode({ channel: { xMm: 80, lengthMm: 1150, sites: [] } }, 'past-sill')).toMatchObject({
      severity: 'stop',
      figures: { edge: 'right', overMm: 26 },
      fix: { field: 'channels.c1.xMm', value: 51 }
    })
    expect(withCode({ channel: { yMm: 30 } }, 'over-front-edge')).toMatchObject({
      severity: 'warn',
      figures: { overMm: 8 }
    })
  })

  test('too high for the window: the stack is a stop, grown plants a warning', () => {
    // top of the cup's rim 52 above the sill, plants 300
    expect(withCode({ sill: { clearHeightMm: 51 } }, 'stack-too-high')?.severity).toBe('stop')
    expect(withCode({ sill: { clearHeightMm: 351 } }, 'plant-too-high')).toMatchObject({
      severity: 'warn',
      figures: { topMm: 352 }
    })
    expect(withCode({ sill: { clearHeightMm: 353 } }, 'plant-too-high')).toBeUndefined()
  })
})

describe('holes along the face', () => {
  test('webs stand in order from closure to closure', () => {
    // first hole 98 - 25.5 from the datum end, then 200 - 51, last 1196 - 1098 - 25.5
    const { layout } = build(CHANNEL)
    expect(layout.webs.map((w) => w.webMm)).toEqual([72.5, 149, 149, 149, 149, 149, 72.5])
  })

  test('a thin web is a warning, holes that meet are a stop, as are rims that meet', () => {
    expect(withCode({ channel: { sites: [site('a', 300), site('b', 359)] } }, 'web-thin')).toMatchObject({
      figures: { webMm: 8, leastMm: 10 }
    })
    expect(withCode({ channel: { sites: [site('a', 300), site('b', 350)] } }, 'holes-overlap')).toMatchObject({
      figures: { overlapMm: 1 }
    })
    expect(withCode({ channel: { sites: [site('a', 300), site('b', 359)] } }, 'rims-overlap')).toMatchObject({
      figures: { pitchMm: 59, rimMm: 60 }
    })
  })

  test('a hole in an end closure is a stop with the least end, cleared by moving it there', () => {
    const plug = { ...CAP, insideDepthMm: 30 }
    const index = { ...INDEX, closures: new Map([['cap', plug]]) }
    expect(withCode({ index, channel: { sites: [site('a', 50)] } }, 'hole-in-closure')).toMatchObject({
      severity: 'stop',
      figures: { overlapMm: 5.5, leastEndMm: 65.5 },
      fix: { field: 'channels.c1.sites.a.atMm', value: 65.5 }
    })
  })

  test('a hole off the channel, and one wider than the face, are stops', () => {
    expect(withCode({ channel: { sites: [site('a', 1300)] } }, 'hole-off-channel')?.severity).toBe('stop')
    const wide = { ...INDEX, saws: new Map([['saw-51', { ...SAW, diameterMm: 80 }]]) }
    expect(withCode({ index: wide, channel: { sites: [site('a', 600)] } }, 'hole-wider-than-face')).toMatchObject({
      figures: { holeMm: 80, flatMm: 76 }
    })
  })

  test('plants nearer than the crop’s spacing are a warning, once for a crop', () => {
    const close = [300, 440, 580].map((at, i) => site(`s${i}`, at))
    const found = findings({ channel: { sites: close } }).filter((f) => f.code === 'plants-crowded')
    expect(found).toHaveLength(1)
    expect(found[0]).toMatchObject({ figures: { crop: HERB.name, pitchMm: 140, leastMm: 150 } })
  })
})

describe('end closures', () => {
  test('a cap of another size is a stop that names the ones that fit', () => {
    expect(withCode({ channel: { farClosureId: 'pipe-cap' } }, 'closure-wrong-size')).toMatchObject({
      severity: 'stop',
      figures: { fits: CAP.name },
      fix: { field: 'channels.c1.farClosureId', value: 'cap' }
    })
  })

  test('solvent cement on polyolefin does not hold, nor a closure on a material it is not made for', () => {
    const hdpe = { ...TUBE, material: 'hdpe' as const }
    const made = { ...CAP, holdsOn: { ...CAP.holdsOn, materials: ['hdpe' as const] } }
    const index = { ...INDEX, profiles: new Map([['tube', hdpe]]), closures: new Map([['cap', made]]) }
    expect(withCode({ index }, 'joint-does-not-hold')).toMatchObject({
      severity: 'stop',
      figures: { joint: 'solvent-cement', material: 'hdpe' }
    })
    expect(
      withCode({ index: { ...index, closures: new Map([['cap', CAP]]) } }, 'closure-wrong-material')?.severity
    ).toBe('stop')
  })

  test('the only one on hand that fits is named and one click away, though the design does not carry it', () => {
    const index = { ...INDEX, closures: new Map([['cap', { ...PIPE_CAP, id: 'cap' }]]) }
    const found = withCode({ index, onHand: [{ ...CAP, id: 'shelf-cap', name: 'Shelf plate' }] }, 'closure-wrong-size')
    expect(found?.figures).toMatchObject({ fits: 'Shelf plate' })
    expect(found?.fix?.value).toBe('shelf-cap')
  })
})

describe('between channels', () => {
  const laid = (changes: Partial<Channel>): Parameters<typeof betweenChannels>[0][number] => {
    const channel = { ...CHANNEL, ...changes }
    const built = build(channel)
    return { channel, layout: built.layout, fits: built.fits }
  }

  test('overall outlines that reach into each other clash; ones that touch do not', () => {
    // 76 wide: at y 50 and 126 they touch, at 50 and 120 they overlap by 6
    const apart = betweenChannels([laid({ yMm: 50 }), laid({ id: 'c2', yMm: 126 })], SILL)
    expect(apart.filter((f) => f.code === 'channels-clash')).toEqual([])
    const near = betweenChannels([laid({ yMm: 50 }), laid({ id: 'c2', name: 'Back', yMm: 120 })], SILL)
    expect(near).toContainEqual(
      expect.objectContaining({ code: 'channels-clash', figures: { other: 'Front', overlapMm: 6 } })
    )
  })

  test('an obstacle under the outline is a stop, unless the channel stands above it', () => {
    const handle = { id: 'o', name: 'Handle', xMm: 100, yMm: 90, lengthMm: 20, depthMm: 20, heightMm: 25 }
    const sill = { ...SILL, obstacles: [handle] }
    expect(betweenChannels([laid({})], sill)[0]).toMatchObject({ code: 'obstacle-clash', severity: 'stop' })
    const supports = [{ id: 'f', atMm: 100, alongMm: 40, acrossMm: 60, heightMm: 30 }]
    expect(betweenChannels([laid({ supports })], sill).some((f) => f.code === 'obstacle-clash')).toBe(false)
  })

  test('canopies that reach over a tenth into each other are noted', () => {
    // canopies of 200 mm at 120 mm: 80 mm of 200
    const found = betweenChannels([laid({ sites: [site('a', 300), site('b', 420)] })], SILL)
    expect(found).toContainEqual(
      expect.objectContaining({ code: 'canopies-overlap', figures: { pairs: 1, overlapMm: 80, share: 0.4 } })
    )
  })
})

describe('placing', () => {
  test('mirroring the sill twice gives the same channels, and mirrors every hole', () => {
    const [mirrored] = mirrorChannels([CHANNEL], 1206)
    if (!mirrored) throw new Error('one channel gives one')
    const here = build(CHANNEL).layout
    const there = build(mirrored).layout
    expect(there.holes.map((h) => h.xMm)).toEqual(here.holes.map((h) => 1206 - h.xMm))
    expect(there.outline.xMm).toBeCloseTo(1206 - here.outline.xMm - here.outline.lengthMm, 9)
    expect(mirrorChannels(mirrorChannels([CHANNEL], 1206), 1206)).toEqual([CHANNEL])
  })

  test('free sites are spread between the locked ones', () => {
    const sites = [
      site('a', 10),
      { ...site('b', 500), locked: true },
      site('c', 600),
      site('d', 620),
      { ...site('e', 1100), locked: true }
    ]
    expect(spreadEvenly(sites, { lengthMm: 1196, leastEndMm: 60 }).map((s) => s.atMm)).toEqual([
      60, 500, 700, 900, 1100
    ])
  })

  test('a wall thicker than half the side, a negative one and a missing profile are problems', () => {
    for (const averageWallMm of [-1, 26]) {
      const index = { ...INDEX, profiles: new Map([['tube', { ...TUBE, averageWallMm }]]) }
      expect(channelLayout(CHANNEL, [], index, 1)).toMatchObject({
        ok: false,
        problem: { code: 'wall-outside', figures: { valueMm: averageWallMm, mostMm: 25 } }
      })
    }
    expect(channelLayout({ ...CHANNEL, profileId: 'none' }, [], INDEX, 1)).toMatchObject({
      ok: false,
      problem: { code: 'channel-part-missing' }
    })
    expect(channelLayout({ ...CHANNEL, lengthMm: Number.NaN }, [], INDEX, 1)).toMatchObject({
      ok: false,
      problem: { code: 'not-finite' }
    })
    expect(sillSize({ lengthsMm: [], depthsMm: [200] })).toMatchObject({
      ok: false,
      problem: { code: 'no-sill-reading' }
    })
    expect(sillSize({ lengthsMm: [1e6], depthsMm: [200] })).toMatchObject({
      problem: { figures: { value: 1e6, least: 1, most: 20000 } }
    })
  })
})
