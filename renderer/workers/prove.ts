import type { BarProgress } from '../../shared-model/cutting'
import type { Design, Workshop } from '../../shared-model/design'
import { evaluate, type Plan } from '../../shared-model/plan'

const NEVER = (): boolean => false
/** Work for all but the bars of a plan that is told on the way: that of the first full plan. */
const TOLD_WORK = 20_000

/**
 * The whole plan with this much work for its cut bars, telling how far each profile's proof is as it gets on, and the
 * whole plan each time its bars get cheaper: whoever ends the search has the best of what it found.
 */
export const prove = (
  design: Design,
  workshop: Workshop,
  on: string,
  work: number,
  tell: (profileId: string, progress: BarProgress) => void,
  tellBetter: (plan: Plan) => void
): Plan =>
  evaluate(design, workshop, on, {
    budget: { work, stop: NEVER },
    report: tell,
    better: (cuts) => tellBetter(evaluate(design, workshop, on, { cuts, budget: { work: TOLD_WORK, stop: NEVER } }))
  })
