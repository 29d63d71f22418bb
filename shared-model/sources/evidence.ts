/** How well a figure is known. */
export type Grade = 'published' | 'published-in-part' | 'measured' | 'common-practice' | 'from-memory'

/** Where one figure of a part comes from. `printed` keeps the figure as its source prints it (`2-3/8 in`). */
export interface Evidence {
  readonly grade: Grade
  /** Id in the register of sources; `user` for a measured figure. */
  readonly source: string
  readonly printed?: string
  /** ISO date of a measurement. */
  readonly on?: string
}

/** Evidence by field name. A figure without an entry counts as from memory. */
export type EvidenceByField = Readonly<Record<string, Evidence>>
