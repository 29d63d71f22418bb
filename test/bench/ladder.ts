import { FIRST_WORK } from '../../renderer/plan/plan-worker-client'
import { batchAt } from '../../renderer/workers/batch-at'
import { DEMOS, type Design, type Workshop } from '../../shared-model/design'
import { ladderSteps } from '../../shared-model/pricing'
import type { BenchRow } from './measure'
import { type LadderRun, laddersOnPage } from './page-ladder'

const ON = '2026-11-25'
const RUNS = 5
/** Ten steps, the last a batch of 200 units. */
const TEN_SIZES = [1, 2, 4, 8, 12, 24, 48, 96, 144, 200]

/**
 * The ladder of batch sizes: bars, sheets, packs, drilling order and price anew for each of ten sizes. In this process every
 * run has documents of its own, so that nothing kept from an earlier one is found again; on the page a rate is typed and the
 * time runs until the row stands in the table, the worker's messages and the drawing included.
 */
export const benchLadder = async (): Promise<readonly BenchRow[]> => {
  const here = DEMOS.flatMap(({ id, design, workshop }) => {
    const runs = Array.from({ length: RUNS }, () => climb(structuredClone(design), structuredClone(workshop)))
    return rows(`${id}, in one process`, runs)
  })
  const page = rows('the market batch, on the page', await laddersOnPage(TEN_SIZES, RUNS))
  return [...here, ...page]
}

function climb(design: Design, workshop: Workshop): LadderRun {
  const begun = performance.now()
  let firstMs: number | null = null
  let checksum = 0
  for (const step of ladderSteps(TEN_SIZES, batchAt(design, workshop, ON, { work: FIRST_WORK, stop: () => false }))) {
    firstMs ??= performance.now() - begun
    checksum += (step.unitCostMinor ?? 0) + step.bars + step.packs + step.toolChanges
  }
  return { firstMs: firstMs ?? 0, wholeMs: performance.now() - begun, checksum }
}

const rows = (what: string, runs: readonly LadderRun[]): readonly BenchRow[] => [
  row(`first of ten batch sizes to 200 units, ${what}`, runs, (run) => run.firstMs),
  row(`all ten batch sizes to 200 units, ${what}`, runs, (run) => run.wholeMs)
]

function row(name: string, runs: readonly LadderRun[], of: (run: LadderRun) => number): BenchRow {
  const times = runs.map(of).sort((a, b) => a - b)
  const checksum = runs.reduce((sum, run) => sum + run.checksum, 0)
  return { name, minMs: times[0] ?? 0, medianMs: times[times.length >> 1] ?? 0, checksum }
}
