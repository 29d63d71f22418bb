import fc from 'fast-check'
import loadHighs from 'highs'
import { describe, expect, it } from 'vitest'
import {
  type CutInstance,
  checkCertificate,
  checkCutPlan,
  type InstanceStock,
  solveBars
} from '../../shared-model/cutting'
import { bruteForce } from './brute-force'

const highs = await loadHighs()
const SEED = 51_107
const PLENTY = { work: 20_000_000, stop: () => false }

const solve = (instance: CutInstance) => solveBars(instance, { budget: PLENTY, highs })

const stockBar: fc.Arbitrary<InstanceStock> = fc.record({
  length: fc.integer({ min: 12, max: 60 }),
  cost: fc.integer({ min: 3, max: 40 }),
  count: fc.option(fc.integer({ min: 1, max: 2 }), { nil: null }),
  trim: fc.integer({ min: 0, max: 2 }),
  keep: fc.option(
    fc.record({ from: fc.integer({ min: 4, max: 20 }), worth: fc.integer({ min: 1, max: 3 }), per: fc.constant(20) }),
    { nil: null }
  ),
  lot: fc.integer({ min: 0, max: 1 })
})

/** A kept leftover is never worth more than the bar it is from. */
const fairly = (bar: InstanceStock): InstanceStock => {
  const { keep } = bar
  return keep !== null && (bar.length * keep.worth) / keep.per > bar.cost ? { ...bar, keep: null } : bar
}

const anInstance = (mostPieces: number): fc.Arbitrary<CutInstance> =>
  fc
    .record({
      kerf: fc.integer({ min: 0, max: 3 }),
      stock: fc.array(stockBar.map(fairly), { minLength: 1, maxLength: 3 }),
      lengths: fc.array(
        fc.record({
          length: fc.integer({ min: 3, max: 30 }),
          lotGroup: fc.option(fc.integer({ min: 0, max: 1 }), { nil: null, freq: 4 })
        }),
        { minLength: 1, maxLength: mostPieces }
      )
    })
    .map(({ kerf, stock, lengths }) => ({
      kerf,
      // One stock without limit, so that there is always a plan.
      stock: [...stock, { length: 64, cost: 45, count: null, trim: 0, keep: null, lot: 0 }],
      demand: lengths.map(({ length, lotGroup }) => ({ length, qty: 1, lotGroup }))
    }))

const free = (instance: CutInstance): CutInstance => ({
  ...instance,
  demand: instance.demand.map((piece) => ({ ...piece, lotGroup: null }))
})

describe('laws of cutting bars', () => {
  it('a plan found by trying everything costs the same, with prices, counts, kerf, trim, kept offcuts and lots mixed', () => {
    fc.assert(
      fc.property(anInstance(7), (instance) => {
        const solved = solve(instance)
        expect(solved.proven).toBe(true)
        expect(solved.cost).toBe(bruteForce(instance))
      }),
      { seed: SEED, numRuns: 200 }
    )
  })

  it('every plan holds every piece once, and its certificate shows its bound', () => {
    fc.assert(
      fc.property(anInstance(14), (instance) => {
        const solved = solve(instance)
        const check = checkCutPlan(instance, solved.patterns)
        expect(check.faults).toEqual([])
        expect(check.cost).toBe(solved.cost)
        if (solved.certificate === null) throw new Error('no certificate')
        expect(checkCertificate(instance, solved.certificate)).toMatchObject({ valid: true })
        if (solved.shownBy === 'certificate') expect(solved.certificate.bound).toBe(solved.lowerBound)
      }),
      { seed: SEED, numRuns: 80 }
    )
  })

  it('an offcut more never raises the cost', () => {
    fc.assert(
      fc.property(anInstance(10), stockBar, (instance, offcut) => {
        const before = solve(free(instance)).cost
        const more = { ...fairly(offcut), count: 1, trim: 0 }
        expect(solve({ ...free(instance), stock: [...instance.stock, more] }).cost).toBeLessThanOrEqual(before)
      }),
      { seed: SEED, numRuns: 60 }
    )
  })

  it('a wider kerf never lowers the cost', () => {
    fc.assert(
      fc.property(anInstance(10), (instance) => {
        const before = solve(instance).cost
        const wider = { ...instance, kerf: instance.kerf + 1 }
        expect(solve(wider).cost).toBeGreaterThanOrEqual(before)
      }),
      { seed: SEED, numRuns: 60 }
    )
  })

  it('all lengths scaled alike leave the cost and the bars as they were', () => {
    fc.assert(
      fc.property(anInstance(10), fc.integer({ min: 2, max: 400_000 }), (instance, scale) => {
        const scaled: CutInstance = {
          kerf: instance.kerf * scale,
          stock: instance.stock.map((bar) => ({
            ...bar,
            length: bar.length * scale,
            trim: bar.trim * scale,
            keep: bar.keep === null ? null : { ...bar.keep, from: bar.keep.from * scale, per: bar.keep.per * scale }
          })),
          demand: instance.demand.map((piece) => ({ ...piece, length: piece.length * scale }))
        }
        const plain = solve(instance)
        expect(solve(scaled).patterns).toEqual(plain.patterns)
      }),
      { seed: SEED, numRuns: 40 }
    )
  })
})
