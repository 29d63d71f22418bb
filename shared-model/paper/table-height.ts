import { type Cell, type Column, type TableBlock, textWidthMm } from '../sheet'
import { onPaper } from './on-paper'
import { CONTENT_WIDTH_MM } from './page'

const TABLE_PT = 9
const LINE_MM = 4.3
const ROW_PADDING_MM = 2.6
/** Heading, heads and note. */
const AROUND_MM = 24
/** Words break before the edge: a line takes about this share of its column. */
const FILLED_SHARE = 0.85

/** How high a table will be, on the safe side: lines counted from the width of the words, in mm. */
export const tableHeightMm = (whole: TableBlock): number => {
  const table = onPaper(whole)
  const fixed = table.columns.reduce((sum, { widthMm }) => sum + (widthMm === 'rest' ? 0 : widthMm), 0)
  const rests = table.columns.filter(({ widthMm }) => widthMm === 'rest').length
  const restMm = rests === 0 ? 0 : (CONTENT_WIDTH_MM - fixed) / rests
  const widthOf = ({ widthMm }: Column): number => Math.max(5, (widthMm === 'rest' ? restMm : widthMm) - 4)
  const rowMm = (row: readonly Cell[]): number =>
    Math.max(1, ...table.columns.map((column, index) => linesOf(row[index], widthOf(column)))) * LINE_MM +
    ROW_PADDING_MM
  return AROUND_MM + table.rows.reduce((sum, row) => sum + rowMm(row), 0)
}

const linesOf = (cell: Cell | undefined, widthMm: number): number => {
  if (cell === undefined) return 1
  const under = cell.under ?? ''
  const lines = [...cell.text.split('\n'), ...(under === '' ? [] : under.split('\n'))]
  return lines.reduce(
    (sum, words, index) =>
      sum +
      Math.max(1, Math.ceil(textWidthMm(words, TABLE_PT, index === 0 && under !== '') / (widthMm * FILLED_SHARE))),
    0
  )
}
