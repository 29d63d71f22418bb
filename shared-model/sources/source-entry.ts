import type { Grade } from './evidence'

/** One published work, or the plain statement that there is none, that figures and formulas rest on. */
export interface SourceEntry {
  /** Body or author, described by its kind where it is a trade page. */
  readonly body: string
  readonly title: string
  readonly year: string
  /** Table, section or equation. */
  readonly where: string
  readonly address?: string
  readonly grade: Grade
}
