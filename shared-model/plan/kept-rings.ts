import type { Result } from '../outcome'
import { planRings, type RingPlan, type RingsInput, type RingsProblem } from '../rings'

interface Kept {
  readonly setup: RingsInput['setup']
  readonly key: string
  readonly plan: Result<RingPlan, RingsProblem>
}

const lastBySheets = new WeakMap<RingsInput['sheets'], Kept>()

/**
 * The sheet plan; the last one for a shop's sheets is kept by all else it follows from: what the batch needs, how sheets
 * are cut and the work allowed. An edit that needs the same collars, discs and plates cuts the same sheets. A search that
 * was told to stop is not kept.
 */
export const keptRings = (input: RingsInput): Result<RingPlan, RingsProblem> => {
  const { needs, plates, sheets, setup, budget } = input
  const key = JSON.stringify([needs, plates, budget.work])
  const last = lastBySheets.get(sheets)
  if (last?.setup === setup && last.key === key) return last.plan
  const plan = planRings(input)
  if (budget.work <= 0 || !budget.stop()) lastBySheets.set(sheets, { setup, key, plan })
  return plan
}
