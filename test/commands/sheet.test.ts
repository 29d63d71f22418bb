import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { runSheet } from '../../main/commands/sheet'
import { DEMOS, printDesign, printWorkshop } from '../../shared-model/design'

let folder: string
let out: string[]
let err: string[]
const io = { out: (line: string) => out.push(line), err: (line: string) => err.push(line) }
const market = DEMOS[1]
if (market === undefined) throw new Error('a second demo is wanted')

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sheet-'))
  out = []
  err = []
  writeFileSync(join(folder, 'design.json'), printDesign(market.design))
  writeFileSync(join(folder, 'shop.json'), printWorkshop(market.workshop))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const run = (...words: string[]): Promise<number> => runSheet(words, io)

describe('the sheet command', () => {
  test('writes the PDF, the card, the tables and the templates, and prints their paths', async () => {
    const to = join(folder, 'made', 'here')
    const code = await run(
      join(folder, 'design.json'),
      '--workshop',
      join(folder, 'shop.json'),
      '--out',
      to,
      '--paper',
      'a4',
      '--units',
      'mm',
      '--date',
      '2026-03-14'
    )
    expect(err).toEqual([])
    expect(code).toBe(0)
    expect(out.map((path) => path.slice(to.length + 1)).sort()).toEqual(readdirSync(to).sort())
    const names = readdirSync(to).join(' ')
    expect(names).toMatch(/build-sheet\.pdf/)
    expect(names).toMatch(/buyers-card\.pdf/)
    expect(names).toMatch(/-cuts\.csv/)
    expect(names).toMatch(/-channel-1\.svg/)
    expect(
      readFileSync(out.find((path) => path.endsWith('build-sheet.pdf')) ?? '')
        .subarray(0, 8)
        .toString()
    ).toBe('%PDF-1.7')
    expect(readFileSync(out.find((path) => path.endsWith('-cuts.csv')) ?? '', 'utf8')).toMatch(/ mm/)
  })

  test('leaves prices out when asked', async () => {
    await run(
      join(folder, 'design.json'),
      '--workshop',
      join(folder, 'shop.json'),
      '--out',
      join(folder, 'o'),
      '--no-prices'
    )
    const text = readdirSync(join(folder, 'o'))
      .filter((name) => name.endsWith('.csv'))
      .map((name) => readFileSync(join(folder, 'o', name), 'utf8'))
      .join('\n')
    expect(text).not.toContain(market.workshop.currency)
  })

  test('says no with one line and the field, and leaves nothing behind', async () => {
    writeFileSync(
      join(folder, 'broken.json'),
      printDesign(market.design).replace('"quantity": 18', '"quantity": "many"')
    )
    writeFileSync(join(folder, 'no.json'), 'no JSON')
    mkdirSync(join(folder, 'full'))
    writeFileSync(join(folder, 'full', 'taken'), '')
    const design = join(folder, 'design.json')
    const cases: readonly (readonly [readonly string[], RegExp])[] = [
      [[], /design file/],
      [[design], /--out/],
      [[join(folder, 'none.json'), '--out', join(folder, 'o')], /none\.json/],
      [[join(folder, 'broken.json'), '--out', join(folder, 'o')], /quantity/],
      [[join(folder, 'no.json'), '--out', join(folder, 'o')], /no\.json/],
      [[design, '--out', join(folder, 'o'), '--paper', 'a3'], /--paper a3/],
      [[design, '--out', join(folder, 'o'), '--units', 'ft'], /--units ft/],
      [[design, '--out', join(folder, 'o'), '--date', '2026-02-30'], /--date 2026-02-30/],
      [[design, '--out', join(folder, 'o'), '--colour'], /--colour/],
      [[design, '--out', join(folder, 'full', 'taken')], /--out/],
      [[design, '--workshop', join(folder, 'no.json'), '--out', join(folder, 'o')], /no\.json/]
    ]
    for (const [words, says] of cases) {
      err = []
      expect(await run(...words)).toBe(2)
      expect(err.length).toBe(1)
      expect(err[0]).toMatch(says)
      expect(err[0]).not.toContain('\n')
    }
    expect(out).toEqual([])
    expect(readdirSync(folder).sort()).toEqual(['broken.json', 'design.json', 'full', 'no.json', 'shop.json'])
  })
})
