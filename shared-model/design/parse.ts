import { failed, ok, type Result } from '../outcome'
import { checkAgainst } from './checked'
import { DESIGN_SCHEMA, type Design } from './design'
import { designSchema } from './design-schema'
import { tooDeepOrMany } from './document-caps'
import { migrated } from './migrate'
import { designParts, workshopParts } from './part-checks'
import type { DocumentProblem } from './problem'
import { designReferences, workshopReferences } from './references'
import { WORKSHOP_SCHEMA, type Workshop } from './workshop'
import { workshopSchema } from './workshop-schema'
import type { z } from './zod-setup'

export type Parsed<T> = Result<T, readonly DocumentProblem[]>

/**
 * A Design out of anything: a fresh object with known fields only, or every problem found, each with the path of its
 * field. A document of a newer schema is refused as such, so that a host can open it read-only.
 */
export const parseDesign = (value: unknown): Parsed<Design> =>
  parsed(value, DESIGN_SCHEMA, DESIGN_MIGRATIONS, designSchema, (design) => [
    ...designReferences(design),
    ...designParts(design)
  ])

/** A Workshop out of anything, as {@link parseDesign}. */
export const parseWorkshop = (value: unknown): Parsed<Workshop> =>
  parsed(value, WORKSHOP_SCHEMA, WORKSHOP_MIGRATIONS, workshopSchema, (workshop) => [
    ...workshopReferences(workshop),
    ...workshopParts(workshop)
  ])

export const parseDesignText = (text: string): Parsed<Design> => chained(jsonOf(text), parseDesign)

export const parseWorkshopText = (text: string): Parsed<Workshop> => chained(jsonOf(text), parseWorkshop)

/** A document is never larger than this. */
export const MOST_DOCUMENT_BYTES = 20 * 1024 * 1024

// The step at place k takes schema k + 1 to schema k + 2; schema 1 is the first that was ever written.
const DESIGN_MIGRATIONS = [] as const
const WORKSHOP_MIGRATIONS = [] as const

const jsonOf = (text: string): Parsed<unknown> => {
  // A text of n UTF-16 units takes n to 3n bytes: the quick test spares the count for what is surely too large.
  if (text.length > MOST_DOCUMENT_BYTES) return tooLarge(text.length)
  const bytes = utf8Length(text)
  if (bytes > MOST_DOCUMENT_BYTES) return tooLarge(bytes)
  const caps = tooDeepOrMany(text)
  if (caps !== null) return failed([caps])
  try {
    const value: unknown = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text)
    return ok(value)
  } catch (error) {
    const detail = error instanceof Error ? error.message : ''
    return failed([{ code: 'document-not-json', figures: { detail } }])
  }
}

const tooLarge = (bytes: number) =>
  failed<readonly DocumentProblem[]>([
    { code: 'document-too-large', figures: { bytes, mostBytes: MOST_DOCUMENT_BYTES } }
  ])

const utf8Length = (text: string): number => {
  let bytes = text.length
  for (let k = 0; k < text.length; k += 1) {
    const unit = text.charCodeAt(k)
    // Half of a surrogate pair counts two of the pair's four bytes.
    if (unit >= 0x800 && (unit < 0xd800 || unit > 0xdfff)) bytes += 2
    else if (unit >= 0x80) bytes += 1
  }
  return bytes
}

const parsed = <T>(
  value: unknown,
  known: number,
  migrations: readonly ((older: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>)[],
  schema: z.ZodType<T>,
  crossChecks: (value: T) => readonly DocumentProblem[]
): Parsed<T> => {
  const current = migrated(value, known, migrations)
  if (!current.ok) return current
  const checked = checkAgainst(schema, current.value)
  if (!checked.ok) return checked
  const problems = crossChecks(checked.value)
  return problems.length === 0 ? checked : failed(problems)
}

const chained = <T>(first: Parsed<unknown>, next: (value: unknown) => Parsed<T>): Parsed<T> =>
  first.ok ? next(first.value) : first
