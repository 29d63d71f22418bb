/** Ways to spoil a document, picked and placed by repeatable numbers from 0 up to 1. */
type Next = () => number

const at = (next: Next, length: number): number => Math.floor(next() * length)
const pick = <T>(next: Next, list: readonly T[]): T => {
  const found = list[at(next, list.length)]
  if (found === undefined) throw new Error('nothing to pick from')
  return found
}

const NUMBERS = [
  '1e999',
  '-1e999',
  '1e308',
  '-1e308',
  '5e-324',
  '-0',
  '1e15',
  '-1',
  '0',
  '0.1',
  '1e-9',
  '99999999999999999999',
  'NaN'
]
const VALUES: readonly unknown[] = [
  null,
  true,
  '',
  'x'.repeat(300),
  -1,
  0,
  0.5,
  1e15,
  [],
  {},
  [[]],
  ['a'],
  { a: 1 },
  '1',
  '<b>'
]
const KEYS = ['__proto__', 'constructor', 'prototype', 'toString', 'schema', '']

type Spoil = (text: string, next: Next) => string

/** On the bytes: flipped bits, ends cut off, pieces lost or twice, deep nesting, numbers that no machine holds. */
const TEXT_SPOILS: readonly Spoil[] = [
  (text, next) => {
    const bytes = Buffer.from(text)
    for (let flips = 1 + at(next, 4); flips > 0; flips -= 1) {
      const place = at(next, bytes.length)
      bytes[place] = (bytes[place] ?? 0) ^ (1 << at(next, 8))
    }
    return bytes.toString('utf8')
  },
  (text, next) => text.slice(0, at(next, text.length)),
  (text, next) => {
    const from = at(next, text.length)
    return text.slice(0, from) + text.slice(from + at(next, 200))
  },
  (text, next) => {
    const from = at(next, text.length)
    const piece = text.slice(from, from + at(next, 400))
    return text.slice(0, from) + piece + text.slice(from)
  },
  (text, next) => {
    const deep = pick(next, [10, 64, 65, 1_000, 100_000])
    const [open, close] = pick(next, [
      ['[', ']'],
      ['{"a":', '}']
    ])
    return spliced(text, next, /: /g, `: ${open.repeat(deep)}0${next() < 0.5 ? close.repeat(deep) : ''},"z": `)
  },
  (text, next) => spliced(text, next, /-?\d+(\.\d+)?/g, pick(next, NUMBERS)),
  (text, next) => spliced(text, next, /"[A-Za-z]+"(?=: )/g, JSON.stringify(pick(next, KEYS))),
  (text, next) => spliced(text, next, /\{/g, `{"__proto__": {"polluted": true, "schema": 1, "lengthMm": -5},`)
]

function spliced(text: string, next: Next, found: RegExp, instead: string): string {
  const places = [...text.matchAll(found)]
  if (places.length === 0) return text
  const place = pick(next, places)
  return text.slice(0, place.index) + instead + text.slice(place.index + place[0].length)
}

type Holder = Record<string, unknown> | unknown[]

/** On the values: wrong types, fields lost, ids twice, lists grown, figures moved, choices swapped. */
const VALUE_SPOILS: readonly ((holder: Holder, key: string, next: Next, all: readonly Place[]) => void)[] = [
  // A copy: what is spoilt further must not spoil the list.
  (holder, key, next) => set(holder, key, structuredClone(pick(next, VALUES))),
  (holder, key) => {
    if (Array.isArray(holder)) holder.splice(Number(key), 1)
    else Reflect.deleteProperty(holder, key)
  },
  (holder, key, next) => {
    const value = get(holder, key)
    if (Array.isArray(value) && value.length > 0) value.push(structuredClone(pick(next, value)))
    else set(holder, key, value)
  },
  (holder, key, next) => {
    const value = get(holder, key)
    if (Array.isArray(value) && value[0] !== undefined) {
      const [first] = value
      for (let more = pick(next, [3, 50, 600]); more > 0; more -= 1) value.push(renamed(first, `m${more}`))
    }
  },
  ...Array.from({ length: 4 }, () => moveFigure),
  ...Array.from({ length: 3 }, () => swapLike)
]

interface Place {
  readonly holder: Holder
  readonly key: string
}

/** A figure moved to where the parser may still take it. */
function moveFigure(_holder: Holder, _key: string, next: Next, all: readonly Place[]): void {
  const figures = all.filter(({ holder, key }) => typeof get(holder, key) === 'number' && key !== 'schema')
  const { holder, key } = pick(next, figures)
  const value = Number(get(holder, key))
  set(
    holder,
    key,
    pick(next, [0, 1, value * 2, value / 2, value * 10, value / 1_000, value + 0.1, -value, 20_000, 1e-9])
  )
}

/** A value taken from another place of the same name: ids that lead elsewhere, other kinds, other lists. */
function swapLike(_holder: Holder, _key: string, next: Next, all: readonly Place[]): void {
  const { holder, key } = pick(next, all)
  const like = all.filter((each) => each.key === key)
  const other = pick(next, like)
  set(holder, key, structuredClone(get(other.holder, other.key)))
}

const get = (holder: Holder, key: string): unknown => (Array.isArray(holder) ? holder[Number(key)] : holder[key])

function set(holder: Holder, key: string, value: unknown): void {
  if (Array.isArray(holder)) holder[Number(key)] = value
  else Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true })
}

const renamed = (value: unknown, id: string): unknown =>
  typeof value === 'object' && value !== null && 'id' in value
    ? { ...structuredClone(value), id }
    : structuredClone(value)

function placesIn(value: unknown, found: Place[] = []): readonly Place[] {
  if (typeof value !== 'object' || value === null) return found
  const holder = value as Holder
  for (const key of Object.keys(holder)) {
    found.push({ holder, key })
    placesIn(get(holder, key), found)
  }
  return found
}

/** One document spoilt: one time in three on its text, else by one to three changes of its values. */
export function spoilt(document: object, text: string, next: Next): string {
  if (next() < 1 / 3) return pick(next, TEXT_SPOILS)(text, next)
  const copy = structuredClone(document)
  for (let changes = 1 + at(next, 3); changes > 0; changes -= 1) {
    const all = placesIn(copy)
    const { holder, key } = pick(next, all)
    pick(next, VALUE_SPOILS)(holder, key, next, all)
  }
  return JSON.stringify(copy, null, 2)
}
