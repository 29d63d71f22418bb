interface Kept<Value> {
  readonly inputs: readonly unknown[]
  readonly value: Value
}

/** The same objects and the same figures, one by one. */
const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((each, k) => Object.is(each, b[k]))

/**
 * Keeps the last value that was worked out, until an input is another object or another figure. Only the last: a long
 * history of documents holds one plan's worth. `holds` tells a value that its inputs alone do not make (a search that was
 * told to stop), which is not kept.
 */
export const keepLast = <Value>() => {
  let last: Kept<Value> | null = null
  return (inputs: readonly unknown[], work: () => Value, holds: () => boolean = ALWAYS): Value => {
    if (last !== null && same(last.inputs, inputs)) return last.value
    const value = work()
    if (holds()) last = { inputs, value }
    return value
  }
}

const ALWAYS = () => true

/**
 * Keeps a value for each thing of the last list, by its id, until one of the thing's inputs is another object or figure.
 * Where no value is a new one the list itself is the last list, so that what follows from it may be kept by it.
 */
export const keepEach = <Thing extends { readonly id: string }, Value>() => {
  let last: ReadonlyMap<string, Kept<Value>> = new Map()
  let list: readonly Value[] = []
  return (
    things: readonly Thing[],
    inputsOf: (thing: Thing, at: number) => readonly unknown[],
    work: (thing: Thing, at: number) => Value
  ): readonly Value[] => {
    const next = new Map<string, Kept<Value>>()
    const values = things.map((thing, at) => {
      const inputs = inputsOf(thing, at)
      const known = last.get(thing.id)
      const kept = known !== undefined && same(known.inputs, inputs) ? known : { inputs, value: work(thing, at) }
      next.set(thing.id, kept)
      return kept.value
    })
    last = next
    if (!same(list, values)) list = values
    return list
  }
}
