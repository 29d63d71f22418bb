import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mirrorDesign, parseDesign, parseWorkshop } from '../../shared-model/design'
import { evaluate, type Plan } from '../../shared-model/plan'
import { sayIn, wordsFor } from '../../shared-model/words'
import { anyDesign, anyWorkshop } from '../designs/arbitrary'

const PROVE = process.env.SILLWRIGHT_PROVE === '1'
/** Random designs through the whole plan: two in a hundred of the full count, and fewer for the costlier laws. */
const DESIGNS = PROVE ? 100_000 : 2_000
const RUNS = PROVE ? 3_000 : 25
const MS = PROVE ? 7_200_000 : 300_000
const QUICK = { budget: { work: 200, stop: () => false } }
const SEED = Number(process.env.SILLWRIGHT_SEED ?? 20_261_125)
const ON = '2026-05-01'

/** Every number in a plan, with its path. */
const numbers = (value: unknown, path = ''): readonly (readonly [string, number])[] => {
  if (typeof value === 'number') return [[path, value]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) => numbers(each, `${path}.${key}`))
}

const notFinite = (plan: Plan): readonly string[] =>
  numbers(plan).flatMap(([path, value]) => (Number.isFinite(value) ? [] : [path]))

/** Bars whose pieces, kerfs, trims and rest are more than the bar, or less by more than its kerfs, to the nanometre. */
const barsThatDoNotAddUp = (plan: Plan): readonly string[] =>
  plan.cuts.flatMap((cut) =>
    cut.bars.flatMap((bar) => {
      const piecesMm = bar.pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
      const kerfsMm = bar.lengthMm - bar.trimMm - piecesMm - bar.leftoverMm
      return kerfsMm > -1e-5 && kerfsMm < bar.cuts * cut.kerfMm + 1e-5 ? [] : [`${bar.key}: ${kerfsMm} mm of kerf`]
    })
  )

/** Pieces that are cut not once, nor said to be uncut; a piece that was joined is cut in parts of other names. */
const piecesNotCutOnce = (plan: Plan): readonly string[] => {
  if (plan.findings.some(({ code }) => code === 'piece-joined')) return []
  const cut = plan.cuts.flatMap(({ bars }) => bars.flatMap(({ pieces }) => pieces.map(({ pieceId }) => pieceId)))
  const uncut = plan.cuts.flatMap((each) => each.uncut.map(({ pieceId }) => pieceId))
  const told = [...cut, ...uncut].sort()
  const wanted = plan.pieces.map(({ id }) => id).sort()
  return told.join() === wanted.join() ? [] : [`wanted ${wanted.join()}, told ${told.join()}`]
}

