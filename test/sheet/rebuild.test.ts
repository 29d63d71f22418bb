import { describe, expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import type { Design, Workshop } from '../../shared-model/design'
import { DEMOS } from '../../shared-model/design'
import { docDefinition, type Paper } from '../../shared-model/paper'
import { evaluate, type Plan } from '../../shared-model/plan'
import { buildSheet } from '../../shared-model/sheet'
import { graduationNm, NM_PER_MM } from '../../shared-model/units'
import { randomBuild } from './random-design'
import { type ReadBuild, readBuild } from './read-build'
import { readPdf } from './read-pdf'

const ON = '2026-03-14'
/** Each build has a seed of its own, counted on from this one. */
const SEED = Number(process.env.SILLWRIGHT_SEED ?? 20_260_314)
const FULL = 200
/** Full count of the long proof, or so many in a hundred of it; a run of all tests takes a few of them. */
const COUNT = Math.ceil((FULL * Number(process.env.SILLWRIGHT_SHARE ?? 2)) / 100)

/** Bench parts only: what a worker builds from. */
const PARTS = ['build', 'cuts', 'drilling', 'collars'] as const

const printedBuild = async (
  design: Design,
  workshop: Workshop,
  paper: Paper
): Promise<{ plan: Plan; read: ReadBuild }> => {
  const plan = evaluate(design, workshop, ON)
  const sheet = buildSheet(plan, design, workshop, { parts: PARTS })
  const { sheets } = await readPdf(await writePdf(docDefinition(sheet, { paper })))
  // Words past the foot of a page would be lost on paper.
  for (const page of sheets) {
    for (const one of page.lettering)
      expect(one.yMm, `${one.text} on sheet ${page.number}`).toBeLessThan(page.heightMm - 12.7)
  }
  return { plan, read: readBuild(sheets, workshop.shows.units, workshop.shows.decimalMark) }
}

/** Follows the printed figures as a worker would, and compares what comes out with the plan. */
const followed = ({ plan, read }: { plan: Plan; read: ReadBuild }, workshop: Workshop): void => {
  const half = graduationNm(workshop.shows) / NM_PER_MM / 2 + 1e-6
  const near = (got: number, wanted: number, what: string): void => {
    expect(Math.abs(got - wanted), `${what}: printed ${got}, planned ${wanted}`).toBeLessThanOrEqual(half)
  }
  const bars = plan.cuts.flatMap((cuts) => cuts.bars)
  expect(read.bars.map((bar) => bar.mark)).toEqual(bars.map((bar) => bar.mark))
  for (const [index, bar] of bars.entries()) {
    const got = read.bars[index]
    if (got === undefined) continue
    near(got.lengthMm, bar.lengthMm, `bar ${bar.mark}`)
    near(got.leftMm, bar.leftoverMm, `left of bar ${bar.mark}`)
    expect(got.kept).toBe(bar.keep)
    expect(got.pieces).toBe(bar.pieces.length)
    expect(got.from).toBe(bar.isOffcut ? 'from the rack' : 'new bar')
  }
  const cut = bars.flatMap((bar) => bar.pieces.map((piece) => ({ bar: bar.mark, piece })))
  expect(read.pieces.map((piece) => `${piece.bar} ${piece.mark}`)).toEqual(
    cut.map(({ bar, piece }) => `${bar} ${piece.mark}`)
  )
  for (const [index, { piece }] of cut.entries()) {
    const got = read.pieces[index]
    if (got === undefined) continue
    // A piece is set on the graduation before it is planned: print and plan agree to the last graduation.
    expect(got.lengthMm).toBeCloseTo(piece.lengthMm, 4)
    near(got.startMm, piece.startMm, `start of ${piece.mark}`)
    const channel = plan.channels.find(
      ({ channelId }) => plan.pieces.find(({ id }) => id === piece.pieceId)?.channelId === channelId
    )
    expect(got.channel).toBe(channel?.mark)
  }
  for (const channel of plan.channels) {
    const piece = plan.pieces.find(({ channelId }) => channelId === channel.channelId)
    const got = read.channels.find(({ mark }) => mark === channel.mark)
    expect(got?.lengthMm).toBeCloseTo(piece?.lengthMm ?? channel.layout.cutLengthMm, 1)
    holesFollowed(plan, read, channel, half, workshop.shows.units)
  }
}

const holesFollowed = (
  plan: Plan,
  read: ReadBuild,
  channel: Plan['channels'][number],
  half: number,
  units: 'in' | 'mm'
): void => {
  const planned = plan.bench.holes
    .filter(({ channelId }) => channelId === channel.channelId)
    .sort((a, b) => a.atMm - b.atMm)
  const got = read.holes.filter((hole) => hole.channel === channel.mark)
  expect(got.map((hole) => hole.mark)).toEqual(planned.map((hole) => hole.mark))
  // Every hole the layout has is on the bench plan, and so on the sheet.
  expect(planned.map((hole) => hole.holeId).sort()).toEqual(channel.layout.holes.map((hole) => hole.id).sort())
  for (const [index, hole] of planned.entries()) {
    const printed = got[index]
    if (printed === undefined) continue
    expect(Math.abs(printed.atMm - hole.atMm), `hole ${hole.mark}`).toBeLessThanOrEqual(half)
    // Diameters are printed to 1/32 in or 0.1 mm.
    expect(Math.abs(printed.diameterMm - hole.diameterMm)).toBeLessThanOrEqual(
      (units === 'in' ? 25.4 / 64 : 0.05) + 1e-6
    )
    expect(printed.face).toBe(hole.face.replace('-', ' '))
    if (hole.heightMm !== null) {
      const upMm = (printed.upMm ?? Number.NaN) - channel.layout.section.averageWallMm
      expect(Math.abs(upMm - hole.heightMm)).toBeLessThanOrEqual(half)
    }
    const order = hole.concentric.length > 1 ? hole.concentric.join(' → ') : hole.sawName || 'twist drill'
    expect(printed.saws.replace(/\s+/g, ' ')).toBe(order)
  }
}

describe('the sheet alone rebuilds the design', () => {
  for (const demo of DEMOS) {
    for (const [units, paper] of [
      ['in', 'letter'],
      ['mm', 'a4'],
      ['in', 'a4'],
      ['mm', 'letter']
    ] as const) {
      test(`${demo.name}: ${units} on ${paper}`, async () => {
        const workshop = { ...demo.workshop, shows: { ...demo.workshop.shows, units } }
        const built = await printedBuild(demo.design, workshop, paper)
        expect(built.read.holes.length).toBeGreaterThan(0)
        followed(built, workshop)
      })
    }
  }

  test(`${COUNT} builds drawn at random, seed ${SEED}, papers and units in turn`, async () => {
    for (let index = 0; index < COUNT; index += 1) {
      const { design, workshop } = randomBuild(SEED + index, index % 2 === 0 ? 'in' : 'mm')
      followed(await printedBuild(design, workshop, index % 4 < 2 ? 'letter' : 'a4'), workshop)
    }
  }, 1_800_000)
})
