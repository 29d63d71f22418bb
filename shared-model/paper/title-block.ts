import { type Drawing, fittedText, line, rect, type Shape, type TitleBlock, text, textWidthMm } from '../sheet'
import { CONTENT_WIDTH_MM } from './page'
import { withinEm } from './word-width'

const ROW_MM = 11
const TITLE_ROW_MM = 13
const MM_A_PT = 25.4 / 72
/** Words all in capitals are fitted by the mean letter; only wider signs than those are cut for their width. */
const MORE_CAPITALS = 1.17
const COLUMN_MM = CONTENT_WIDTH_MM / 6
/** Lettering in drawings is no smaller; two lines of it fit a field below its name. */
const LEAST_PT = 8
const LINE_MM = 3.3

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
  const fit = (wanted * room) / Math.max(0.1, textWidthMm(words, wanted, bold))
  const sizePt = Math.min(wanted, fit)
  const base = top + height - 2.4
  return [
    ...(column === 0 ? [] : [line(left, top, left, top + height, 'thin')]),
    text(left + 2, top + (sizePt < LEAST_PT ? 3.4 : 3.8), name, { sizePt: 8 }),
    ...(sizePt >= LEAST_PT
      ? [text(left + 2, base, cutToWidth(words, room, sizePt, bold), { sizePt, bold })]
      : twoLines(words, room, bold).map((part, row, all) =>
          text(left + 2, base + 1.1 - LINE_MM * (all.length - 1 - row), part, { sizePt: LEAST_PT, bold })
        ))
  ]
}

/** Words that are too long for one line of 8 pt, on two: parted at a space or hyphen where one is near. */
const twoLines = (words: string, roomMm: number, bold: boolean): readonly string[] => {
  const signs = [...words]
  const letters = Math.floor((words.length * roomMm) / textWidthMm(words, LEAST_PT, bold))
  const near = signs.slice(0, letters).findLastIndex((sign) => ' -,'.includes(sign))
  const at = near > letters * 0.6 ? near + 1 : letters
  return [signs.slice(0, at), signs.slice(at)]
    .map((part) => part.join('').trim())
    .map((part) => cutToWidth(part, roomMm, LEAST_PT, bold))
}

const cutToWidth = (words: string, roomMm: number, sizePt: number, bold: boolean): string =>
  withinEm(fittedText(words, roomMm, sizePt, bold), (MORE_CAPITALS * roomMm) / (sizePt * MM_A_PT))
