import type { Block, FigureBlock, SheetData, SheetSection, TableBlock } from '../sheet'
import { mm, showLength } from '../units'
import { plainOrderIn } from '../words'
import { blockContent, drawingContent } from './blocks'
import { cardPages } from './card-pages'
import { CONTENT_BOTTOM_MM, CONTENT_TOP_MM, PAGES, type PageSize, type Paper, pt, sideMarginMm } from './page'
import { pageFooter, pageHeader } from './page-frame'
import type { PdfDocument, PdfNode } from './pdf-node'
import { BODY, styles } from './styles'
import { tableHeightMm } from './table-height'
import { tableContent } from './tables'
import { tilePages } from './tile-pages'
import { BELOW_TITLE_BLOCK_MM, TITLE_BLOCK_MM, titleBlockDrawing } from './title-block'
import { unbroken } from './unbroken'

export interface PaperOptions {
  readonly paper: Paper
  /** Streams left as they are, so that two hosts can be compared byte by byte. */
  readonly uncompressed?: boolean
}

/**
 * The sheet as a document for the PDF writer. The same sheet and paper give the same document; the creation date is the
 * sheet's own date, so that the same input gives the same bytes.
 */
export const docDefinition = (given: SheetData, { paper, uncompressed = false }: PaperOptions): PdfDocument => {
  const sheet = plainOrderIn(given)
  const page = PAGES[paper]
  const side = sideMarginMm(page)
  const hasFields = sheet.sections[0]?.part === 'build'
  const card = sheet.sections.length === 1 && sheet.sections[0]?.part === 'buyers-card'
  const block = card ? { ...sheet.titleBlock, documentType: 'Card for the buyer' } : sheet.titleBlock
  return {
    version: '1.7',
    compress: !uncompressed,
    language: sheet.language,
    displayTitle: true,
    info: {
      title: `${block.title}: ${card ? 'card for the buyer' : 'build sheet'}`,
      author: block.maker === '' ? 'not named' : block.maker,
      subject: block.documentType,
      creator: 'Sillwright',
      producer: 'Sillwright',
      creationDate: new Date(`${block.date}T00:00:00Z`)
    },
    pageSize: { width: pt(page.widthMm), height: pt(page.heightMm) },
    pageOrientation: 'portrait',
    pageMargins: [pt(side), pt(CONTENT_TOP_MM), pt(side), pt(CONTENT_BOTTOM_MM)],
    defaultStyle: BODY,
    styles: styles(),
    header: (number, count, size) => {
      const top = pageHeader(block, sideOf(size, side), card ? cardOf(number, count) : `Sheet ${number} of ${count}`)
      if (number > 1 || !hasFields) return top
      const drawn = drawingContent(titleBlockDrawing(block, count))
      return { stack: [top, { ...drawn, absolutePosition: { x: pt(side), y: pt(CONTENT_TOP_MM - 3) } }] }
    },
    footer: (_number, _count, size) =>
      size.width > size.height ? { text: '' } : pageFooter(block, sideOf(size, side)),
    content: sheet.sections.flatMap((section, index) => sectionContent(section, sheet, page, opens(sheet, index)))
  }
}

/** A card on a page of its own needs no number. */
const cardOf = (number: number, count: number): string => (count === 1 ? '' : `Card ${number} of ${count}`)

/** A page on its side keeps its frame a half inch from the edge of the paper. */
const sideOf = (size: { readonly width: number; readonly height: number }, side: number): number =>
  size.width > size.height ? 15.7 : side

/** How a section begins: at the top of the document, on a new page, or below the one before. */
type Opens = 'document' | 'page' | 'below'

const opens = ({ sections, templates }: SheetData, index: number): Opens => {
  if (index === 0) return 'document'
  const afterTiles = sections[index - 1]?.part === 'templates' && templates.length > 0
  return sections[index]?.startsPage === true || afterTiles ? 'page' : 'below'
}

const sectionContent = (section: SheetSection, sheet: SheetData, page: PageSize, begins: Opens): PdfNode[] => {
  if (section.part === 'buyers-card') return cardContent(section, page, begins)
  const fields = section.blocks.some((block) => block.kind === 'title-fields')
  const blocks = section.blocks.filter((block): block is PrintedBlock => block.kind !== 'title-fields')
  const name = section.number === '' ? section.heading : `${section.number}   ${section.heading}`
  const above = begins === 'below' ? 16 : 0
  const title: PdfNode = { text: unbroken(name), style: 'section', margin: [0, above, 0, 6] }
  const { opened, others } = opening(blocks, title, name, above)
  const nodes: PdfNode[] = [
    ...(fields ? [gap(TITLE_BLOCK_MM - 3 + BELOW_TITLE_BLOCK_MM)] : []),
    ...opened,
    ...(section.part === 'build' ? others.map(blockContent) : keptTogether(others)),
    ...(section.part === 'templates' ? tiles(sheet, page) : [])
  ]
  const closed = [...nodes.slice(0, -1), ...nodes.slice(-1).map(withoutFoot)]
  const [head, ...tail] = closed
  if (head === undefined) return []
  return begins === 'page' ? [{ ...head, pageBreak: 'before', pageOrientation: 'portrait' }, ...tail] : closed
}

