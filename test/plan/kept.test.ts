import { isDeepStrictEqual } from 'node:util'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEMOS, type Design, type Workshop } from '../../shared-model/design'
import type { Channel, Heading } from '../../shared-model/layout'
import { type EvaluateOptions, evaluate } from '../../shared-model/plan'
import { anyDesign, anyWorkshop } from '../designs/arbitrary'

const PROVE = process.env.SILLWRIGHT_PROVE === '1'
const RUNS = PROVE ? 400 : 8
const SEED = Number(process.env.SILLWRIGHT_SEED ?? 20_261_125)
const MS = PROVE ? 7_200_000 : 900_000
const ON = '2026-05-01'
const CHANNELS = 60

/** A random design's channels over and over, each with a place of its own. */
const sixtyChannels = (design: Design): Design => ({
  ...design,
  channels: Array.from({ length: design.channels.length === 0 ? 0 : CHANNELS }, (_, k) => {
    const model = design.channels[k % design.channels.length]
    if (model === undefined) throw new Error('there is a channel')
    return { ...model, id: `c${k + 1}`, name: `Row ${k + 1}`, xMm: model.xMm + 7 * k, yMm: model.yMm + 31 * k }
  })
})

interface Documents {
  readonly design: Design
  readonly workshop: Workshop
  readonly options: EvaluateOptions
}

type Edit = (before: Documents, first: Documents) => Documents

const MOVING: EvaluateOptions = { cuts: 'left-out' }
const RESTING: EvaluateOptions = { budget: { work: 200, stop: () => false } }
const STOPPED: EvaluateOptions = { budget: { work: 200, stop: () => true } }

const inDesign =
  (change: (design: Design) => Partial<Design>): Edit =>
  (before) => ({ ...before, design: { ...before.design, ...change(before.design) } })

/** Changes the channel that a number picks. */
const inChannel = (pick: number, change: (channel: Channel) => Partial<Channel>): Edit =>
  inDesign(({ channels }) => ({
    channels: channels.map((channel, k) =>
      k === pick % channels.length ? { ...channel, ...change(channel) } : channel
    )
  }))

const pick = fc.integer({ min: 0, max: 1_000 })
const tenths = fc.integer({ min: -300, max: 12_000 }).map((value) => value / 10)

const moved = fc.tuple(pick, tenths, tenths).map(([k, xMm, yMm]) => inChannel(k, () => ({ xMm, yMm })))

const edit: fc.Arbitrary<Edit> = fc.oneof(
  { arbitrary: moved, weight: 6 },
  fc.tuple(pick, fc.constantFrom<Heading>(0, 90, 180, 270)).map(([k, heading]) => inChannel(k, () => ({ heading }))),
  fc.tuple(pick, pick).map(([k, mm]) => inChannel(k, ({ lengthMm }) => ({ lengthMm: Math.max(60, lengthMm - mm) }))),
  fc.tuple(pick, pick).map(([k, share]) => inChannel(k, () => ({ fillShare: share / 1_000 }))),
  pick.map((k) => inChannel(k, ({ turned }) => ({ turned: !turned }))),
  pick.map((k) => inChannel(k, ({ sites }) => ({ sites: sites.slice(1) }))),
  fc
    .tuple(pick, tenths)
    .map(([k, atMm]) =>
      inChannel(k, ({ sites }) => ({ sites: sites.map((site, s) => (s === 0 ? { ...site, atMm } : site)) }))
    ),
  pick.map((k) => inChannel(k, ({ sites }) => ({ sites: sites.map((site) => ({ ...site, cropId: null })) }))),
  pick.map((k) => inChannel(k, () => ({ openings: [], supports: [] }))),
  pick.map((k) => inDesign(({ channels }) => ({ channels: channels.toSpliced(k % channels.length, 1) }))),
  pick.map((k) =>
    inDesign(({ channels }) => ({
      channels: [...channels, ...channels.slice(0, 1).map((one) => ({ ...one, id: `n${k}` }))]
    }))
  ),
  fc.constant(inDesign(({ channels }) => ({ channels: channels.toReversed() }))),
  pick.map((k) => inDesign(() => ({ growthShare: k / 1_000 }))),
  pick.map((k) => inDesign(() => ({ quantity: 1 + (k % 3) }))),
  pick.map((k) => inDesign(({ sill }) => ({ sill: { ...sill, fallAlongMmPerM: (k % 11) - 5 } }))),
  fc.constant(inDesign(({ water }) => ({ water: { ...water, endShare: water.endShare / 2 } }))),
  fc.constant<Edit>(({ design, workshop, options }) => ({
    design,
    workshop: { ...workshop, saws: workshop.saws.slice(1), sheets: workshop.sheets.slice(1) },
    options
  })),
  pick.map(
    (k): Edit =>
      ({ design, workshop, options }) => ({
        design,
        workshop: { ...workshop, pricing: { ...workshop.pricing, hourlyRateMinor: k }, shelf: [] },
        options
      })
  ),
  pick.map((k) =>
    inDesign(({ channels }) => ({
      atBench: {
        pins: channels.slice(0, 1).map(({ id }) => ({ pieceId: `${id}.1`, barKey: `bar ${k % 3}` })),
        bars: []
      }
    }))
  ),
  fc.constantFrom(MOVING, RESTING, STOPPED).map(
    (options): Edit =>
      (before) => ({ ...before, options })
  ),
  // Undone at one go.
  fc.constant<Edit>((_, first) => first)
)

