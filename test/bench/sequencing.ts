import { benchPlan } from '../../shared-model/bench'
import { drillOrder } from '../../shared-model/bench/drill-order'
import type { DrillPiece, DrillWork } from '../../shared-model/bench/drill-work'
import { channel, hole, input } from './a-bench'
import { type BenchRow, measure } from './measure'

const BUDGET = { work: 300, stop: () => false }

/** Times of the drilling order and of the whole bench plan; the data are fixed, so are the checksums. */
export const benchSequencing = (): readonly BenchRow[] => [
  measure('fewest changes: 24 channels, 6 saws, 8 kinds of collars, 1 drill', () => orderOf(1, 0, 0)),
  measure('fewest changes: 24 channels, 6 saws, 8 kinds of collars, 2 drills', () => orderOf(2, 0, 0)),
  measure('fewest changes: 24 channels, 6 saws, 8 kinds of collars, 3 drills', () => orderOf(3, 0, 0)),
  measure('least time: the same, change 60 s, clamping 20 s, 1 drill', () => orderOf(1, 60, 20)),
  measure('least time: the same, change 20 s, clamping 60 s, 1 drill', () => orderOf(1, 20, 60)),
  measure('least time: the same, change 60 s, clamping 20 s, 2 drills', () => orderOf(2, 60, 20)),
  measure('least time: the same, change 60 s, clamping 20 s, 3 drills', () => orderOf(3, 60, 20)),
  measure('bench plan of 24 units of two channels', planOf)
]

const SAWS = [0, 1, 2, 3, 4, 5]

/** Channel i uses the saws whose bit is set in a fixed pattern; collars take every larger and smaller saw in turn. */
const PIECES: readonly DrillPiece[] = [
  ...Array.from({ length: 24 }, (_, i): DrillPiece => {
    const saws = SAWS.filter((saw) => ((i * 37 + 11) >> saw) & 1)
    return { count: 1, waitsFor: [], operations: (saws.length > 0 ? saws : [0]).map((tool) => ({ tool, after: [] })) }
  }),
  ...Array.from({ length: 8 }, (_, i): DrillPiece => {
    const larger = 5 - (i % 4)
    const smaller = (larger + 1 + i) % larger
    const chain = [larger, smaller, larger]
    return { count: 1, waitsFor: [], operations: chain.map((tool, o) => ({ tool, after: o > 0 ? [o - 1] : [] })) }
  })
]

const orderOf = (drills: number, changeS: number, mountS: number): number => {
  const work: DrillWork = { tools: SAWS.length, drills, pieces: PIECES, changeS, mountS }
  const order = drillOrder(work, BUDGET)
  return (order.proven ? 1e6 : 0) + 1000 * order.changes + order.mounts
}

const planOf = (): number => {
  const sites = (size: number) => Array.from({ length: 6 }, (_, i) => hole(`s${i}`, 80 + 130 * i, size))
  const plan = benchPlan(
    input({
      quantity: 24,
      channels: [channel('a', sites(51)), channel('b', [...sites(76), hole('fill', 860, 25)])],
      collars: [
        {
          needId: 'ring',
          name: 'ring',
          material: 'eva-foam',
          thicknessMm: 10,
          outerSawId: 'saw-102',
          innerSawId: 'saw-64',
          fromSheet: 144,
          fromCores: []
        }
      ],
      collarSheets: 5
    })
  )
  return plan.ok ? Math.round(plan.value.workedS) : -1
}
