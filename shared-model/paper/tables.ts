import type { Cell, Column, TableBlock } from '../sheet'
import { onPaper } from './on-paper'
import { pt } from './page'
import { HEAD_GROUND, INK, RULE } from './palette'
import type { PdfCell, PdfNode, PdfTableLayout } from './pdf-node'
import { tableHeightMm } from './table-height'
import { unbroken } from './unbroken'

const ALIGN = { left: 'left', right: 'right', centre: 'center' } as const

/** Tables no higher than this are kept on one page with their note. */
const KEPT_MM = 130

/**
 * A table with its heading (and, where it opens a section, the section's) as the first of its repeated rows, so that no
 * heading stands alone and no row is split.
 */
export const tableContent = (whole: TableBlock, section = '', above = 0): PdfNode => {
  const table = onPaper(whole)
  const titles = [
    ...(section === '' ? [] : [titleRow(table, section, 'section', [-4, above, 0, 6])]),
    ...(table.heading === '' ? [] : [titleRow(table, table.heading, 'subheading', [-4, 0, 0, 1])])
  ]
  const heads = table.columns.map(
    (column): PdfCell => ({
      text: column.head === '☐' ? ' ' : unbroken(column.head),
      style: 'tableHead',
      alignment: ALIGN[column.align]
    })
  )
  const headed = table.columns.some(({ head }) => head !== '')
  const headerRows = titles.length + (headed ? 1 : 0)
  const gaps = table.columns.map((column, index) => gapBefore(column, table.columns[index - 1]))
  return {
    margin: [0, 0, 0, table.close === true || (table.heading === '' && table.note === '') ? 5 : 12],
    style: 'table',
    unbreakable: tableHeightMm(table) <= KEPT_MM,
    stack: [
      {
        table: {
          headerRows,
          keepWithHeaderRows: Math.min(2, table.rows.length),
          dontBreakRows: true,
          widths: table.columns.map((column, index) =>
            column.widthMm === 'rest' ? '*' : pt(column.widthMm) - RIGHT_PT - (gaps[index] ?? 0)
          ),
          body: [
            ...titles,
            ...(headed ? [heads] : []),
            ...table.rows.map((row) => table.columns.map((column, index) => cellContent(row[index], column)))
          ]
        },
        layout: rules(headerRows, gaps, table.close === true ? CLOSE_PT : APART_PT, headed)
      },
      ...(table.note === ''
        ? []
        : [{ text: unbroken(table.note), style: 'note', margin: [0, 3, 0, 0] } satisfies PdfNode])
    ]
  }
}

const RIGHT_PT = 4
/** Above and below the words of a row. */
const APART_PT = 3.2
export const CLOSE_PT = 0.8

/** Words after a right-aligned figure stand well clear of it. */
const gapBefore = (column: Column, before: Column | undefined): number =>
  before?.align === 'right' && column.align === 'left' ? 14 : 4

const titleRow = (
  table: TableBlock,
  words: string,
  style: string,
  margin: [number, number, number, number]
): PdfCell[] => [
  { text: unbroken(words), style, colSpan: table.columns.length, margin },
  ...table.columns.slice(1).map((): PdfCell => ({ text: '' }))
]

const cellContent = (cell: Cell | undefined, column: Column): PdfCell => {
  if (cell === undefined) return { text: '' }
  const alignment = ALIGN[column.align]
  if (cell.text === '☐') return { text: '☐', fontSize: 12, lineHeight: 0.8, alignment }
  const bold = cell.strong === true
  const words = unbroken(cell.text)
  if (cell.lead !== undefined) return { text: [{ text: `${cell.lead}:  `, bold: true }, { text: words }], alignment }
  if (cell.under === undefined || cell.under === '') return { text: words, alignment, bold }
  return { text: [{ text: words, bold: true }, { text: `\n${unbroken(cell.under)}` }], alignment }
}

/** A wide rule under the heads, hair rules between rows, none upright. */
const rules = (headerRows: number, gaps: readonly number[], apartPt: number, headed: boolean): PdfTableLayout => ({
  hLineWidth: (line, node) => {
    if (line === headerRows) return headed ? 0.9 : 0.6
    if (line < headerRows) return 0
    return line === node.table.body.length ? 0.6 : 0.35
  },
  vLineWidth: () => 0,
  hLineColor: (line) => (line === headerRows ? INK : RULE),
  fillColor: (row) => (headed && row === headerRows - 1 ? HEAD_GROUND : null),
  paddingLeft: (column) => gaps[column] ?? 4,
  paddingRight: () => RIGHT_PT,
  paddingTop: (row) => (row < headerRows - 1 ? 0 : apartPt),
  paddingBottom: (row) => (row < headerRows - 1 ? 3 : apartPt)
})
