import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mirrorDesign } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { anyDesign, anyWorkshop } from '../designs/arbitrary'
import { barsThatDoNotAddUp, piecesNotCutOnce } from '../proofs/figures'

const PROVE = process.env.SILLWRIGHT_PROVE === '1'
/** The costlier laws: random designs through the whole plan at full count are a proof of their own. */
const RUNS = PROVE ? 1_000 : 25
const MS = PROVE ? 7_200_000 : 900_000
const SEED = Number(process.env.SILLWRIGHT_SEED ?? 20_261_125)
const ON = '2026-05-01'

describe('laws of a plan, for any design and workshop that the parser passes', () => {
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
          expect(piecesNotCutOnce(plan, design.atBench)).toEqual([])
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
