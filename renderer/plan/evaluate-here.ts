import type { Design, Workshop } from '../../shared-model/design'
import { evaluate, type Plan } from '../../shared-model/plan'

/** The plan without its cut bars: quick enough to follow the hand. */
export const evaluateHere = (design: Design, workshop: Workshop, on: string): Plan =>
  evaluate(design, workshop, on, { cuts: 'left-out' })
