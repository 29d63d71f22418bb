import type { Design, Workshop } from '../design'
import type { Sill, SillSize } from '../layout'
import type { Cup, EndClosure, HoleSaw } from '../parts'
import { CATALOGUE } from '../parts'
import type { WaterPlan } from '../reservoir'
import { type PartIndex, partIndex } from '../seating'

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

interface Kept {
  readonly inputs: readonly unknown[]
  readonly shared: Shared
}

const lastBySill = new WeakMap<Sill, Kept>()

/**
 * The shared inputs of a design's channels. An edit of one channel leaves them the same object, so that the other
 * channels' parts, which are kept by it, stay good.
 */
export const sharedOf = (design: Design, workshop: Workshop, size: SillSize): Shared => {
  const { parts, seats, crops, sill, water, growthShare } = design
  const inputs = [parts, seats, crops, water, growthShare, workshop.saws, workshop.parts, size.lengthMm, size.depthMm]
  const kept = lastBySill.get(sill)
  if (kept?.inputs.every((each, k) => each === inputs[k])) return kept.shared
  const shared: Shared = {
    index: partIndex({ ...parts, seats, crops }),
    sill,
    size,
    water,
    growthShare,
    saws: workshop.saws.map(({ saw }) => saw),
    cups: onHand([...parts.cups, ...workshop.parts.cups, ...CATALOGUE.cups]),
    closuresOnHand: [...workshop.parts.closures, ...CATALOGUE.closures]
  }
  lastBySill.set(sill, { inputs, shared })
  return shared
}

/** Of two parts with one id the design's own copy counts, then the shop's, then the catalogue's. */
const onHand = <T extends { readonly id: string }>(parts: readonly T[]): readonly T[] => [
  ...new Map([...parts].reverse().map((part) => [part.id, part])).values()
]
