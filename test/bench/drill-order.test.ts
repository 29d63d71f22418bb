import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drillOrder } from '../../shared-model/bench/drill-order'
import type { DrillPiece, DrillWork } from '../../shared-model/bench/drill-work'
import { leastWalk } from '../../shared-model/bench/least-walk'
import { bruteForce, changesByForce, follow } from './brute-force'

interface BatchRule {
  readonly channels: number
  readonly tools: number
  readonly tool_change_s: number
  readonly clamp_s: number
  readonly best: number
}

/** Alike channels with tools in one fixed order; equal to exhaustive shortest paths on 250 random cases. */
const REFERENCE: { readonly batchRule: { readonly cases: readonly BatchRule[] } } = JSON.parse(
  readFileSync(new URL('../reference/bench-cases.json', import.meta.url), 'utf8')
)

const BUDGET = { work: 20_000, stop: () => false }
const SEED = 31_177

const piece = (tools: readonly number[], inOrder: boolean, count = 1): DrillPiece => ({
  count,
  waitsFor: [],
  operations: tools.map((tool, i) => ({ tool, after: inOrder && i > 0 ? [i - 1] : [] }))
})

const chain = (...tools: readonly number[]): DrillPiece => piece(tools, true)
const set = (...tools: readonly number[]): DrillPiece => piece(tools, false)

const work = (pieces: readonly DrillPiece[], drills: number, changeS = 0, mountS = 0): DrillWork => ({
  tools: 1 + Math.max(...pieces.flatMap(({ operations }) => operations.map(({ tool }) => tool))),
  drills,
  pieces,
  changeS,
  mountS
})

/** A collar (larger, smaller, larger), a channel's set of saws, or a core that waits for the piece before it. */
const pieces = (tools: number, most: number, alike: number) =>
  fc
    .array(
      fc.record({
        kind: fc.constantFrom('collar', 'set', 'core'),
        a: fc.integer({ min: 0, max: tools - 1 }),
        b: fc.integer({ min: 0, max: tools - 1 }),
        saws: fc.subarray(
          Array.from({ length: tools }, (_, i) => i),
          { minLength: 1 }
        ),
        count: fc.integer({ min: 1, max: alike })
      }),
      { minLength: 1, maxLength: most }
    )
    .map((drawn): readonly DrillPiece[] =>
      drawn.map(({ kind, a, b, saws, count }, i): DrillPiece => {
        if (kind === 'set') return piece(saws, false, count)
        const before = drawn[i - 1]
        const isCore = kind === 'core' && before?.kind === 'collar' && before.a !== before.b
        if (isCore)
          return { count: 1, waitsFor: [{ piece: i - 1, operation: 1 }], operations: [{ tool: a, after: [] }] }
        return a === b ? set(a) : chain(Math.max(a, b), Math.min(a, b), Math.max(a, b))
      })
    )

/** One sheet with two kinds of collars: the outer saw scores, both inner saws go through, the outer finishes each. */
const SHEET: DrillPiece = {
  count: 1,
  waitsFor: [],
  operations: [
    { tool: 2, after: [] },
    { tool: 0, after: [0] },
    { tool: 2, after: [1] },
    { tool: 1, after: [0] },
    { tool: 2, after: [3] }
  ]
}

