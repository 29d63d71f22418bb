import type { BenchPlan, OperationKind } from '../bench'
import type { Bill } from '../bill'
import { splitTotal } from '../units'
import type { UnitCost } from './price-plan'

export interface LabourRow {
  /** null: the batch's own set-up. */
  readonly kind: OperationKind | null
  readonly count: number
  readonly workedS: number
  /** Cure and leak test: elapsed, not worked and not paid. */
  readonly waitS: number
  readonly labourMinor: number
}

/**
 * The batch's labour by kind of step, in the order they come up; the rows add up to the labour of the batch, split by time.
 *
 * @source job-cost
 */
export function labourByStep(bench: Pick<BenchPlan, 'steps' | 'workedS'>, cost: UnitCost): readonly LabourRow[] {
  const kinds = new Map<OperationKind, Omit<LabourRow, 'labourMinor'>>()
  for (const { kind, count, setUpS, runS, waitS } of bench.steps) {
    const had = kinds.get(kind) ?? { kind, count: 0, workedS: 0, waitS: 0 }
    const workedS = had.workedS + setUpS + runS
    kinds.set(kind, { kind, count: had.count + count, workedS, waitS: had.waitS + waitS })
  }
  const steps = [...kinds.values()]
  const setUpS = bench.workedS - steps.reduce((sum, { workedS }) => sum + workedS, 0)
  const rows = setUpS > LEAST_S ? [{ kind: null, count: 0, workedS: setUpS, waitS: 0 }, ...steps] : steps
  const shares = splitTotal(
    rows.map(({ workedS }) => Math.round(workedS * 1000)),
    cost.batch.labourMinor
  )
  return rows.map((row, at) => ({ ...row, labourMinor: shares[at] ?? 0 }))
}

/** Less than this is the noise of a sum. */
const LEAST_S = 0.001

export interface MaterialRow {
  readonly lineId: string
  readonly name: string
  /** Of one unit's material; the rows add up to it. */
  readonly eachMinor: number
  readonly usedMinor: number
  readonly restMinor: number
}

/** Material by line of a bill without a missing price: what one unit and the batch carry, and the unused rest beside it. */
export function materialByLine(bill: Bill, cost: UnitCost): readonly MaterialRow[] {
  const used = bill.lines.map((line) => line.usedMinor ?? 0)
  const shares = splitTotal(used, cost.materialMinor)
  return bill.lines.map((line, at) => ({
    lineId: line.id,
    name: line.name,
    eachMinor: shares[at] ?? 0,
    usedMinor: used[at] ?? 0,
    restMinor: line.restMinor ?? 0
  }))
}
