import { type Drawing, fittedText, line, rect, type Shape, type TitleBlock, text, textWidthMm } from '../sheet'
import { CONTENT_WIDTH_MM } from './page'

const ROW_MM = 11
const TITLE_ROW_MM = 13
const COLUMN_MM = CONTENT_WIDTH_MM / 6

/** Height of the drawing, and the room left below it. */
export const TITLE_BLOCK_MM = TITLE_ROW_MM + 2 * ROW_MM
export const BELOW_TITLE_BLOCK_MM = 8

interface Field {
  readonly name: string
  readonly value: string
  readonly column: number
  readonly columns: number
}

/** The fields of ISO 7200 on the first sheet, drawn so that they keep their place whatever is written in them. @source iso-7200 */
export const titleBlockDrawing = (block: TitleBlock, pages: number): Drawing => {
  const rows: readonly (readonly Field[])[] = [
    [
      field('Title', block.title, 0, 3),
      field('Document type', block.documentType, 3),
      field('Number', block.number, 4),
      field('Revision', block.revision, 5)
    ],
    [
      field('Legal owner', block.maker, 0, 2),
      field('Date of issue', block.date, 2),
      field('How many', block.quantity, 3),
      field('Sheet', `1 of ${pages}`, 4),
      field('Language', 'en', 5)
    ],
    [
      field('Units and graduation', `${block.units}, ${block.graduation}`, 0, 2),
      field('General tolerances', block.tolerance, 2, 2),
      field('Scale', block.scale, 4, 2)
    ]
  ]
  return {
    widthMm: CONTENT_WIDTH_MM,
    heightMm: TITLE_BLOCK_MM,
    scale: 'not to scale',
    alt: 'Title block',
    shapes: [
      ...rows.flatMap((fields, row) => fields.flatMap((one) => fieldShapes(one, row))),
      ...rows.slice(1).map((_, row) => line(0, topOf(row + 1), CONTENT_WIDTH_MM, topOf(row + 1), 'thin')),
      rect(0, 0, CONTENT_WIDTH_MM, TITLE_BLOCK_MM, 'outline')
    ]
  }
}

const field = (name: string, value: string, column: number, columns = 1): Field => ({ name, value, column, columns })

const topOf = (row: number): number => (row === 0 ? 0 : TITLE_ROW_MM + (row - 1) * ROW_MM)

const fieldShapes = ({ name, value, column, columns }: Field, row: number): Shape[] => {
  const left = column * COLUMN_MM
  const top = topOf(row)
  const height = row === 0 ? TITLE_ROW_MM : ROW_MM
  const room = columns * COLUMN_MM - 4
  const wanted = name === 'Title' ? 15 : 10
  const words = value === '' ? '—' : value
  const bold = name === 'Title'
  const sizePt = Math.max(8, Math.min(wanted, (wanted * room) / Math.max(0.1, textWidthMm(words, wanted, bold))))
  return [
    ...(column === 0 ? [] : [line(left, top, left, top + height, 'thin')]),
    text(left + 2, top + 3.8, name, { sizePt: 8 }),
    text(left + 2, top + height - 2.4, fittedText(words, room, sizePt, bold), { sizePt, bold })
  ]
}
