import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'

/** Names of every field in a value; figures by code and records by a name of the maker's are documented elsewhere. */
const fieldNames = (value: unknown): readonly string[] => {
  if (Array.isArray(value)) return value.flatMap(fieldNames)
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) => (OPEN.has(key) ? [key] : [key, ...fieldNames(each)]))
}

const OPEN = new Set(['figures', 'ppm', 'instance', 'certificate', 'solids', 'how', 'batch', 'centre', 'fix'])

it('documents every field of a plan', () => {
  const readme = readFileSync(new URL('../../shared-model/plan/README.md', import.meta.url), 'utf8')
  const documented = new Set([...readme.matchAll(/[A-Za-z0-9]+/g)].map(([word]) => word))
  const missing = DEMOS.flatMap(({ design, workshop }) =>
    fieldNames(evaluate(design, workshop, '2026-05-01')).filter((name) => !documented.has(name))
  )
  expect([...new Set(missing)]).toEqual([])
})
