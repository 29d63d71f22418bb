import { failed, ok, type Result } from '../outcome'
import type { DocumentProblem } from './problem'

type Document = Readonly<Record<string, unknown>>

/** A document of any schema ever written, as one of the current schema; the step at place k leads from k + 1 to k + 2. */
export const migrated = (
  value: unknown,
  known: number,
  steps: readonly ((older: Document) => Document)[]
): Result<unknown, readonly DocumentProblem[]> => {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return failed([
      {
        code: 'field-wrong-type',
        figures: {
          field: '',
          wanted: 'object',
          got: Array.isArray(value) ? 'list' : value === null ? 'null' : typeof value
        }
      }
    ])
  const found = Object.hasOwn(value, 'schema') ? (value as Document).schema : undefined
  const where = { field: 'schema' }
  if (typeof found === 'number' && Number.isInteger(found) && found > known)
    return failed([{ code: 'schema-newer', figures: { found, known }, where }])
  if (typeof found !== 'number' || !Number.isInteger(found) || found < 1)
    return failed([{ code: 'schema-unknown', figures: { found: String(found ?? 'none').slice(0, 60), known }, where }])
  return ok(steps.slice(found - 1).reduce<Document>((older, step) => step(older), value as Document))
}
