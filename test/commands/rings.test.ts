import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runRings } from '../../main/commands/rings'

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rings-'))
})
afterAll(async () => {
  await rm(folder, { recursive: true, force: true })
})

const run = async (argv: readonly string[]) => {
  const out: string[] = []
  const err: string[] = []
  const code = await runRings(argv, { out: (line) => out.push(line), err: (line) => err.push(line) })
  return { code, out, err }
}

const file = async (name: string, text: string) => {
  const path = join(folder, name)
  await writeFile(path, text)
  return path
}

const caseLine = (more: object) =>
  JSON.stringify({
    name: 'one',
    widthMm: 350,
    heightMm: 50,
    cutDiameterMm: 50,
    webMm: 0,
    edgeMm: 0,
    known: 7,
    upper: 7,
    ...more
  })

describe('the rings command', () => {
  it('passes the strips of the reference cases, which the strip theorem decides', async () => {
    const all = await readFile(new URL('../reference/rings.jsonl', import.meta.url), 'utf8')
    const strips = all.split('\n').filter((line) => line.includes('"strip'))
    const { code, out } = await run([await file('strips.jsonl', strips.join('\n')), '--limit', '2'])
    expect(out.at(-1)).toBe(`${strips.length} passed, 0 failed`)
    expect(code).toBe(0)
    for (const line of out.slice(0, -1)) {
      const { count, upperBound, proven, valid, centres, name, ms } = JSON.parse(line)
      expect({ proven, valid, name: typeof name, ms: typeof ms }).toEqual({
        proven: true,
        valid: true,
        name: 'string',
        ms: 'number'
      })
      expect([upperBound, centres.length]).toEqual([count, count])
    }
  })

  it('fails a case that claims more circles than fit', async () => {
    const { code, out } = await run([await file('more.jsonl', caseLine({ known: 8, upper: null })), '--limit', '1'])
    expect([code, out.at(-1)]).toEqual([1, '0 passed, 1 failed'])
  })

  it.each([
    ['no file', [], 'a file of cases is wanted'],
    ['an unknown option', ['cases.jsonl', '--fast'], '--fast: there is no such option'],
    ['a limit that is none', ['cases.jsonl', '--limit', 'soon'], '--limit: seconds above 0 are wanted'],
    ['a file that is not there', ['nowhere.jsonl'], 'nowhere.jsonl: cannot be read']
  ])('refuses %s in one line', async (_, argv, words) => {
    const { code, out, err } = await run(argv)
    expect([code, out.length, err.length]).toEqual([2, 0, 1])
    expect(err[0]).toContain(words)
  })

  it('names line and field of what cannot be read', async () => {
    const { code, err } = await run([await file('bad.jsonl', `${caseLine({})}\n${caseLine({ webMm: 'thin' })}`)])
    expect(code).toBe(2)
    expect(err[0]).toContain('line 2: webMm: millimetres are wanted')
  })
})
