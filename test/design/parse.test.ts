import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  DEMOS,
  type DocumentProblem,
  MOST_DOCUMENT_BYTES,
  type Parsed,
  parseDesign,
  parseDesignText,
  parseWorkshop,
  parseWorkshopText,
  printDesign,
  printWorkshop
} from '../../shared-model/design'
import { anyDesign, anyWorkshop } from '../designs/arbitrary'
import { corpus } from '../designs/documents'

const SEED = 4_711
const [kitchen, market] = DEMOS.map((demo) => demo)
if (kitchen === undefined || market === undefined) throw new Error('the demos are missing')

const problemsOf = <T>(parsed: Parsed<T>): readonly DocumentProblem[] => (parsed.ok ? [] : parsed.problem)

interface Leaf {
  readonly path: readonly (string | number)[]
  /** As the parser names it: list items by their id. */
  readonly field: string
  readonly value: unknown
}

/** Every value of a document that is not an object or a list, without the free texts of the evidence. */
const leaves = (value: unknown, path: readonly (string | number)[] = [], field = ''): readonly Leaf[] => {
  if (typeof value !== 'object' || value === null) return [{ path, field, value }]
  const name = (key: string | number, item: unknown): string => {
    const id = Array.isArray(value) && typeof item === 'object' && item !== null && 'id' in item ? item.id : key
    return field === '' ? `${id}` : `${field}.${id}`
  }
  if (Array.isArray(value)) return value.flatMap((item, k) => leaves(item, [...path, k], name(k, item)))
  return Object.entries(value).flatMap(([key, item]) =>
    key === 'evidence' ? [] : leaves(item, [...path, key], name(key, item))
  )
}

const withValue = (whole: unknown, [key, ...rest]: readonly (string | number)[], value: unknown): unknown => {
  if (key === undefined) return value
  if (Array.isArray(whole)) return whole.map((each, k) => (k === key ? withValue(each, rest, value) : each))
  return { ...(whole as object), [key]: withValue((whole as Record<string, unknown>)[key], rest, value) }
}

const DOCUMENTS = [
  { name: 'kitchen design', value: kitchen.design, parse: parseDesign },
  { name: 'market design', value: market.design, parse: parseDesign },
  { name: 'kitchen workshop', value: kitchen.workshop, parse: parseWorkshop },
  { name: 'market workshop', value: market.workshop, parse: parseWorkshop }
] as const

