import { CROPS, type Crop } from '../../shared-model/crops'
import type { Design, Shows, Workshop } from '../../shared-model/design'
import {
  CATALOGUE,
  type Collar,
  type Cup,
  type EndClosure,
  type HoleSaw,
  type PlantCollar,
  type Riser
} from '../../shared-model/parts'
import type { Profile } from '../../shared-model/profile'

/** Parts to choose from: the design's own copies first, then the workshop's own, then the catalogue, each id once. */
export interface Offered {
  readonly profiles: readonly Profile[]
  readonly closures: readonly EndClosure[]
  readonly cups: readonly Cup[]
  readonly risers: readonly Riser[]
  readonly collars: readonly Collar[]
  readonly plantCollars: readonly PlantCollar[]
  readonly saws: readonly HoleSaw[]
  readonly crops: readonly Crop[]
  /** What the shop has: saws to choose first, and the units that its tools are likely sized in. */
  readonly ownSawIds: ReadonlySet<string>
  readonly units: Shows['units']
}

export function offered(design: Pick<Design, 'parts' | 'crops'>, workshop: Workshop): Offered {
  const { parts } = design
  const own = workshop.saws.map((each) => each.saw)
  const cups = once(parts.cups, workshop.parts.cups, CATALOGUE.cups)
  return {
    profiles: once(parts.profiles, workshop.parts.profiles, CATALOGUE.profiles),
    closures: once(parts.closures, workshop.parts.closures, CATALOGUE.closures),
    cups,
    // A riser is cut from the cup as it was measured.
    risers: once(
      parts.risers,
      CATALOGUE.risers.map((riser) => ({ ...riser, cup: cups.find(({ id }) => id === riser.cup.id) ?? riser.cup }))
    ),
    collars: once(parts.collars, CATALOGUE.collars),
    plantCollars: once(parts.plantCollars, workshop.parts.plantCollars, CATALOGUE.plantCollars),
    saws: once(parts.saws, own, CATALOGUE.saws),
    crops: once(design.crops, CROPS),
    ownSawIds: new Set(own.map(({ id }) => id)),
    units: workshop.shows.units
  }
}

function once<T extends { readonly id: string }>(...lists: readonly (readonly T[])[]): readonly T[] {
  const seen = new Map<string, T>()
  for (const item of lists.flat()) if (!seen.has(item.id)) seen.set(item.id, item)
  return [...seen.values()]
}
