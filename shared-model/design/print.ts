import type { Design } from './design'
import type { Workshop } from './workshop'

/** The document as JSON text with its keys in the order of the schema's own types: the same value gives the same bytes. */
export const printDesign = (design: Design): string => printed(design, TOP_OF_DESIGN)

export const printWorkshop = (workshop: Workshop): string => printed(workshop, TOP_OF_WORKSHOP)

const TOP_OF_DESIGN = ['schema', 'id', 'title', 'number', 'revision', 'maker', 'remarks', 'quantity', 'growthShare']
const TOP_OF_WORKSHOP = ['schema', 'id', 'title', 'currency', 'shows']

/** First the keys that a reader looks for, then `id` and `name`, then the rest by letter. */
const printed = (value: Design | Workshop, first: readonly string[]): string =>
  `${JSON.stringify(ordered(value, [...first, 'id', 'name', 'kind']), null, 2)}\n`

const ordered = (value: unknown, first: readonly string[]): unknown => {
  if (Array.isArray(value)) return value.map((each) => ordered(each, first))
  if (typeof value !== 'object' || value === null) return value
  const place = (key: string): number => {
    const at = first.indexOf(key)
    return at < 0 ? first.length : at
  }
  const entries = Object.entries(value)
    .sort(([a], [b]) => place(a) - place(b) || (a < b ? -1 : a > b ? 1 : 0))
    .map(([key, each]) => [key, ordered(each, first)] as const)
  return Object.fromEntries(entries)
}