describe('the order of drilling', () => {
  it.each(REFERENCE.batchRule.cases)(
    '$channels channels, $tools tools, change $tool_change_s s, clamping $clamp_s s: $best s',
    ({ channels, tools, tool_change_s, clamp_s, best }) => {
      const alike = piece(
        Array.from({ length: tools }, (_, i) => i),
        true,
        channels
      )
      const batch = work([alike], 1, tool_change_s, clamp_s)
      const order = drillOrder(batch, BUDGET)
      const { changes, mounts } = follow(batch, order.cells)
      expect(changes * tool_change_s + mounts * clamp_s).toBe(best)
      expect(order).toMatchObject({ seconds: best, leastSeconds: best, leastProven: true })
    }
  )

  it('changes twice for collars of one size, whatever the batch: larger, smaller, larger', () => {
    const order = drillOrder(work([{ ...chain(1, 0, 1), count: 40 }], 1), BUDGET)
    expect(order).toMatchObject({ changes: 2, leastChanges: 2, proven: true })
  })

  it('needs no change for them with two drills', () => {
    expect(drillOrder(work([chain(1, 0, 1)], 2), BUDGET)).toMatchObject({ changes: 0, proven: true })
  })

  it('finds the shortest common supersequence of 2 1 2, 3 2 3 and 3 1 3: five runs', () => {
    // 3 2 1 2 3 holds all three; 2 and 3 are each needed twice and 1 once, so fewer than five runs cannot do.
    const order = drillOrder(work([chain(2, 1, 2), chain(3, 2, 3), chain(3, 1, 3)], 1), BUDGET)
    expect(order).toMatchObject({ changes: 4, leastChanges: 4, proven: true })
  })

  it('clamps channels in turn there and back: three channels with the same two saws are clamped five times', () => {
    // 1 2 3 with the first saw, then 3 stays clamped for the second: 2 1. Six visits less one carried.
    const order = drillOrder(work([{ ...set(0, 1), count: 3 }], 1), BUDGET)
    expect(order).toMatchObject({ changes: 1, mounts: 5, leastProven: true })
  })

  it('is as good as trying everything, with and without times, with one, two or three drills', () => {
    const cases = fc.record({
      batch: pieces(3, 2, 2),
      drills: fc.integer({ min: 1, max: 3 }),
      times: fc.constantFrom([0, 0], [30, 10], [10, 30], [20, 20], [0, 10], [10, 0])
    })
    fc.assert(
      fc.property(cases, ({ batch, drills, times: [changeS = 0, mountS = 0] }) => {
        const one = work(batch, drills, changeS, mountS)
        const order = drillOrder(one, BUDGET)
        const { changes, mounts } = follow(one, order.cells)
        expect([order.changes, order.mounts]).toEqual([changes, mounts])
        expect(order.leastProven).toBe(true)
        if (changeS + mountS > 0) expect(order.seconds).toBeCloseTo(bruteForce(one, changeS, mountS), 6)
        else expect(changes * 1000 + mounts).toBe(bruteForce(one, 1000, 1))
      }),
      { seed: SEED, numRuns: 60 }
    )
  })

  it('turns to the wider saw twice for two kinds of collars of one sheet, not once for each that it finishes', () => {
    // 2 scores, 0 and 1 go through, 2 finishes both: three changes, the sheet clamped once.
    expect(drillOrder(work([SHEET], 1, 30, 20), BUDGET)).toMatchObject({ changes: 3, mounts: 1, leastProven: true })
  })

  it('keeps a piece clamped over two changes where one more tool on it saves a clamping', () => {
    // Two channels with four saws, two drills: 0 1, then 1 2, then 2 3. One channel gets all three fittings in one clamping.
    expect(drillOrder(work([{ ...set(0, 1, 2, 3), count: 2 }], 2), BUDGET)).toMatchObject({ changes: 2, mounts: 3 })
  })

  it('never holds as proven what trying everything betters, and its walks bound it from below, with sheets and four saws', () => {
    const cases = fc.record({
      batch: pieces(4, 2, 2),
      sheets: fc.integer({ min: 0, max: 1 }),
      drills: fc.integer({ min: 1, max: 3 }),
      times: fc.constantFrom([1000, 1], [30, 10], [20, 15], [10, 10], [10, 20])
    })
    fc.assert(
      fc.property(cases, ({ batch, sheets, drills, times: [changeS = 0, mountS = 0] }) => {
        const one = work(sheets > 0 ? [...batch, SHEET] : batch, drills, changeS, mountS)
        const order = drillOrder(one, BUDGET)
        const { changes, mounts } = follow(one, order.cells)
        const least = bruteForce(one, changeS, mountS)
        if (order.leastProven) expect(changes * changeS + mounts * mountS).toBe(least)
        const walked = leastWalk(one, order.leastChanges, Number.POSITIVE_INFINITY, BUDGET)
        expect(walked.lowerBound).toBeLessThanOrEqual(least + 1e-6)
      }),
      { seed: SEED, numRuns: 40 }
    )
  })

  it('has the fewest changes that any order of fitting has, up to eight chains and sets of five saws', () => {
    const cases = fc.tuple(pieces(5, 8, 1), fc.integer({ min: 1, max: 3 }))
    fc.assert(
      fc.property(cases, ([batch, drills]) => {
        const one = work(batch, drills)
        const order = drillOrder(one, { work: 50, stop: () => false })
        follow(one, order.cells)
        const least = changesByForce(one)
        expect([order.changes, order.leastChanges, order.proven]).toEqual([least, least, true])
      }),
      { seed: SEED, numRuns: 40 }
    )
  })

  it('proves the fewest changes for 24 channels with six saws and eight kinds of collars', () => {
    const cases = fc.tuple(pieces(6, 32, 2), fc.integer({ min: 1, max: 3 }))
    fc.assert(
      fc.property(cases, ([batch, drills]) => {
        const one = work(batch, drills)
        const order = drillOrder(one, { work: 50, stop: () => false })
        const { changes } = follow(one, order.cells)
        expect([order.changes, order.leastChanges, order.proven]).toEqual([changes, changes, true])
      }),
      { seed: SEED, numRuns: 40 }
    )
  })

  it('never takes less time than its bound says', () => {
    const cases = fc.record({
      batch: pieces(5, 10, 3),
      drills: fc.integer({ min: 1, max: 3 }),
      changeS: fc.integer({ min: 1, max: 60 }),
      mountS: fc.integer({ min: 1, max: 60 })
    })
    fc.assert(
      fc.property(cases, ({ batch, drills, changeS, mountS }) => {
        const one = work(batch, drills, changeS, mountS)
        const order = drillOrder(one, { work: 100, stop: () => false })
        const { changes, mounts } = follow(one, order.cells)
        const seconds = changes * changeS + mounts * mountS
        return order.seconds === seconds && order.leastSeconds <= seconds && order.leastChanges <= changes
      }),
      { seed: SEED, numRuns: 40 }
    )
  })
})
