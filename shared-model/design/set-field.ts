import { type Fix, failed, ok } from '../outcome'
import type { EndClosure, HoleSaw } from '../parts'
import type { Design } from './design'
import { type Edited, notFound } from './edits/edit'
import { parseDesign, parseWorkshop } from './parse'
import type { Workshop } from './workshop'

type Value = number | string | boolean | null

/**
 * Sets the field at a dotted path (`channels.c1.sites.s3.atMm`: list items by their id, or by their place) and takes the
 * result through the parser's bounds. The rest of the document keeps its identity. An unknown path is refused.
 */
export const setDesignField = (design: Design, path: string, value: Value): Edited<Design> => {
  const made = withField(design, path.split('.'), value)
  if (made === undefined) return notFound('field', path)
  const parsed = parseDesign(made)
  if (parsed.ok) return ok(made as Design)
  const [first] = parsed.problem
  return first === undefined ? ok(made as Design) : failed(first)
}

export const setWorkshopField = (workshop: Workshop, path: string, value: Value): Edited<Workshop> => {
  const made = withField(workshop, path.split('.'), value)
  if (made === undefined) return notFound('field', path)
  const parsed = parseWorkshop(made)
  if (parsed.ok) return ok(made as Workshop)
  const [first] = parsed.problem
  return first === undefined ? ok(made as Workshop) : failed(first)
}

/** Parts at hand that a proposal may name and the design does not carry yet. */
export interface OnHand {
  readonly saws: readonly HoleSaw[]
  readonly closures: readonly EndClosure[]
}

/** Takes a finding's proposal: sets its field to its value; a part on hand that it names comes into the design with it. */
export const applyFix = (design: Design, fix: Fix, onHand: OnHand = NONE_ON_HAND): Edited<Design> =>
  setDesignField(carrying(design, fix, onHand), fix.field, fix.value)

const NONE_ON_HAND: OnHand = { saws: [], closures: [] }

const carrying = (design: Design, { field, value }: Fix, { saws, closures }: OnHand): Design => {
  const { parts } = design
  const saw = field.endsWith('.sawId') ? saws.find(({ id }) => id === value) : undefined
  const closure = field.endsWith('ClosureId') ? closures.find(({ id }) => id === value) : undefined
  return {
    ...design,
    parts: {
      ...parts,
      saws: saw && !parts.saws.some(({ id }) => id === saw.id) ? [...parts.saws, saw] : parts.saws,
      closures:
        closure && !parts.closures.some(({ id }) => id === closure.id) ? [...parts.closures, closure] : parts.closures
    }
  }
}

/** A copy with the value at the path, or undefined where the path leads nowhere. An id may hold dots itself. */
const withField = (whole: unknown, path: readonly string[], value: Value): unknown => {
  if (path.length === 0) return value
  if (Array.isArray(whole)) {
    for (let taken = 1; taken <= path.length; taken += 1) {
      const at = placeOf(whole, path.slice(0, taken).join('.'))
      if (at < 0) continue
      const made = withField(whole[at], path.slice(taken), value)
      if (made !== undefined) return whole.map((each: unknown, k) => (k === at ? made : each))
    }
    return undefined
  }
  const [key = '', ...rest] = path
  if (typeof whole !== 'object' || whole === null || !Object.hasOwn(whole, key)) return undefined
  const made = withField((whole as Readonly<Record<string, unknown>>)[key], rest, value)
  return made === undefined ? undefined : { ...whole, [key]: made }
}

const placeOf = (list: readonly unknown[], name: string): number => {
  const byId = list.findIndex((each) => {
    if (typeof each !== 'object' || each === null) return false
    if ('id' in each) return each.id === name
    // An owned saw goes by the id of the saw itself.
    return (
      'saw' in each && typeof each.saw === 'object' && each.saw !== null && 'id' in each.saw && each.saw.id === name
    )
  })
  if (byId >= 0 || !/^\d{1,6}$/.test(name)) return byId
  const place = Number(name)
  return place < list.length ? place : -1
}