describe('laws of a plan, for any design and workshop that the parser passes', () => {
  it(
    'works out without a throw, a NaN or an Infinity, and says all its findings in words',
    () => {
      fc.assert(
        fc.property(anyDesign, anyWorkshop, (design, workshop) => {
          const parsed = parseDesign(design)
          const shop = parseWorkshop(workshop)
          expect(parsed.ok ? [] : parsed.problem).toEqual([])
          expect(shop.ok ? [] : shop.problem).toEqual([])
          const plan = evaluate(design, workshop, ON, QUICK)
          expect(notFinite(plan)).toEqual([])
          const say = sayIn(workshop.shows, workshop.currency)
          for (const about of [...plan.findings, ...plan.problems]) {
            const { headline, todo } = wordsFor(about, say)
            expect(headline).not.toBe('')
            expect(`${headline} ${todo}`).not.toMatch(/undefined|NaN|Infinity|no number|\[object/)
          }
          expect(plan.channels.length + plan.problems.length).toBeGreaterThanOrEqual(design.channels.length)
          expect([...barsThatDoNotAddUp(plan), ...piecesNotCutOnce(plan)]).toEqual([])
          expect(plan.totals.litres).toBeCloseTo(
            plan.channels.reduce((sum, { water }) => sum + water.litres, 0),
            9
          )
        }),
        { seed: SEED, numRuns: DESIGNS }
      )
      console.log(`random designs: seed ${SEED}, ${DESIGNS} worked out, nothing lost`)
    },
    MS
  )

  it(
    'loses no length: pieces, kerfs, trims and what is left are the bars, to the nanometre',
    () => {
      fc.assert(
        fc.property(anyDesign, anyWorkshop, (design, workshop) => {
          const plan = evaluate(design, workshop, ON)
          expect(barsThatDoNotAddUp(plan)).toEqual([])
        }),
        { seed: SEED + 1, numRuns: RUNS }
      )
    },
    MS
  )

  it(
    'cuts every piece once, or says that it is not cut',
    () => {
      fc.assert(
        fc.property(anyDesign, anyWorkshop, (design, workshop) => {
          const plan = evaluate(design, workshop, ON)
          expect(piecesNotCutOnce(plan)).toEqual([])
        }),
        { seed: SEED + 2, numRuns: RUNS }
      )
    },
    MS
  )

  it(
    'gives the same plan from fresh objects as from those it has kept parts for',
    () => {
      fc.assert(
        fc.property(anyDesign, anyWorkshop, (design, workshop) => {
          evaluate(design, workshop, ON)
          const [first, ...rest] = design.channels
          const moved =
            first === undefined ? design : { ...design, channels: [{ ...first, xMm: first.xMm + 1 }, ...rest] }
          const kept = evaluate(moved, workshop, ON)
          const fresh = evaluate(structuredClone(moved), structuredClone(workshop), ON)
          expect(kept).toEqual(fresh)
        }),
        { seed: SEED + 3, numRuns: RUNS }
      )
    },
    MS
  )

  it(
    'gives the same sheets and drilling whatever other shops and counts were worked out in between',
    () => {
      const NEVER = { cuts: 'left-out', budget: { work: 0, stop: () => false } } as const
      fc.assert(
        fc.property(anyDesign, anyWorkshop, (design, workshop) => {
          const before = evaluate(structuredClone(design), structuredClone(workshop), ON, NEVER)
          const { times, sheets, sheetSetup } = workshop
          const shops = [
            { ...workshop, times: { ...times, toolChangeS: times.toolChangeS + 1, mountS: 0 } },
            { ...workshop, sheetSetup: { ...sheetSetup, webMm: sheetSetup.webMm + 1 } },
            { ...workshop, sheets: sheets.slice(1) }
          ]
          for (const shop of shops) {
            const kept = evaluate(design, shop, ON, NEVER)
            const fresh = evaluate(structuredClone(design), structuredClone(shop), ON, NEVER)
            expect(fresh.rings).toEqual(kept.rings)
            expect(fresh.bench).toEqual(kept.bench)
          }
          const more = { ...design, quantity: design.quantity + 1 }
          const kept = evaluate(more, workshop, ON, NEVER)
          expect(evaluate(structuredClone(more), structuredClone(workshop), ON, NEVER)).toEqual(kept)
          expect(evaluate(design, workshop, ON, NEVER)).toEqual(before)
        }),
        { seed: SEED + 6, numRuns: RUNS }
      )
    },
    MS
  )

  it(
    'mirrors with the design: the same levels, litres and seats in a mirrored window',
    () => {
      fc.assert(
        fc.property(anyDesign, anyWorkshop, (design, workshop) => {
          const plan = evaluate(design, workshop, ON, { cuts: 'left-out' })
          const mirrored = evaluate(mirrorDesign(design), workshop, ON, { cuts: 'left-out' })
          expect(mirrored.channels.length).toBe(plan.channels.length)
          plan.channels.forEach((channel, k) => {
            const other = mirrored.channels[k]
            expect(other?.seats).toEqual(channel.seats)
            expect(other?.water.litres).toBeCloseTo(channel.water.litres, 6)
            expect(other?.load.filledG).toBeCloseTo(channel.load.filledG, 3)
            expect(other?.load.centre.xMm).toBeCloseTo(plan.sill.lengthMm - channel.load.centre.xMm, 3)
            expect(other?.load.centre.yMm).toBeCloseTo(channel.load.centre.yMm, 3)
          })
        }),
        { seed: SEED + 4, numRuns: RUNS }
      )
    },
    MS
  )

  it(
    'has bill totals that are the sums of its lines, to the minor unit',
    () => {
      fc.assert(
        fc.property(anyDesign, anyWorkshop, (design, workshop) => {
          const { bill } = evaluate(design, workshop, ON)
          const totals = bill.lines.map(({ totalMinor }) => totalMinor)
          if (bill.totalMinor === null) return
          expect(totals).not.toContain(null)
          expect(totals.reduce<number>((sum, each) => sum + (each ?? 0), 0)).toBe(bill.totalMinor)
        }),
        { seed: SEED + 5, numRuns: RUNS }
      )
    },
    MS
  )
})