/** The card for the buyer: one page where it can be, else pages that each say whose card goes on. */
const cardContent = (section: SheetSection, page: PageSize, begins: Opens): PdfNode[] => {
  const blocks = section.blocks.filter((block): block is PrintedBlock => block.kind !== 'title-fields')
  return cardPages(blocks, `${section.heading}, continued`, page).map((some, index) => {
    const title: PdfNode = {
      text: unbroken(index === 0 ? section.heading : `${section.heading}, continued`),
      style: 'section',
      margin: [0, 0, 0, 6]
    }
    const nodes = [title, ...some.map(blockContent)]
    const stack = [...nodes.slice(0, -1), ...nodes.slice(-1).map(withoutFoot)]
    const opens =
      index > 0 || begins === 'page' ? { pageBreak: 'before' as const, pageOrientation: 'portrait' as const } : {}
    return { stack, lineHeight: 1, ...opens }
  })
}

/** A section's title with what it heads: words at its head do not stand alone below it either. */
const opening = (
  blocks: readonly PrintedBlock[],
  title: PdfNode,
  name: string,
  above: number
): { readonly opened: PdfNode[]; readonly others: readonly PrintedBlock[] } => {
  const [first, second, third] = blocks
  if (first === undefined) return { opened: [title], others: [] }
  if (first.kind === 'table') return { opened: [tableContent(first, name, above)], others: blocks.slice(1) }
  const taken =
    first.kind !== 'text' ? 1 : second?.kind === 'big' ? 2 : second?.kind === 'figure' ? withFigure(second, third) : 1
  const held = blocks.slice(0, taken)
  return { opened: [{ unbreakable: true, stack: [title, ...held.map(blockContent)] }], others: blocks.slice(taken) }
}

/** A section's title and a few lines of words. */
const TITLE_MM = 30

/** How many blocks the words at a section's head are kept with: themselves, a figure, and the table below it. */
const withFigure = (figure: FigureBlock, table: PrintedBlock | undefined): number => {
  if (figure.drawing.heightMm + TITLE_MM > TOGETHER_MM) return 1
  return table?.kind === 'table' && figure.drawing.heightMm + tableHeightMm(table) + TITLE_MM < TOGETHER_MM ? 3 : 2
}

type PrintedBlock = Exclude<Block, { kind: 'title-fields' }>

const gap = (heightMm: number): PdfNode => ({ text: ' ', fontSize: 1, lineHeight: 1, margin: [0, 0, 0, pt(heightMm)] })

/** Room under a section's last block would carry over to a page of its own when that block ends at the foot of one. */
const withoutFoot = (node: PdfNode): PdfNode => {
  const [left, top, right] = node.margin ?? [0, 0, 0, 0]
  return { ...node, margin: [left, top, right, 0] }
}

/** A picture and the table below it stay on one page where both fit on one: their marks are read together. */
const keptTogether = (blocks: readonly PrintedBlock[]): PdfNode[] => {
  const nodes: PdfNode[] = []
  for (let index = 0; index < blocks.length; index += 1) {
    const block = blocks[index]
    const next = blocks[index + 1]
    if (block === undefined) continue
    if (block.kind === 'figure' && next?.kind === 'table' && fitsWith(block, next)) {
      nodes.push({ unbreakable: true, stack: [blockContent(block), blockContent(next)] })
      index += 1
    } else nodes.push(blockContent(block))
  }
  return nodes
}

/** Room on the shorter paper's page, less a heading and a caption of three lines. */
const TOGETHER_MM = PAGES.letter.heightMm - CONTENT_TOP_MM - CONTENT_BOTTOM_MM - 26

const fitsWith = (figure: FigureBlock, table: TableBlock): boolean =>
  figure.drawing.heightMm + tableHeightMm(table) < TOGETHER_MM

const tiles = (sheet: SheetData, page: PageSize): PdfNode[] => {
  const reading = {
    length: (valueMm: number): string => showLength(mm(valueMm), sheet.shows),
    stepMm: sheet.baselineStepMm
  }
  return tilePages(sheet.templates, page, reading).map((drawing) => ({
    pageBreak: 'before',
    pageOrientation: drawing.widthMm > drawing.heightMm ? 'landscape' : 'portrait',
    stack: [{ ...drawingContent(drawing), absolutePosition: { x: 0, y: 0 } }]
  }))
}
