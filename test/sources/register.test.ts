import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { SOURCES, source } from '../../shared-model/sources'

const model = new URL('../../shared-model', import.meta.url).pathname
const tests = new URL('..', import.meta.url).pathname

interface Text {
  readonly path: string
  readonly room: string
  readonly text: string
}

/** Every source and data file under a folder. */
const read = (root: string): readonly Text[] =>
  readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(ts|json)$/.test(path) && !path.endsWith('.d.ts'))
    .map((path) => ({ path, room: path.split('/')[0] ?? '', text: readFileSync(join(root, path), 'utf8') }))

const files = read(model)
const rooms = files.filter(({ path }) => !path.startsWith('sources/'))
const testText = (room: string): string =>
  testFiles
    .filter((file) => file.room === room)
    .map(({ text }) => text)
    .join('\n')
const testFiles = read(tests)
const cited = (text: string): readonly string[] =>
  [...text.matchAll(/@source ([a-z0-9-]+)/g)].map((match) => match[1] ?? '')

describe('the register of sources', () => {
  it('holds every id that a formula names', () => {
    const missing = rooms.flatMap(({ path, text }) =>
      cited(text)
        .filter((id) => source(id) === undefined)
        .map((id) => `${path}: ${id}`)
    )
    expect(missing).toEqual([])
  })

  it('holds no entry that nothing rests on', () => {
    const all = rooms.map(({ text }) => text).join('\n')
    const unused = Object.keys(SOURCES).filter(
      (id) => !all.includes(`'${id}'`) && !all.includes(`"${id}"`) && !new RegExp(`@source ${id}\\b(?!-)`).test(all)
    )
    expect(unused).toEqual([])
  })

  it('gives each entry a body, a title, a year, a place and a grade, and loses none where rooms are put together', () => {
    for (const [id, entry] of Object.entries(SOURCES)) {
      expect(id).toMatch(/^[a-z0-9-]+$/)
      for (const text of [entry.body, entry.title, entry.year, entry.where]) expect(text.trim(), id).not.toBe('')
      expect(['published', 'published-in-part', 'measured', 'common-practice', 'from-memory']).toContain(entry.grade)
    }
    const written = files
      .filter(({ path }) => path.startsWith('sources/entries/'))
      .flatMap(({ text }) => [...text.matchAll(/^ {2}'?([a-z0-9][a-z0-9-]*)'?: \{$/gm)].map((match) => match[1] ?? ''))
    expect(written.filter((id, index) => written.indexOf(id) !== index)).toEqual([])
    expect(new Set(written)).toEqual(new Set(Object.keys(SOURCES)))
  })

  it('knows no id that it does not hold', () => {
    expect(source('toString')).toBeUndefined()
    expect(source('no-such-source')).toBeUndefined()
  })
})

describe('every formula file', () => {
  const exported = (text: string): readonly string[] =>
    [...text.matchAll(/export (?:const|function) (\w+)/g)].map((match) => match[1] ?? '')
  // The published checks are worked out by the functions that these name.
  const checks = read(new URL('../../main/commands/reference', import.meta.url).pathname)
    .map(({ text }) => text)
    .join('\n')

  /** Named by a test of the room or a published check, or used by a file of the room that is. */
  const isTested = (file: Text, seen: ReadonlySet<string> = new Set()): boolean => {
    const names = new RegExp(`\\b(${exported(file.text).join('|')})\\b`)
    if (exported(file.text).length > 0 && (names.test(testText(file.room)) || names.test(checks))) return true
    const name = file.path.replace(/^.*\//, '').replace(/\.ts$/, '')
    const users = rooms.filter(
      (other) => other.room === file.room && !other.path.endsWith('index.ts') && other.text.includes(`/${name}'`)
    )
    return users.some((user) => !seen.has(user.path) && isTested(user, new Set([...seen, file.path])))
  }

  for (const file of rooms.filter(({ text }) => cited(text).length > 0)) {
    it(`${file.path} is tested in its room, or says that no published value exists`, () => {
      expect(isTested(file) || /no (published value|source)/i.test(file.text)).toBe(true)
    })
  }
})