describe('reading documents', () => {
  it.each(DOCUMENTS)('passes the $name as it is, as a fresh object', ({ value, parse }) => {
    const parsed = parse(value)
    expect(problemsOf<unknown>(parsed)).toEqual([])
    if (!parsed.ok) return
    expect(parsed.value).toEqual(value)
    expect(parsed.value).not.toBe(value)
  })

  it.each(DOCUMENTS)('names each malformed field of the $name, whatever stands in it', ({ value, parse }) => {
    for (const { path, field } of leaves(value)) {
      // An item goes by its id: with a wrong one it goes by its place instead.
      if (path.at(-1) === 'id' || field === 'schema') continue
      for (const wrong of [{ not: 'a value' }, Number.NaN, Number.POSITIVE_INFINITY, undefined]) {
        const problems = problemsOf<unknown>(parse(withValue(value, path, wrong)))
        expect(
          problems.map((problem) => problem.where?.field),
          `${field} = ${String(wrong)}`
        ).toContain(field)
      }
    }
  })

  it.each(DOCUMENTS)('names both bounds of each number of the $name that is far too large', ({ value, parse }) => {
    for (const { path, field, value: found } of leaves(value)) {
      if (typeof found !== 'number' || field === 'schema') continue
      for (const wrong of [1e15, -1e15]) {
        const problems = problemsOf<unknown>(parse(withValue(value, path, wrong)))
        const named = problems.find((problem) => problem.where?.field === field)
        expect(named, `${field} = ${wrong}`).toBeDefined()
        if (named?.code === 'field-out-of-range') {
          expect(named.figures.least).toBeLessThan(named.figures.most)
          expect(named.figures.value).toBe(wrong)
        } else expect(['field-not-one-of']).toContain(named?.code)
      }
    }
  })

  it('collects every problem of a document, not the first alone', () => {
    const [channel, ...others] = kitchen.design.channels
    const wrong = {
      ...kitchen.design,
      title: 7,
      quantity: 0,
      channels: [{ ...channel, lengthMm: -1, heading: 45 }, ...others]
    }
    const found = problemsOf(parseDesign(wrong)).map((problem) => [problem.code, problem.where?.field])
    expect(found).toEqual(
      [
        ['field-wrong-type', 'title'],
        ['field-not-one-of', 'channels.c1.heading'],
        ['field-out-of-range', 'channels.c1.lengthMm'],
        ['field-out-of-range', 'quantity']
      ].sort((a, b) => order(a, b, found))
    )
  })

  it('refuses half a unit and a batch of a thousand million', () => {
    for (const [quantity, code] of [
      [1.5, 'field-not-whole'],
      [1e9, 'field-out-of-range'],
      [0, 'field-out-of-range']
    ] as const)
      expect(problemsOf(parseDesign({ ...kitchen.design, quantity }))).toEqual([
        { code, figures: { field: 'quantity', value: quantity, least: 1, most: 1_000 }, where: { field: 'quantity' } }
      ])
  })

  it('names ids that stand twice and ids that lead nowhere', () => {
    const [c1, ...rest] = kitchen.design.channels
    if (c1 === undefined) throw new Error('no channel')
    const wrong = {
      ...kitchen.design,
      channels: [
        { ...c1, profileId: 'gone', sites: c1.sites.map((site) => ({ ...site, id: 's1', seatId: 'nowhere' })) },
        { ...c1 },
        ...rest
      ]
    }
    const found = problemsOf(parseDesign(wrong)).map(({ code, where }) => `${code} ${where?.field}`)
    expect(found).toContain('id-twice channels.c1')
    expect(found).toContain('id-twice channels.c1.sites.s1')
    expect(found).toContain('reference-dangling channels.c1.profileId')
    expect(found).toContain('reference-dangling channels.c1.sites.s1.seatId')
  })

  it('names measures of a part that contradict each other, with both bounds', () => {
    const { parts } = kitchen.design
    const cups = parts.cups.map((cup) => (cup.id === 'cup-2in' ? { ...cup, bottomMm: 55 } : cup))
    const profiles = parts.profiles.map((profile) =>
      profile.id === 'downpipe-80' ? { ...profile, averageWallMm: 45, leastWallMm: 45 } : profile
    )
    const problems = problemsOf(parseDesign({ ...kitchen.design, parts: { ...parts, cups, profiles } }))
    // The body under the rim is 49 mm; half of an 80 mm side is 40 mm.
    expect(problems).toContainEqual({
      code: 'sizes-disagree',
      figures: { field: 'parts.cups.cup-2in.bottomMm', value: 55, least: 0, most: 49 },
      where: { field: 'parts.cups.cup-2in.bottomMm' }
    })
    expect(problems.some(({ figures }) => 'most' in figures && figures.most === 40)).toBe(true)
  })

  it('drops keys that it does not know, and those that would reach an object’s prototype', () => {
    const hostile = JSON.stringify(kitchen.design).replace(
      '"title"',
      '"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},"unknown":1,"title"'
    )
    const parsed = parseDesignText(hostile)
    expect(problemsOf(parsed)).toEqual([])
    if (!parsed.ok) return
    expect(parsed.value).toEqual(kitchen.design)
    expect(Object.getPrototypeOf(parsed.value)).toBe(Object.prototype)
    expect('polluted' in {}).toBe(false)
  })

  it('tells a newer schema from an unknown one', () => {
    expect(problemsOf(parseDesign({ ...kitchen.design, schema: 2 }))).toEqual([
      { code: 'schema-newer', figures: { found: 2, known: 1 }, where: { field: 'schema' } }
    ])
    for (const schema of [0, -1, 1.5, '1', null, undefined])
      expect(problemsOf(parseDesign({ ...kitchen.design, schema })).map(({ code }) => code)).toEqual(['schema-unknown'])
  })

  it.each([null, [], 7, 'design', true])('refuses %j as a document', (value) => {
    expect(problemsOf(parseDesign(value)).map(({ code }) => code)).toEqual(['field-wrong-type'])
  })
})

