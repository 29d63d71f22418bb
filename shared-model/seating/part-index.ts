import type { Crop } from '../crops'
import type { Collar, Cup, EndClosure, HoleSaw, PlantCollar, Riser } from '../parts'
import type { Profile } from '../profile'
import type { Seat } from './seat'

/** Every part of a design by id, made once for the many look-ups of a plan. */
export interface PartIndex {
  readonly profiles: ReadonlyMap<string, Profile>
  readonly closures: ReadonlyMap<string, EndClosure>
  readonly cups: ReadonlyMap<string, Cup>
  readonly risers: ReadonlyMap<string, Riser>
  readonly collars: ReadonlyMap<string, Collar>
  readonly plantCollars: ReadonlyMap<string, PlantCollar>
  readonly saws: ReadonlyMap<string, HoleSaw>
  readonly seats: ReadonlyMap<string, Seat>
  readonly crops: ReadonlyMap<string, Crop>
}

/** The lists an index is made from; a design's parts, seats and crops. */
export interface PartLists {
  readonly profiles?: readonly Profile[]
  readonly closures?: readonly EndClosure[]
  readonly cups?: readonly Cup[]
  readonly risers?: readonly Riser[]
  readonly collars?: readonly Collar[]
  readonly plantCollars?: readonly PlantCollar[]
  readonly saws?: readonly HoleSaw[]
  readonly seats?: readonly Seat[]
  readonly crops?: readonly Crop[]
}

/** Parts by id. Of two parts with one id the first is kept, as the design's own list reads. */
export function partIndex(lists: PartLists): PartIndex {
  return {
    profiles: byId(lists.profiles),
    closures: byId(lists.closures),
    cups: byId(lists.cups),
    risers: byId(lists.risers),
    collars: byId(lists.collars),
    plantCollars: byId(lists.plantCollars),
    saws: byId(lists.saws),
    seats: byId(lists.seats),
    crops: byId(lists.crops)
  }
}

function byId<T extends { readonly id: string }>(items: readonly T[] = []): ReadonlyMap<string, T> {
  const map = new Map<string, T>()
  for (const item of items) if (!map.has(item.id)) map.set(item.id, item)
  return map
}
