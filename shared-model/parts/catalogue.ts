import type { Profile } from '../profile'
import { CLOSURES } from './catalogue/closures'
import { COLLARS, PLANT_COLLARS } from './catalogue/collars'
import { CUPS, RISERS } from './catalogue/cups'
import { DOWNSPOUTS } from './catalogue/downspouts'
import { INCH_PIPES } from './catalogue/inch-pipes'
import { METRIC_PIPES } from './catalogue/metric-pipes'
import { POSTS_AND_TRUNKING } from './catalogue/posts-and-trunking'
import { SAWS } from './catalogue/saws'
import type { Collar, Cup, EndClosure, HoleSaw, PlantCollar, Riser } from './part'

export interface Catalogue {
  readonly profiles: readonly Profile[]
  readonly cups: readonly Cup[]
  readonly risers: readonly Riser[]
  readonly collars: readonly Collar[]
  readonly plantCollars: readonly PlantCollar[]
  readonly saws: readonly HoleSaw[]
  readonly closures: readonly EndClosure[]
}

/** Starting values, each figure with its grade; the user measures and overwrites any. */
export const CATALOGUE: Catalogue = {
  profiles: [...DOWNSPOUTS, ...INCH_PIPES, ...METRIC_PIPES, ...POSTS_AND_TRUNKING],
  cups: CUPS,
  risers: RISERS,
  collars: COLLARS,
  plantCollars: PLANT_COLLARS,
  saws: SAWS,
  closures: CLOSURES
}

export type CatalogueKind = keyof Catalogue

/** The part of a kind with this id; undefined when the catalogue has none. */
export function cataloguePart<K extends CatalogueKind>(kind: K, id: string): Catalogue[K][number] | undefined {
  return CATALOGUE[kind].find((part) => part.id === id)
}

/** Fields that ask to be measured: graded from memory or common practice, or without any evidence. */
export const unmeasuredFields = (part: { readonly evidence: Profile['evidence'] }): readonly string[] =>
  Object.entries(part.evidence)
    .filter(([, evidence]) => evidence.grade === 'from-memory' || evidence.grade === 'common-practice')
    .map(([field]) => field)
