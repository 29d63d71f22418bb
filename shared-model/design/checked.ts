import { failed, ok, type Result } from '../outcome'
import { boundsOf } from './fields'
import type { DocumentProblem } from './problem'
import type { z } from './zod-setup'

type Issue = z.core.$ZodIssue

/**
 * A value through a schema: a fresh object without unknown keys, or every problem with the path of its field.
 * `at` is the path of the value itself; list items are named by their id where they have one.
 */
export const checkAgainst = <T>(
  schema: z.ZodType<T>,
  value: unknown,
  at = ''
): Result<T, readonly DocumentProblem[]> => {
  const parsed = schema.safeParse(value)
  if (parsed.success) return ok(parsed.data)
  return failed(parsed.error.issues.map((issue) => problemOf(issue, value, at)))
}

const problemOf = (issue: Issue, root: unknown, at: string): DocumentProblem => {
  const field = pathOf(issue.path, root, at)
  const found = valueAt(issue.path, root)
  const bounds = boundsOf(issue.message)
  const where = { field }
  if (found === undefined && issue.code !== 'unrecognized_keys')
    return { code: 'field-missing', figures: { field, ...wanted(issue) }, where }
  if (bounds !== undefined) {
    if (typeof found === 'number') {
      if (!Number.isFinite(found)) return { code: 'field-not-finite', figures: { field, ...bounds }, where }
      const figures = { field, value: found, ...bounds }
      const inside = found >= bounds.least && found <= bounds.most
      return { code: inside ? 'field-not-whole' : 'field-out-of-range', figures, where }
    }
    if (Array.isArray(found) && issue.code !== 'invalid_type')
      return { code: 'count-out-of-range', figures: { field, count: found.length, ...bounds }, where }
    if (typeof found === 'string' && issue.code === 'too_big')
      return { code: 'text-too-long', figures: { field, length: found.length, most: bounds.most }, where }
  }
  if (issue.code === 'invalid_value')
    return {
      code: 'field-not-one-of',
      figures: { field, value: shown(found), allowed: issue.values.map(String).join(', ') },
      where
    }
  if (issue.code === 'invalid_union')
    return {
      code: 'field-not-one-of',
      figures: { field, value: shown(found), allowed: 'a kind this program knows' },
      where
    }
  if (issue.code === 'invalid_format')
    return { code: 'field-malformed', figures: { field, value: shown(found), wanted: issue.message }, where }
  return { code: 'field-wrong-type', figures: { field, ...wanted(issue), got: typeName(found) }, where }
}

/** What is wanted, with both bounds where that is a number. */
const wanted = (issue: Issue) => ({
  wanted: wantedBy(issue),
  ...(issue.code === 'invalid_type' && issue.expected === 'number' ? boundsOf(issue.message) : {})
})

const wantedBy = (issue: Issue): string => {
  if (issue.code === 'invalid_type') return issue.expected === 'array' ? 'list' : issue.expected
  if (issue.code === 'invalid_value') return issue.values.map(String).join(', ')
  return 'a value'
}

/** A dotted path in which a list item goes by its id where it has a usable one, else by its place. */
const pathOf = (path: readonly PropertyKey[], root: unknown, at: string): string => {
  const names = at === '' ? [] : [at]
  let value: unknown = root
  for (const key of path) {
    const list = value
    value = childOf(value, key)
    const id = Array.isArray(list) ? childOf(value, 'id') : undefined
    names.push(typeof id === 'string' && id !== '' && id.length <= 96 ? id : String(key).slice(0, 96))
  }
  return names.join('.')
}

const valueAt = (path: readonly PropertyKey[], root: unknown): unknown =>
  path.reduce<unknown>((value, key) => childOf(value, key), root)

const childOf = (value: unknown, key: PropertyKey): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Readonly<Record<PropertyKey, unknown>>)[key]
    : undefined

const typeName = (value: unknown): string => {
  if (value === null) return 'null'
  return Array.isArray(value) ? 'list' : typeof value
}

const shown = (value: unknown): string => {
  if (typeof value === 'string') return value.slice(0, 60)
  if (typeof value === 'number' || typeof value === 'boolean') return String(value)
  return typeName(value)
}
