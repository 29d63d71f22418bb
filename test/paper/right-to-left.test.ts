import { beforeAll, describe, expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import { docDefinition, svgTemplate } from '../../shared-model/paper'
import { buildSheet } from '../../shared-model/sheet'
import { readPdf } from '../sheet/read-pdf'
import { demoFor, demoPlan } from './demo-sheet'

// Unicode Standard Annex 9, rule L2: the first word of a right-to-left run stands rightmost.
describe.each([
  ['Hebrew', 'בזיליקום ליד החלון'],
  ['Arabic', 'ريحان قرب النافذة']
])('a name of several words in %s', (_, name) => {
  const { design, workshop } = demoFor('a4')
  const named = { ...design, title: name, channels: design.channels.map((each) => ({ ...each, name })) }
  const sheet = buildSheet(demoPlan('a4'), named, workshop)
  let pages: Awaited<ReturnType<typeof readPdf>>['sheets'] = []
  beforeAll(async () => {
    pages = (await readPdf(await writePdf(docDefinition(sheet, { paper: 'a4' })))).sheets
  })
  // The reader puts what it finds from left to right back into the order of reading, by rules of its own.
  test('stands with its first word rightmost and every word apart: in title block, page heads, headings and tables', () => {
    const read = pages.flatMap(({ lettering }) =>
      lettering.filter(({ text }) => /[\u0590-\u08FF\uFB1D-\uFEFC]/.test(text))
    )
    expect(Math.max(...read.map(({ sizePt }) => sizePt))).toBeGreaterThan(12)
    expect(read.length).toBeGreaterThan(pages.length)
    for (const { text } of read) expect(text.normalize('NFKC')).toContain(name)
  })

  test('goes into a template as it was typed: what shows the file orders it', () => {
    const [template] = sheet.templates
    if (template === undefined) throw new Error('no template')
    expect(svgTemplate(template, sheet.shows)).not.toContain('<tspan>')
  })
})
