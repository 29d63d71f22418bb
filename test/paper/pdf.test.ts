import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import { BARE_EDGE_MM, docDefinition, PAGES, type Paper } from '../../shared-model/paper'
import { boxOf, readPdf, type Sheet } from '../sheet/read-pdf'
import { demoSheet } from './demo-sheet'

/** An independent reader of PDF files, where the machine has it. */
const CHECKER: string = 'qpdf'
const PAPERS: readonly Paper[] = ['letter', 'a4']

describe.each(PAPERS)('a build sheet on %s', (paper) => {
  let bytes: Uint8Array
  let raw: string
  let sheets: Sheet[]
  let info: Record<string, unknown>
  beforeAll(async () => {
    bytes = await writePdf(docDefinition(demoSheet(paper), { paper, uncompressed: true }))
    raw = Buffer.from(bytes).toString('latin1')
    ;({ sheets, info } = await readPdf(bytes))
  })

  test('asks viewers for full size, in a version that knows of it (PDF 1.6, ISO 32000-1 table 150)', () => {
    expect(raw.slice(0, 8)).toBe('%PDF-1.7')
    expect(raw).toMatch(/\/ViewerPreferences \d+ 0 R/)
    expect(raw).toMatch(/\/PrintScaling \/None/)
    expect(raw).toMatch(/\/DisplayDocTitle true/)
  })

  test('has title, author and language', () => {
    expect(info.Title).toMatch(/build sheet$/)
    expect(info.Author).not.toBe('')
    expect(info.Language).toBe('en')
    expect(info.CreationDate).toBe('D:20260314000000Z')
  })

  test('has pages of the paper, upright or on their side (ISO 216, ANSI/ASME Y14.1)', () => {
    const { widthMm, heightMm } = PAGES[paper]
    for (const sheet of sheets) {
      const [short, long] = [Math.min(sheet.widthMm, sheet.heightMm), Math.max(sheet.widthMm, sheet.heightMm)]
      expect(short).toBeCloseTo(widthMm, 2)
      expect(long).toBeCloseTo(heightMm, 2)
    }
  })

  test('keeps everything 1/2 in from the edges of the paper', () => {
    for (const sheet of sheets) {
      const inside = (left: number, top: number, right: number, bottom: number, what: string): void => {
        const where = `${what} on sheet ${sheet.number}`
        expect(left, where).toBeGreaterThanOrEqual(BARE_EDGE_MM - 0.01)
        expect(top, where).toBeGreaterThanOrEqual(BARE_EDGE_MM - 0.01)
        expect(right, where).toBeLessThanOrEqual(sheet.widthMm - BARE_EDGE_MM + 0.01)
        expect(bottom, where).toBeLessThanOrEqual(sheet.heightMm - BARE_EDGE_MM + 0.01)
      }
      for (const path of sheet.paths) {
        const box = boxOf(path)
        inside(box.left, box.top, box.right, box.bottom, 'a line')
      }
      for (const one of sheet.lettering) {
        // Capitals stand 0.73 em above the baseline, tails 0.24 em below it.
        const em = (one.sizePt * 25.4) / 72
        if (one.turned) inside(one.xMm - 0.73 * em, one.yMm - one.widthMm, one.xMm + 0.24 * em, one.yMm, one.text)
        else inside(one.xMm, one.yMm - 0.73 * em, one.xMm + one.widthMm, one.yMm + 0.24 * em, one.text)
      }
    }
  })

  test('is lettered at 8 pt and up in drawings, 9 and up in tables, 10 and up in running text', () => {
    const sizes = new Set(sheets.flatMap((sheet) => sheet.lettering.map((one) => Math.round(one.sizePt * 10) / 10)))
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8)
  })

  test('has its title and its place among the sheets at the head of every page', () => {
    for (const sheet of sheets) {
      const head = sheet.lettering
        .filter((one) => one.yMm < 18)
        .map((one) => one.text)
        .join(' ')
      expect(head).toContain(`Sheet ${sheet.number} of ${sheets.length}`)
    }
    expect(sheets[0]?.lettering.some((one) => one.text === `1 of ${sheets.length}`)).toBe(true)
  })

  test('leaves no heading alone at the foot of a page', () => {
    for (const sheet of sheets) {
      for (const heading of sheet.lettering.filter((one) => one.sizePt > 11.2 && one.sizePt < 11.8)) {
        expect(
          sheet.lettering.some((one) => one.yMm > heading.yMm + 3 && one.yMm < sheet.heightMm - 23),
          heading.text
        ).toBe(true)
      }
    }
  })

  test('has no bare page', () => {
    for (const sheet of sheets)
      expect(sheet.lettering.filter((one) => one.yMm > 20).length, `sheet ${sheet.number}`).toBeGreaterThan(2)
  })

  test('has the card for the buyer on one page of its own, without a sheet number when it is printed alone', async () => {
    const alone = demoSheet(paper, { parts: ['buyers-card'] })
    const { sheets: pages } = await readPdf(await writePdf(docDefinition(alone, { paper })))
    expect(pages.length).toBe(1)
    expect(pages[0]?.lettering.map((one) => one.text).join(' ')).not.toMatch(/Sheet 1 of/)
    const last = sheets[sheets.length - 1]
    expect(last?.lettering.some((one) => one.text.startsWith('Card for the buyer'))).toBe(true)
  })

  test('carries its fonts, and only the letters used of them', async () => {
    const fonts = [...raw.matchAll(/\/FontName \/(\S+)/g)].map(([, name]) => name ?? '')
    expect(fonts.length).toBeGreaterThanOrEqual(2)
    for (const name of fonts) expect(name).toMatch(/^[A-Z]{6}\+DejaVuSansCondensed/)
    expect((raw.match(/\/FontFile2 /g) ?? []).length).toBe(fonts.length)
    // The two faces whole take 0.7 MB when packed.
    const packed = await writePdf(docDefinition(demoSheet(paper), { paper }))
    expect(packed.length).toBeLessThan(300_000)
  })

  test('gives the same bytes for the same input', async () => {
    const again = await writePdf(docDefinition(demoSheet(paper), { paper, uncompressed: true }))
    expect(Buffer.from(again).equals(Buffer.from(bytes))).toBe(true)
  })

  test('is found sound by qpdf where qpdf is installed', () => {
    const folder = mkdtempSync(join(tmpdir(), 'sheet-'))
    try {
      const file = join(folder, 'sheet.pdf')
      writeFileSync(file, bytes)
      const checked = spawnSync(CHECKER, ['--check', file], { encoding: 'utf8' })
      if (checked.error !== undefined) {
        process.stdout.write('qpdf is not installed here: the file was read by pdf.js only\n')
        expect(sheets.length).toBeGreaterThan(0)
        return
      }
      expect(`${checked.stdout}${checked.stderr}`).not.toMatch(/WARNING|ERROR:/)
      expect(checked.status).toBe(0)
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })
})
