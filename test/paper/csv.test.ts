import { describe, expect, test } from 'vitest'
import { csvTables } from '../../shared-model/paper'
import type { SheetData, TableBlock } from '../../shared-model/sheet'
import { demoSheet } from './demo-sheet'

/** A reader of RFC 4180 of its own, for what the tables write. */
const readCsv = (text: string): string[][] => {
  const rows: string[][] = []
  let row: string[] = []
  let field = ''
  let quoted = false
  for (let at = 0; at < text.length; at += 1) {
    const letter = text[at]
    if (quoted) {
      if (letter === '"' && text[at + 1] === '"') {
        field += '"'
        at += 1
      } else if (letter === '"') quoted = false
      else field += letter
    } else if (letter === '"') quoted = true
    else if (letter === ',') {
      row.push(field)
      field = ''
    } else if (letter === '\r' && text[at + 1] === '\n') {
      rows.push([...row, field])
      row = []
      field = ''
      at += 1
    } else field += letter
  }
  return rows
}

const sheetWith = (table: TableBlock): SheetData => ({
  ...demoSheet('a4', { parts: [] }),
  sections: [{ part: 'build', number: '', heading: '', startsPage: false, blocks: [table] }]
})

const table = (rows: TableBlock['rows']): TableBlock => ({
  kind: 'table',
  name: 'test',
  heading: '',
  note: '',
  columns: [
    { head: 'What', align: 'left', widthMm: 'rest' },
    { head: 'Length', align: 'right', widthMm: 30, exactUnit: 'mm' }
  ],
  rows
})

describe('tables as comma-separated text', () => {
  test('end lines with CRLF and double quotes inside quotes (RFC 4180, section 2, rules 1, 6 and 7)', () => {
    const [csv] = csvTables(sheetWith(table([[{ text: 'a "b", c' }, { text: '7 1/2 in', exact: 190.5 }]])))
    expect(csv?.text).toBe('What,Length,Length (mm)\r\n"a ""b"", c",7 1/2 in,190.5\r\n')
  })

  test('keep text that a spreadsheet would run from running (OWASP, CSV Injection)', () => {
    const wicked = ['=1+1', '+1', '-1+1', '@SUM(A1)', '\t=1', '\r=1', ' =1', '|calc']
    const [csv] = csvTables(sheetWith(table(wicked.map((text) => [{ text }, { text: '' }]))))
    const rows = readCsv(csv?.text ?? '').slice(1)
    expect(rows.map((row) => row[0])).toEqual(wicked.map((text) => `'${text}`))
  })

  test('keep numbers numbers, below zero too', () => {
    const [csv] = csvTables(sheetWith(table([[{ text: '-12.5' }, { text: '-1/2 in', exact: -12.7 }]])))
    expect(csv?.text.split('\r\n')[1]).toBe("-12.5,'-1/2 in,-12.7")
  })

  test('hold as many fields in each row as there are heads, and lose no row', () => {
    const sheet = demoSheet('letter')
    const blocks = sheet.sections.flatMap((section) => section.blocks)
    const tables = blocks.filter((block): block is TableBlock => block.kind === 'table' && block.name !== '')
    const texts = csvTables(sheet)
    expect(new Set(texts.map(({ name }) => name)).size).toBe(texts.length)
    for (const [index, { text }] of texts.entries()) {
      const rows = readCsv(text)
      expect(rows.length).toBe((tables[index]?.rows.length ?? 0) + 1)
      expect(new Set(rows.map((row) => row.length)).size).toBe(1)
      expect(text).not.toContain('☐')
    }
  })
})
