import type { Budget, Result } from '../outcome'
import { failed, ok } from '../outcome'
import type { BenchInput } from './bench-input'
import type { BenchPlan, BenchStep } from './bench-plan'
import type { BenchProblem } from './codes'
import type { DrillOrder } from './drill-order'
import { drillRows, roundingLimit } from './drill-rows'
import { drillSteps } from './drill-steps'
import { drillingOf } from './drilling'
import { stepsAfterDrilling, stepsBeforeDrilling } from './hand-steps'
import { keptOrder } from './kept-order'
import { oneUnit } from './one-unit'
import { refuseBench } from './refuse-bench'

/** States that the search for the least handling may go on from in a live plan. */
const LIVE: Budget = { work: 150, stop: () => false }

/**
 * The bench plan of a whole batch: every operation in an order that can be worked from top to bottom, with tool, speed
 * and time; the drilling in the order with the least handling. The same input and budget give the same plan.
 */
export const benchPlan = (input: BenchInput, budget: Budget = LIVE): Result<BenchPlan, BenchProblem> => {
  const refused = refuseBench(input)
  if (refused) return failed(refused)
  const plan = planOf(input, budget)
  if (input.quantity <= 1) return ok({ ...plan, unit: timesOf(plan.steps) })
  return ok({ ...plan, unit: timesOf(ordered(oneUnit(input), budget).steps) })
}

/** The steps of a batch in their order. */
const ordered = (
  input: BenchInput,
  budget: Budget
): { readonly order: DrillOrder; readonly steps: readonly BenchStep[] } => {
  const drilling = drillingOf(input)
  const order = keptOrder(drilling.work, budget)
  const drilled = drillSteps(input, drilling, order)
  return { order, steps: [...stepsBeforeDrilling(input), ...drilled, ...stepsAfterDrilling(input, drilled)] }
}

const planOf = (input: BenchInput, budget: Budget): Omit<BenchPlan, 'unit'> => {
  const { order, steps } = ordered(input, budget)
  const holes = drillRows(input)
  return {
    steps,
    holes,
    toolChanges: order.changes,
    leastToolChanges: order.leastChanges,
    proven: order.proven,
    leastProven: order.leastProven,
    soughtBy: order.soughtBy,
    mounts: order.mounts,
    leastMounts: order.leastMounts,
    handlingS: order.seconds,
    leastHandlingS: order.leastSeconds,
    graduationMm: input.graduationMm,
    largestRoundingMm: holes.reduce((most, { roundingMm }) => Math.max(most, Math.abs(roundingMm)), 0),
    roundingLimitMm: roundingLimit(input),
    ...timesOf(steps)
  }
}

const timesOf = (steps: readonly BenchStep[]): BenchPlan['unit'] => {
  const sum = (of: (step: BenchStep) => number) => steps.reduce((total, step) => total + of(step), 0)
  const setUpS = sum((step) => step.setUpS)
  const runS = sum((step) => step.runS)
  return { setUpS, runS, workedS: setUpS + runS, elapsedS: setUpS + runS + sum((step) => step.waitS) }
}
