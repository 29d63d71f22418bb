import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { sayIn } from '../../shared-model/words'
import { readPdf } from '../sheet/read-pdf'
import { openDemo, openRoom, sheetDrawn } from './acts'
import { benchForTests } from './page'
import { today } from './today'

const bench = benchForTests()

for (const { id, name, design, workshop } of DEMOS) {
  test(`the build sheet of ${id}, written from its screen, bears every cut length and every hole`, async () => {
    const { page, complaints } = await bench.open()
    await openDemo(page, name)
    await openRoom(page, 'Build sheet')
    await sheetDrawn(page)
    const pages = await page.getByRole('list', { name: 'Pages of the build sheet' }).getByRole('img').count()
    const writing = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Write the PDF' }).click()
    const download = await writing
    expect(download.suggestedFilename()).toMatch(/-build-sheet\.pdf$/)

    const { sheets } = await readPdf(await readFile(await download.path()))
    expect(sheets.length).toBe(pages)
    // Letters are set in runs: a figure is looked for in the running text, spaces left out.
    const text = sheets
      .flatMap((sheet) => sheet.lettering.map((each) => each.text))
      .join('')
      .replace(/\s/g, '')
    const say = sayIn(workshop.shows, workshop.currency)
    const plan = evaluate(design, workshop, today())
    const missing = [
      ...plan.pieces.map((piece) => say.length(piece.lengthMm)),
      ...plan.channels.flatMap(({ layout }) => layout.holes.map((hole) => say.length(hole.atMm)))
    ].filter((figure) => !text.includes(plainFigure(figure)))
    expect(plan.pieces.length).toBeGreaterThan(0)
    expect(missing).toEqual([])
    for (const cut of design.channels) expect(text).toContain(plainFigure(say.length(cut.lengthMm)))
    expect(complaints).toEqual([])
  })
}

/** The figure without its unit, which stands at the head of a column. */
const plainFigure = (figure: string): string => figure.replace(/\s*(mm|in)$/, '').replace(/\s/g, '')
