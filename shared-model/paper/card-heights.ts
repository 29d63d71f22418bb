import type { Block, Cell, FactsBlock, TableBlock, TextBlock } from '../sheet'
import { onPaper } from './on-paper'
import { CONTENT_WIDTH_MM } from './page'
import { CLOSE_PT } from './tables'
import { textLines } from './text-lines'

export type PrintedBlock = Exclude<Block, { kind: 'title-fields' }>

const MM_A_PT = 25.4 / 72
/** The face's own line, ascent and descent, is 1.164 em (its hhea table); the card is set without lead between lines. */
const LINE_EM = 1.164
export const lineMm = (sizePt: number): number => LINE_EM * sizePt * MM_A_PT
export const BODY_PT = 10
const TABLE_PT = 9
const TITLE_PT = 17

/** What the card's title takes up, with the room below it. */
export const titleMm = (title: string): number =>
  textLines(title, CONTENT_WIDTH_MM, TITLE_PT, true).length * lineMm(TITLE_PT) + 6 * MM_A_PT

/** The first words of a text with its heading before them. */
export const headed = ({ heading }: TextBlock, words: string): string =>
  heading === '' ? words : `${heading}.  ${words}`

/** Room below a run-in paragraph and its block. */
export const PARAGRAPH_MM = 3 * MM_A_PT

/** How high a block of the card for the buyer will be, in mm, on the safe side by a hair. */
export const heightMm = (block: PrintedBlock): number => {
  switch (block.kind) {
    case 'text':
      return block.paragraphs.reduce(
        (sum, words, index) =>
          sum +
          textLines(index === 0 ? headed(block, words) : words, CONTENT_WIDTH_MM, BODY_PT).length * lineMm(BODY_PT) +
          PARAGRAPH_MM,
        0
      )
    case 'facts':
      return factsMm(block)
    case 'table':
      return tableMm(block)
    default:
      return Number.POSITIVE_INFINITY
  }
}

const factsMm = ({ facts, columns }: FactsBlock): number => {
  const widthMm = CONTENT_WIDTH_MM / columns - 8 * MM_A_PT
  const heights = facts.map(
    ({ name, value }) =>
      textLines(name, widthMm, 9).length * lineMm(9) + textLines(value, widthMm, 11, true).length * lineMm(11)
  )
  const rows = heights.flatMap((_, index) =>
    index % columns === 0 ? [Math.max(...heights.slice(index, index + columns))] : []
  )
  return rows.reduce((sum, row) => sum + row + 7 * MM_A_PT, 10 * MM_A_PT)
}

const tableMm = (whole: TableBlock): number => {
  const table = onPaper(whole)
  const fixed = table.columns.reduce((sum, { widthMm }) => sum + (widthMm === 'rest' ? 0 : widthMm), 0)
  const rests = table.columns.filter(({ widthMm }) => widthMm === 'rest').length
  const widthOf = (index: number): number => {
    const widthMm = table.columns[index]?.widthMm ?? 'rest'
    // Less the room on both sides, and the wider one between a right and a left column.
    return (widthMm === 'rest' ? (CONTENT_WIDTH_MM - fixed) / rests : widthMm) - 8 * MM_A_PT
  }
  const cellMm = (cell: Cell, index: number): number => {
    const words = cell.lead === undefined ? cell.text : `${cell.lead}:  ${cell.text}`
    return textLines(words, widthOf(index), TABLE_PT, cell.strong === true).length * lineMm(TABLE_PT)
  }
  const rowMm = (row: readonly Cell[]): number => Math.max(...row.map(cellMm)) + (2 * CLOSE_PT + 0.4) * MM_A_PT
  const headRow = table.columns.map(({ head }): Cell => ({ text: head, strong: true }))
  const heads = headRow.some(({ text }) => text !== '') ? [headRow] : []
  const note = table.note === '' ? 5 * MM_A_PT : lineMm(TABLE_PT) + 8 * MM_A_PT
  return [...heads, ...table.rows].reduce((sum, row) => sum + rowMm(row), note)
}
