import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drillOrder } from '../../shared-model/bench/drill-order'
import type { DrillWork } from '../../shared-model/bench/drill-work'
import { keptOrder } from '../../shared-model/bench/kept-order'

const SEED = 31_178

const works: fc.Arbitrary<DrillWork> = fc
  .record({
    drills: fc.integer({ min: 1, max: 3 }),
    changeS: fc.constantFrom(0, 30, 60),
    mountS: fc.constantFrom(0, 20, 45),
    pieces: fc.array(
      fc.record({
        count: fc.integer({ min: 1, max: 3 }),
        tools: fc.uniqueArray(fc.integer({ min: 0, max: 2 }), { minLength: 1, maxLength: 3 })
      }),
      { minLength: 1, maxLength: 3 }
    )
  })
  .map(({ pieces, ...rest }) => ({
    ...rest,
    tools: 3,
    pieces: pieces.map(({ count, tools }) => ({
      count,
      waitsFor: [],
      operations: tools.map((tool) => ({ tool, after: [] }))
    }))
  }))

describe('a drilling order that is kept', () => {
  it('is the order that a fresh search finds, asked once or again, whatever was asked in between', () => {
    fc.assert(
      fc.property(fc.array(works, { minLength: 1, maxLength: 12 }), (asked) => {
        const budget = { work: 50, stop: () => false }
        for (const work of [...asked, ...asked]) expect(keptOrder(work, budget)).toEqual(drillOrder(work, budget))
      }),
      { seed: SEED, numRuns: 60 }
    )
  })

  it('is kept for its own allowance of work, and not at all where the search was told to stop', () => {
    const [work] = fc.sample(works, { seed: SEED, numRuns: 1 })
    if (work === undefined) throw new Error('no work was drawn')
    const fine = keptOrder({ ...work, changeS: 7 }, { work: 50, stop: () => false })
    expect(keptOrder({ ...work, changeS: 7 }, { work: 50, stop: () => false })).toBe(fine)
    expect(keptOrder({ ...work, changeS: 7 }, { work: 51, stop: () => false })).not.toBe(fine)
    const stopped = keptOrder({ ...work, changeS: 9 }, { work: 50, stop: () => true })
    expect(keptOrder({ ...work, changeS: 9 }, { work: 50, stop: () => false })).not.toBe(stopped)
  })
})