describe('a plan that keeps what an edit leaves alone', () => {
  it(
    'is the plan of a fresh run, to the last bit, through random edits of designs of 60 channels',
    () => {
      fc.assert(
        fc.property(
          anyDesign,
          anyWorkshop,
          fc.array(edit, { minLength: 3, maxLength: 9 }),
          (design, workshop, edits) => {
            const first: Documents = { design: sixtyChannels(design), workshop, options: MOVING }
            const documents = [first]
            for (const change of edits) documents.push(change(documents.at(-1) ?? first, first))
            // All with what was kept; then each from copies, of which nothing can be kept.
            const kept = documents.map((each) => evaluate(each.design, each.workshop, ON, each.options))
            documents.forEach((each, k) => {
              const fresh = evaluate(structuredClone(each.design), structuredClone(each.workshop), ON, each.options)
              if (!isDeepStrictEqual(kept[k], fresh)) expect(kept[k]).toEqual(fresh)
              expect(isDeepStrictEqual(kept[k], fresh)).toBe(true)
            })
          }
        ),
        { seed: SEED + 7, numRuns: RUNS }
      )
    },
    MS
  )

  it('works out only the channel that is moved, and neither bench plan, bill nor price', () => {
    for (const demo of DEMOS) {
      const design = sixtyChannels(demo.design)
      const before = evaluate(design, demo.workshop, ON, MOVING)
      const channels = design.channels.map((channel, k) => (k === 20 ? { ...channel, xMm: channel.xMm + 3 } : channel))
      const after = evaluate({ ...design, channels }, demo.workshop, ON, MOVING)
      expect(after.channels.length).toBe(CHANNELS)
      after.channels.forEach((channel, k) => {
        if (k === 20) expect(channel.layout).not.toBe(before.channels[k]?.layout)
        else expect([channel.layout, channel.water, channel.load]).toSatisfy(isAll(before.channels[k]))
      })
      expect(after.bench.holes).toBe(before.bench.holes)
      expect(after.bill).toBe(before.bill)
      expect(after.pricing).toBe(before.pricing)
      expect(after.pieces).toBe(before.pieces)
    }
  })
})

/** The very objects of a channel's part. */
const isAll =
  (before: { readonly layout: unknown; readonly water: unknown; readonly load: unknown } | undefined) =>
  ([layout, water, load]: readonly unknown[]): boolean =>
    layout === before?.layout && water === before?.water && load === before?.load
