import { benchSources } from './entries/bench'
import { billSources } from './entries/bill'
import { cautionSources } from './entries/cautions'
import { cropsSources } from './entries/crops'
import { cuttingSources } from './entries/cutting'
import { layoutSources } from './entries/layout'
import { materialsSources } from './entries/materials'
import { partsSources } from './entries/parts'
import { pricingSources } from './entries/pricing'
import { profileSources } from './entries/profile'
import { reservoirSources } from './entries/reservoir'
import { ringsSources } from './entries/rings'
import { seatingSources } from './entries/seating'
import { sheetSources } from './entries/sheet'
import { structureSources } from './entries/structure'
import { unitsSources } from './entries/units'
import type { SourceEntry } from './source-entry'

/** The register: every room's entries put together, by id. */
export const SOURCES: Readonly<Record<string, SourceEntry>> = {
  ...benchSources,
  ...billSources,
  ...cautionSources,
  ...cropsSources,
  ...cuttingSources,
  ...layoutSources,
  ...materialsSources,
  ...partsSources,
  ...pricingSources,
  ...profileSources,
  ...reservoirSources,
  ...ringsSources,
  ...seatingSources,
  ...sheetSources,
  ...structureSources,
  ...unitsSources
}

/** The entry with this id; undefined when the register has none (a user's own measurement has the id `user`). */
export const source = (id: string): SourceEntry | undefined => (Object.hasOwn(SOURCES, id) ? SOURCES[id] : undefined)
