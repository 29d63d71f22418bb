import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { create } from 'fontkit'
import { beforeAll, describe, expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import { parseDesign, parseDesignText, parseWorkshop, printDesign } from '../../shared-model/design'
import { csvTables, docDefinition, FONT_FILES, FONT_FOLDER, FONT_PACKAGE, svgTemplate } from '../../shared-model/paper'
import { evaluate } from '../../shared-model/plan'
import { buildSheet } from '../../shared-model/sheet'
import { HOSTILE_DESIGN, HOSTILE_WORKSHOP } from '../designs/hostile'
import { readPdf } from '../sheet/read-pdf'

const plan = evaluate(HOSTILE_DESIGN, HOSTILE_WORKSHOP, '2026-03-14', { budget: { work: 2_000, stop: () => false } })
const sheet = buildSheet(plan, HOSTILE_DESIGN, HOSTILE_WORKSHOP)

describe('a design and a workshop whose every text is hostile', () => {
  test('pass the parser as they are, and come back from their own print', () => {
    expect(parseDesign(HOSTILE_DESIGN)).toEqual({ ok: true, value: HOSTILE_DESIGN })
    expect(parseDesignText(printDesign(HOSTILE_DESIGN))).toEqual({ ok: true, value: HOSTILE_DESIGN })
    expect(parseWorkshop(HOSTILE_WORKSHOP)).toEqual({ ok: true, value: HOSTILE_WORKSHOP })
  })

  test('a name of 10,000 characters is refused by name, with its length and the most', () => {
    const [channel, ...others] = HOSTILE_DESIGN.channels
    const parsed = parseDesign({ ...HOSTILE_DESIGN, channels: [{ ...channel, name: 'W'.repeat(10_000) }, ...others] })
    expect(parsed).toMatchObject({
      ok: false,
      problem: [{ code: 'text-too-long', figures: { length: 10_000, most: 200 } }]
    })
  })

  // OWASP, CSV Injection: a cell may not begin with =, +, -, @, tab or carriage return.
  test('stand in the tables guarded, in cells that hold together', () => {
    for (const { name, text } of csvTables(sheet)) {
      for (const row of cellsOf(text)) {
        for (const cell of row) expect(cell, name).not.toMatch(/^(?!-?\d+(\.\d+)?$)\s*[=+\-@\t\r]/)
        expect(row.length, name).toBe(cellsOf(text)[0]?.length)
      }
    }
  })

  test('stand in the templates escaped: the drawing has no element but its own', () => {
    for (const template of sheet.templates) {
      const svg = svgTemplate(template, sheet.shows)
      const elements = [...svg.matchAll(/<([A-Za-z][\w-]*)/g)].map(([, element]) => element)
      expect(elements.filter((each) => ['b', 'img', 'script', 'foreignObject'].includes(each ?? ''))).toEqual([])
      expect(svg).not.toMatch(/<[^>]* on\w+=/)
      expect(elements.filter((each) => each === 'svg').length).toBe(1)
    }
  })

  describe('in the printed sheet', () => {
    let words = ''
    let outside: readonly string[] = []
    beforeAll(async () => {
      const { sheets } = await readPdf(await writePdf(docDefinition(sheet, { paper: 'a4' })))
      words = sheets.flatMap(({ lettering }) => lettering.map(({ text }) => text)).join('\n')
      outside = sheets.flatMap((page) =>
        page.lettering
          .filter(({ turned, xMm, widthMm }) => !turned && (xMm < 0 || xMm + widthMm > page.widthMm))
          .map(({ text }) => `${page.number}: ${text.slice(0, 40)}`)
      )
    })

    test('are read back as the text they are', () => {
      expect(words).toContain('<b class="injected">bold')
      expect(words.replaceAll('\n', '')).toContain('<script')
    })

    test('run over no edge of the paper', () => {
      expect(outside).toEqual([])
    })

    test.each(['W'.repeat(200), 'W'.repeat(29), 'Wm'.repeat(14), '汉'.repeat(200), `${'M'.repeat(28)} `.repeat(6)])(
      'a label keeps a title of whatever width on its paper: %s',
      async (title) => {
        const design = { ...HOSTILE_DESIGN, title, number: title.slice(0, 100), maker: title }
        const labels = buildSheet(plan, design, HOSTILE_WORKSHOP)
        const alone = { ...labels, sections: labels.sections.filter(({ part }) => part === 'labels'), templates: [] }
        const { sheets } = await readPdf(await writePdf(docDefinition(alone, { paper: 'letter' })))
        const all = sheets.flatMap((page) => page.lettering.map((each) => ({ ...each, pageMm: page.widthMm })))
        expect(all.length).toBeGreaterThan(10)
        // Two labels abreast: what begins in the left one ends before the right one's frame, at the middle of the page.
        const over = all.filter(({ xMm, widthMm, pageMm, sizePt }) => {
          const mostMm = sizePt > 9.5 && xMm < pageMm / 2 - 5 && sizePt < 15 ? pageMm / 2 + 1 : pageMm
          return xMm < 0 || xMm + widthMm > mostMm
        })
        expect(over).toEqual([])
      }
    )

    test('hold no sign that turns the order of what stands beside them, but a mark in its place', () => {
      expect(words).not.toMatch(/[\u202A-\u202E\u2066-\u2069]/)
      expect(words).toContain('\uFFFDgnp.exe\uFFFD')
      for (const template of sheet.templates)
        expect(svgTemplate(template, sheet.shows)).not.toMatch(/[\u202A-\u202E\u2066-\u2069]/)
    })

    test('show a box for each sign that the faces lack', () => {
      const folder = join(dirname(createRequire(import.meta.url).resolve(`${FONT_PACKAGE}/package.json`)), FONT_FOLDER)
      for (const { file } of FONT_FILES) {
        const face = create(readFileSync(join(folder, file)))
        if (!('hasGlyphForCodePoint' in face)) throw new Error(`${file} is a collection`)
        // U+1F331, seedling: no face here has it; glyph 0 stands for it (OpenType, "Glyph 0: the .notdef glyph").
        expect(face.hasGlyphForCodePoint(0x1f331)).toBe(false)
        const [glyph] = face.glyphsForString('\u{1F331}')
        expect(glyph?.id).toBe(0)
        expect(glyph?.path.commands.length).toBeGreaterThan(4)
        expect(glyph?.advanceWidth).toBeGreaterThan(0)
      }
    })
  })
})

/** Cells by row, read as RFC 4180 says by code that the program does not use. */
function cellsOf(text: string): readonly (readonly string[])[] {
  const rows: string[][] = []
  let row: string[] = []
  const pattern = /("((?:[^"]|"")*)"|[^,\r\n"]*)(,|\r\n)/gy
  for (let found = pattern.exec(text); found !== null; found = pattern.exec(text)) {
    row.push(found[2] === undefined ? (found[1] ?? '') : found[2].replaceAll('""', '"'))
    if (found[3] === ',') continue
    rows.push(row)
    row = []
  }
  return rows
}
