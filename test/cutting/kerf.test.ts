import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkCutPlan, piecesFromOneBar, solveBars } from '../../shared-model/cutting'
import { mm } from '../../shared-model/units'

const SEED = 90_311

const cutFrom = (barMm: number, pieceMm: number, pieces: number, kerfMm: number) => {
  const result = piecesFromOneBar(mm(barMm), mm(pieceMm), pieces, mm(kerfMm))
  if (!result.ok) throw new Error(result.problem.code)
  return result.value
}

describe('pieces from one bar', () => {
  it('four 24 in pieces do not come from 8 ft at a 1/8 in kerf: the last is 3/8 in short (published worked example, 2025)', () => {
    const four = cutFrom(96 * 25.4, 24 * 25.4, 4, 0.125 * 25.4)
    expect(four.fits).toBe(false)
    expect(four.holds).toBe(3)
    // 4 × 24 + 3 × 1/8 − 96 = 3/8 in.
    expect(four.lastPieceShortMm).toBeCloseTo(0.375 * 25.4, 9)
  })

  it('two of 1000 mm and a 3 mm kerf come from 2003 mm and leave nothing', () => {
    // 1000 + 3 + 1000 = 2003: the second piece ends at the bar's end, so it needs no cut of its own.
    expect(cutFrom(2003, 1000, 2, 3)).toEqual({ fits: true, holds: 2, lastPieceShortMm: 0, leftoverMm: 0, cuts: 1 })
    expect(cutFrom(2002.999999, 1000, 2, 3).fits).toBe(false)
  })

  it('a sliver thinner than the kerf vanishes in the last cut', () => {
    // 2005 − 1000 − 3 − 1000 = 2 mm left, less than the 3 mm kerf.
    expect(cutFrom(2005, 1000, 2, 3)).toMatchObject({ fits: true, leftoverMm: 0, cuts: 2 })
    // 2010 − 2 × (1000 + 3) = 4 mm.
    expect(cutFrom(2010, 1000, 2, 3)).toMatchObject({ leftoverMm: 4, cuts: 2 })
  })

  it('names what is out of range, with both bounds', () => {
    const bad = piecesFromOneBar(mm(2000), mm(0), 1, mm(3))
    expect(bad).toEqual({
      ok: false,
      problem: { code: 'out-of-range', figures: { what: 'piece length', value: 0, least: 1, most: 100_000 } }
    })
    expect(piecesFromOneBar(mm(Number.NaN), mm(10), 1, mm(3))).toMatchObject({ problem: { code: 'not-finite' } })
  })

  it('holds as many as sawing them off one after the other does', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4000 }),
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 0, max: 12 }),
        (bar, piece, kerf) => {
          let left = bar
          let sawn = 0
          while (left >= piece) {
            left = Math.max(0, left - piece - kerf)
            sawn++
          }
          expect(cutFrom(bar, piece, 10_000, kerf).holds).toBe(sawn)
        }
      ),
      { seed: SEED, numRuns: 300 }
    )
  })
})

describe('kerf in a plan', () => {
  const plan = (length: number, kerf: number, piece: number, qty: number) =>
    solveBars(
      {
        kerf,
        stock: [{ length, cost: 1, count: null, trim: 0, keep: null, lot: 0 }],
        demand: [{ length: piece, qty, lotGroup: null }]
      },
      { budget: { work: 100_000, stop: () => false } }
    )

  it('four 24 in pieces take two 8 ft bars at 1/8 in, in eighths of an inch', () => {
    expect(plan(768, 1, 192, 4).cost).toBe(2)
    expect(plan(771, 1, 192, 4).cost).toBe(1)
  })

  it('one unit of length decides', () => {
    expect(plan(2003, 3, 1000, 2).cost).toBe(1)
    expect(plan(2002, 3, 1000, 2).cost).toBe(2)
  })

  it('the check piece by piece refuses a bar that is one unit too full', () => {
    const instance = {
      kerf: 3,
      stock: [{ length: 2002, cost: 1, count: null, trim: 0, keep: null, lot: 0 }],
      demand: [{ length: 1000, qty: 2, lotGroup: null }]
    }
    const check = checkCutPlan(instance, [{ stock: 0, times: 1, pieces: [{ demand: 0, qty: 2 }] }])
    expect(check.faults).toEqual([{ kind: 'bar-too-full', at: 0, amount: 1 }])
  })
})
