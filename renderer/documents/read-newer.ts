import {
  DESIGN_SCHEMA,
  type Design,
  type DocumentProblem,
  type Parsed,
  parseDesign,
  parseWorkshop,
  WORKSHOP_SCHEMA,
  type Workshop
} from '../../shared-model/design'

/**
 * What of a design written by a newer program can be shown: its known fields, where they still hold to the bounds of this
 * schema. null: the text is not refused for its schema alone, or what is left of it is no design.
 */
export const readNewer = (text: string, problems: readonly DocumentProblem[]): Design | null =>
  readAs(text, problems, DESIGN_SCHEMA, parseDesign)

/** A workshop written by a newer program, as {@link readNewer}. */
export const readNewerWorkshop = (text: string, problems: readonly DocumentProblem[]): Workshop | null =>
  readAs(text, problems, WORKSHOP_SCHEMA, parseWorkshop)

/** Whether a newer schema is all that a document is refused for. */
export const isNewer = (problems: readonly DocumentProblem[]): boolean =>
  problems.length === 1 && problems[0]?.code === 'schema-newer'

function readAs<T>(
  text: string,
  problems: readonly DocumentProblem[],
  schema: number,
  parse: (value: unknown) => Parsed<T>
): T | null {
  if (!isNewer(problems)) return null
  const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''))
  if (typeof value !== 'object' || value === null) return null
  const parsed = parse({ ...value, schema })
  return parsed.ok ? parsed.value : null
}