describe('reading the text of a document', () => {
  it('refuses a text over 20 MiB before it is read, in UTF-8 bytes', () => {
    expect(problemsOf(parseDesignText(' '.repeat(MOST_DOCUMENT_BYTES + 1)))[0]?.code).toBe('document-too-large')
    // é takes two bytes: half as many of them are one byte too many.
    expect(problemsOf(parseDesignText('é'.repeat(MOST_DOCUMENT_BYTES / 2 + 1)))[0]?.code).toBe('document-too-large')
  })

  it('refuses more than 64 levels, brackets inside texts not counted', () => {
    const nested = (depth: number): string => `${'['.repeat(depth)}${']'.repeat(depth)}`
    expect(problemsOf(parseDesignText(nested(65)))[0]?.code).toBe('document-too-deep')
    expect(problemsOf(parseDesignText(nested(64)))[0]?.code).toBe('field-wrong-type')
    expect(problemsOf(parseDesignText(`"${'['.repeat(500)}"`))[0]?.code).toBe('field-wrong-type')
  })

  it('refuses more values than any design has', () => {
    expect(problemsOf(parseDesignText(`[${'0,'.repeat(2_000_001)}0]`))[0]?.code).toBe('document-too-many-values')
  })

  it.each(['', '{', 'not json', '{"schema":1,}'])('says that %j is not a document', (text) => {
    expect(problemsOf(parseDesignText(text)).map(({ code }) => code)).toEqual(['document-not-json'])
  })

  it('refuses a number that is too large to be one', () => {
    const text = printDesign(kitchen.design).replace('"fillShare": 0.62', '"fillShare": 1e999')
    expect(problemsOf(parseDesignText(text))).toEqual([
      {
        code: 'field-not-finite',
        figures: { field: 'channels.c1.fillShare', least: 0, most: 1 },
        where: { field: 'channels.c1.fillShare' }
      }
    ])
  })

  it('reads back what it prints, and prints the same bytes again', () => {
    fc.assert(
      fc.property(anyDesign, anyWorkshop, (design, workshop) => {
        const text = printDesign(design)
        const parsed = parseDesignText(text)
        expect(parsed).toEqual({ ok: true, value: design })
        if (parsed.ok) expect(printDesign(parsed.value)).toBe(text)
        expect(parseWorkshopText(printWorkshop(workshop))).toEqual({ ok: true, value: workshop })
      }),
      { seed: SEED, numRuns: 40 }
    )
  })

  it('opens every document ever written, and saves it as it now is for good', () => {
    for (const name of ['kitchen-sill', 'market-batch']) {
      const design = parseDesignText(corpus(`${name}.schema-1.design.json`))
      expect(problemsOf(design)).toEqual([])
      if (design.ok) expect(parseDesignText(printDesign(design.value))).toEqual(design)
      const workshop = parseWorkshopText(corpus(`${name}.schema-1.workshop.json`))
      expect(problemsOf(workshop)).toEqual([])
      if (workshop.ok) expect(parseWorkshopText(printWorkshop(workshop.value))).toEqual(workshop)
    }
  })
})

/** Keeps the order in which the parser found them: which problems are found is the point, not their order. */
const order = (a: readonly unknown[], b: readonly unknown[], found: readonly (readonly unknown[])[]): number =>
  found.findIndex((each) => each[1] === a[1]) - found.findIndex((each) => each[1] === b[1])
