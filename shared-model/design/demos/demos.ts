import type { Design } from '../design'
import type { Workshop } from '../workshop'
import { kitchenSill } from './kitchen-sill'
import { kitchenWorkshop } from './kitchen-workshop'
import { marketBatch } from './market-batch'
import { marketWorkshop } from './market-workshop'

export interface Demo {
  readonly id: string
  readonly name: string
  readonly design: Design
  readonly workshop: Workshop
}

/** Designs to look at first, each with the workshop it is made in. Both are invented. */
export const DEMOS: readonly Demo[] = [
  { id: 'kitchen-sill', name: 'A kitchen windowsill, in millimetres', design: kitchenSill, workshop: kitchenWorkshop },
  { id: 'market-batch', name: 'Eighteen planters for sale, in inches', design: marketBatch, workshop: marketWorkshop }
]
