import { DESIGN_SCHEMA, type Design, type DocumentProblem, parseDesign } from '../../shared-model/design'

/** A design of a newer schema, as far as this program knows it. */
export interface NewerDesign {
  readonly design: Design
  readonly found: number
}

/**
 * What of a design written by a newer program can be shown: its known fields, where they still hold to the bounds of this
 * schema. null: the text is not refused for its schema alone, or what is left of it is no design.
 */
export function readNewer(text: string, problems: readonly DocumentProblem[]): NewerDesign | null {
  const [only] = problems
  if (problems.length !== 1 || only?.code !== 'schema-newer') return null
  const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''))
  if (typeof value !== 'object' || value === null) return null
  const parsed = parseDesign({ ...value, schema: DESIGN_SCHEMA })
  return parsed.ok ? { design: parsed.value, found: only.figures.found } : null
}
