import type { TableBlock, TextBlock } from '../sheet'
import { BODY_PT, headed, heightMm, lineMm, PARAGRAPH_MM, type PrintedBlock, titleMm } from './card-heights'
import { CONTENT_BOTTOM_MM, CONTENT_TOP_MM, CONTENT_WIDTH_MM, type PageSize } from './page'
import { textLines } from './text-lines'

/**
 * The card for the buyer as pages: all on one where it holds everything; else parted where the card says so, and each part
 * on as many pages as it takes, texts and tables between two of their lines. Nothing is left out.
 */
export const cardPages = (
  blocks: readonly PrintedBlock[],
  title: string,
  page: PageSize
): readonly (readonly PrintedBlock[])[] => {
  const roomMm = page.heightMm - CONTENT_TOP_MM - CONTENT_BOTTOM_MM - titleMm(title) - 1
  const wholeMm = blocks.reduce((sum, block) => sum + heightMm(block), 0)
  if (wholeMm <= roomMm) return [blocks]
  const at = blocks.findIndex((block) => block.kind === 'text' && block.parts === true)
  const parts = at <= 0 ? [blocks] : [blocks.slice(0, at), blocks.slice(at)]
  return parts.flatMap((part) => inPages(part, roomMm))
}

const inPages = (blocks: readonly PrintedBlock[], roomMm: number): readonly (readonly PrintedBlock[])[] => {
  const pages: PrintedBlock[][] = [[]]
  let leftMm = roomMm
  const waiting = [...blocks]
  for (let block = waiting.shift(); block !== undefined; block = waiting.shift()) {
    const [fits, rest] = heightMm(block) <= leftMm ? [block, null] : parted(block, leftMm)
    if (fits !== null) {
      pages[pages.length - 1]?.push(fits)
      leftMm -= heightMm(fits)
    }
    if (rest === null) continue
    if (fits === null && leftMm === roomMm) {
      // It does not fit on a bare page either and cannot be parted: it stands alone.
      pages[pages.length - 1]?.push(rest)
      leftMm = 0
      continue
    }
    pages.push([])
    leftMm = roomMm
    waiting.unshift(rest)
  }
  return pages.filter((page) => page.length > 0)
}

/** What of a block goes on this page, and what on the next. */
const parted = (block: PrintedBlock, leftMm: number): readonly [PrintedBlock | null, PrintedBlock | null] => {
  if (block.kind === 'text') return partedText(block, leftMm)
  if (block.kind === 'table') return partedTable(block, leftMm)
  return [null, block]
}

const partedText = (block: TextBlock, leftMm: number): readonly [TextBlock | null, TextBlock | null] => {
  const [first = '', ...others] = block.paragraphs
  const lines = textLines(headed(block, first), CONTENT_WIDTH_MM, BODY_PT)
  const most = Math.floor((leftMm - PARAGRAPH_MM) / lineMm(BODY_PT))
  // No line alone at the foot.
  if (most < 2) return [null, block]
  if (lines.length <= most) {
    return [
      { ...block, paragraphs: [first] },
      { ...block, heading: '', paragraphs: others }
    ]
  }
  const kept = lines.slice(0, most).join('').slice(headed(block, '').length)
  return [
    { ...block, paragraphs: [kept.trim()] },
    { ...block, heading: '', paragraphs: [lines.slice(most).join(''), ...others] }
  ]
}

const partedTable = (table: TableBlock, leftMm: number): readonly [TableBlock | null, TableBlock | null] => {
  const abreast = table.abreast ?? 1
  let count = 0
  while (count < table.rows.length && heightMm({ ...table, rows: table.rows.slice(0, count + abreast) }) <= leftMm)
    count += abreast
  if (count === 0) return [null, table]
  return [
    { ...table, rows: table.rows.slice(0, count) },
    { ...table, rows: table.rows.slice(count) }
  ]
}
