import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drillOrder } from '../../shared-model/bench/drill-order'
import type { DrillPiece, DrillWork } from '../../shared-model/bench/drill-work'
import { handlingBound } from '../../shared-model/bench/handling'
import { leastWalk } from '../../shared-model/bench/least-walk'
import { follow } from './brute-force'
import { everyState } from './every-state'

const SEED = 31_179
const BUDGET = { work: 150, stop: () => false }
/** As many operations as every state of them can be gone through. */
const MOST_OPERATIONS = 10
/** A change and a clamping: from fewest changes first, over a clamping as dear as a change, to a clamping dearer. */
const COSTS = [
  [100, 1],
  [6, 2],
  [3, 2],
  [5, 4],
  [2, 2],
  [2, 3],
  [2, 6]
] as const

const pieceOf = (tools: readonly number[], afterOf: (o: number) => readonly number[]): DrillPiece => ({
  count: 1,
  waitsFor: [],
  operations: tools.map((tool, o) => ({ tool, after: afterOf(o) }))
})

/** Channels with sets of saws, collars (a, b, a), channels with a pilot first, and cores that wait for a collar before. */
const works = (tools: number, drills: number): fc.Arbitrary<DrillWork> => {
  const tool = fc.integer({ min: 0, max: tools - 1 })
  const piece = fc.record({
    kind: fc.constantFrom('set', 'set', 'set', 'collar', 'pilot first', 'core'),
    own: fc.shuffledSubarray([...Array(tools).keys()], { minLength: 1, maxLength: Math.min(5, tools) }),
    a: tool,
    b: tool
  })
  return fc.tuple(fc.array(piece, { minLength: 2, maxLength: 8 }), fc.constantFrom(...COSTS)).map(([drawn, costs]) => {
    const pieces: DrillPiece[] = []
    let operations = 0
    for (const { kind, own, a, b } of drawn) {
      const collar = pieces.findIndex((one) => one.operations.length === 3 && one.operations[2]?.after[0] === 1)
      const made =
        kind === 'collar' && a !== b
          ? pieceOf([a, b, a], (o) => (o > 0 ? [o - 1] : []))
          : kind === 'pilot first'
            ? pieceOf(own.slice(0, 4), (o) => (o > 0 ? [0] : []))
            : kind === 'core' && collar >= 0
              ? { ...pieceOf([a], () => []), waitsFor: [{ piece: collar, operation: 1 }] }
              : pieceOf(own, () => [])
      operations += made.operations.length
      if (operations > MOST_OPERATIONS) break
      pieces.push(made)
    }
    return { tools, drills, pieces, changeS: costs[0], mountS: costs[1] }
  })
}

describe('the bounds of the least handling', () => {
  it.each([
    [1, 4],
    [2, 5],
    [2, 6],
    [3, 6]
  ])('are never above what going through every state finds, with %i drills and %i tools', (drills, tools) => {
    fc.assert(
      fc.property(works(tools, drills), (work) => {
        const least = everyState(work)
        const order = drillOrder(work, BUDGET)
        const { changes, mounts } = follow(work, order.cells)
        const seconds = changes * work.changeS + mounts * work.mountS
        expect(order.seconds).toBe(seconds)
        expect(seconds).toBeGreaterThanOrEqual(least)
        if (order.leastProven) expect(seconds).toBe(least)
        expect(order.leastSeconds).toBeLessThanOrEqual(least + 1e-3)
        expect(handlingBound(work, order.leastChanges).seconds).toBeLessThanOrEqual(least)
        const walked = leastWalk(work, order.leastChanges, Number.POSITIVE_INFINITY, BUDGET)
        expect(walked.lowerBound).toBeLessThanOrEqual(least + 1e-3)
        if (walked.cells) {
          const way = follow(work, walked.cells)
          expect(way.changes * work.changeS + way.mounts * work.mountS).toBeGreaterThanOrEqual(least)
        }
      }),
      { seed: SEED, numRuns: 20 }
    )
  })

  it('meet for three channels with two of three saws each, a clamping being dear: three changes, three clampings', () => {
    // 0 1, then 1 2, then 2 0: each channel is clamped once and its second saw is the next one's first.
    const pieces = [
      [0, 1],
      [1, 2],
      [2, 0]
    ].map((tools) => pieceOf(tools, () => []))
    const order = drillOrder({ tools: 3, drills: 1, pieces, changeS: 2, mountS: 6 }, BUDGET)
    expect(order).toMatchObject({ changes: 3, mounts: 3, leastProven: true })
  })
})
