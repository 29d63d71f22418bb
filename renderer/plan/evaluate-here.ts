import type { Design, Workshop } from '../../shared-model/design'
import { evaluate, type Plan } from '../../shared-model/plan'

/** The plan without its cut bars: quick enough to follow the hand. */
export const evaluateHere = (design: Design, workshop: Workshop, on: string): Plan =>
  evaluate(design, workshop, on, { cuts: 'left-out' })

/** Its board alone, of a design that was just opened: channels, seats, water and loads with their findings. */
export const boardOf = (design: Design, workshop: Workshop, on: string): Plan =>
  evaluate(design, workshop, on, { cuts: 'left-out', making: 'left-out' })
