import { checkCollar, checkCup, checkPlantCollar, checkRiser, checkSaw, collarRing } from '../parts'
import type { SeatingProblem } from './codes'
import type { PartIndex } from './part-index'
import type { StackItem } from './seat'

/** The first measure of a stack's part that cannot be so, with its field and both bounds; undefined when all agree. */
export function checkItem(item: StackItem, index: PartIndex): SeatingProblem | undefined {
  switch (item.kind) {
    case 'cup': {
      const cup = index.cups.get(item.partId)
      return cup && checkCup(cup)[0]
    }
    case 'riser': {
      const riser = index.risers.get(item.partId)
      return riser && checkRiser(riser)[0]
    }
    case 'plant-collar': {
      const collar = index.plantCollars.get(item.partId)
      return collar && checkPlantCollar(collar)[0]
    }
    case 'collar': {
      const collar = index.collars.get(item.partId)
      const outer = collar && index.saws.get(collar.outerSawId)
      const inner = collar && index.saws.get(collar.innerSawId)
      if (!collar || !outer || !inner) return undefined
      const wrong = checkCollar(collar)[0] ?? checkSaw(outer)[0] ?? checkSaw(inner)[0]
      if (wrong) return wrong
      const ring = collarRing(collar, outer, inner)
      return ring.ok ? undefined : ring.problem
    }
  }
}
