import { billSources } from './entries/bill'
import { cautionSources } from './entries/cautions'
import { benchCautionSources } from './entries/cautions-bench'
import { cropsSources } from './entries/crops'
import { foundationSources } from './entries/foundation'
import type { SourceEntry } from './source-entry'

export type { SourceEntry } from './source-entry'

/** The register: every room's entries put together, by id. */
export const SOURCES: Readonly<Record<string, SourceEntry>> = {
  ...billSources,
  ...benchCautionSources,
  ...cautionSources,
  ...cropsSources,
  ...foundationSources
}

/** The entry with this id; undefined when the register has none (a user's own measurement has the id `user`). */
export const source = (id: string): SourceEntry | undefined => (Object.hasOwn(SOURCES, id) ? SOURCES[id] : undefined)
