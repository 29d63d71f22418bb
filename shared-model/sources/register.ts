import { billSources } from './entries/bill'
import { cautionSources } from './entries/cautions'
import { cropsSources } from './entries/crops'
import { foundationSources } from './entries/foundation'
import { layoutSources } from './entries/layout'
import { pricingSources } from './entries/pricing'
import { reservoirSources } from './entries/reservoir'
import { seatingSources } from './entries/seating'
import { structureSources } from './entries/structure'
import type { SourceEntry } from './source-entry'

/** The register: every room's entries put together, by id. */
export const SOURCES: Readonly<Record<string, SourceEntry>> = {
  ...billSources,
  ...cautionSources,
  ...cropsSources,
  ...foundationSources,
  ...layoutSources,
  ...pricingSources,
  ...reservoirSources,
  ...seatingSources,
  ...structureSources
}

/** The entry with this id; undefined when the register has none (a user's own measurement has the id `user`). */
export const source = (id: string): SourceEntry | undefined => (Object.hasOwn(SOURCES, id) ? SOURCES[id] : undefined)
