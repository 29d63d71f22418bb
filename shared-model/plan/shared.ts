import type { Design, Workshop } from '../design'
import type { Sill, SillSize } from '../layout'
import type { Cup, EndClosure, HoleSaw } from '../parts'
import { CATALOGUE } from '../parts'
import type { WaterPlan } from '../reservoir'
import { type PartIndex, partIndex } from '../seating'
import { keepLast } from './kept'

/** What every channel of a design is worked out with, beside itself. The same inputs give the same object. */
export interface Shared {
  readonly index: PartIndex
  readonly sill: Sill
  readonly size: SillSize
  readonly water: WaterPlan
  readonly growthShare: number
  readonly saws: readonly HoleSaw[]
  readonly cups: readonly Cup[]
  readonly closuresOnHand: readonly EndClosure[]
}

const keptShared = keepLast<Shared>()

/**
 * The shared inputs of a design's channels. An edit of one channel leaves them the same object, so that the other
 * channels' parts, which are kept by it, stay good.
 */
export const sharedOf = (design: Design, workshop: Workshop, size: SillSize): Shared => {
  const { parts, seats, crops, sill, water, growthShare } = design
  const { lengthMm, depthMm } = size
  const inputs = [sill, parts, seats, crops, water, growthShare, workshop.saws, workshop.parts, lengthMm, depthMm]
  return keptShared(inputs, () => ({
    index: partIndex({ ...parts, seats, crops }),
    sill,
    size,
    water,
    growthShare,
    saws: workshop.saws.map(({ saw }) => saw),
    cups: onHand([...parts.cups, ...workshop.parts.cups, ...CATALOGUE.cups]),
    closuresOnHand: [...workshop.parts.closures, ...CATALOGUE.closures]
  }))
}

/** Of two parts with one id the design's own copy counts, then the shop's, then the catalogue's. */
const onHand = <T extends { readonly id: string }>(parts: readonly T[]): readonly T[] => [
  ...new Map([...parts].reverse().map((part) => [part.id, part])).values()
]
