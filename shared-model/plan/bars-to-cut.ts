import type { BarsToCut, Piece } from '../cutting'
import type { Design, Workshop } from '../design'

/** What bars are planned from: the shop's stock and rack, and what is cut already. */
export const barsToCut = (design: Design, workshop: Workshop, pieces: readonly Piece[]): BarsToCut => ({
  pieces,
  stock: workshop.stock,
  rack: workshop.rack,
  setup: workshop.cutting,
  done: design.atBench?.bars ?? []
})
