import type { Result } from '../outcome'
import { planRings, type RingPlan, type RingsInput, type RingsProblem } from '../rings'
import { keepLast } from './kept'

const kept = keepLast<Result<RingPlan, RingsProblem>>()

/**
 * The sheet plan; the last one is kept by all that it follows from: what the batch needs, the shop's sheets, how they are
 * cut and the work allowed. An edit that needs the same collars, discs and plates cuts the same sheets. A search that was
 * told to stop is not kept.
 */
export const keptRings = (input: RingsInput): Result<RingPlan, RingsProblem> => {
  const { needs, plates, sheets, setup, budget } = input
  const holds = () => budget.work <= 0 || !budget.stop()
  return kept([sheets, setup, JSON.stringify([needs, plates]), budget.work], () => planRings(input), holds)
}
