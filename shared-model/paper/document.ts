import type { Block, SheetData, SheetSection } from '../sheet'
import { mm, showLength } from '../units'
import { blockContent, drawingContent } from './blocks'
import { CONTENT_BOTTOM_MM, CONTENT_TOP_MM, PAGES, type PageSize, type Paper, pt, sideMarginMm } from './page'
import { pageFooter, pageHeader } from './page-frame'
import type { PdfDocument, PdfNode } from './pdf-node'
import { BODY, styles } from './styles'
import { tableContent } from './tables'
import { tilePages } from './tile-pages'
import { BELOW_TITLE_BLOCK_MM, TITLE_BLOCK_MM, titleBlockDrawing } from './title-block'

export interface PaperOptions {
  readonly paper: Paper
  /** Streams left as they are, so that two hosts can be compared byte by byte. */
  readonly uncompressed?: boolean
}

/**
 * The sheet as a document for the PDF writer. The same sheet and paper give the same document; the creation date is the
 * sheet's own date, so that the same input gives the same bytes.
 */
export const docDefinition = (sheet: SheetData, { paper, uncompressed = false }: PaperOptions): PdfDocument => {
  const page = PAGES[paper]
  const side = sideMarginMm(page)
  const block = sheet.titleBlock
  const hasFields = sheet.sections[0]?.part === 'build'
  const card = sheet.sections.length === 1 && sheet.sections[0]?.part === 'buyers-card'
  return {
    version: '1.7',
    compress: !uncompressed,
    language: sheet.language,
    displayTitle: true,
    info: {
      title: `${block.title}: build sheet`,
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
      const top = pageHeader(block, sideOf(size, side), card ? '' : `Sheet ${number} of ${count}`)
      if (number > 1 || !hasFields) return top
      const drawn = drawingContent(titleBlockDrawing(block, count))
      return { stack: [top, { ...drawn, absolutePosition: { x: pt(side), y: pt(CONTENT_TOP_MM - 3) } }] }
    },
    footer: (_number, _count, size) =>
      size.width > size.height ? { text: '' } : pageFooter(block, sideOf(size, side)),
    content: sheet.sections.flatMap((section, index) => sectionContent(section, sheet, page, index === 0))
  }
}

/** A page on its side keeps its frame a half inch from the edge of the paper. */
const sideOf = (size: { readonly width: number; readonly height: number }, side: number): number =>
  size.width > size.height ? 15.7 : side

const sectionContent = (section: SheetSection, sheet: SheetData, page: PageSize, first: boolean): PdfNode[] => {
  const fields = section.blocks.some((block) => block.kind === 'title-fields')
  const blocks = section.blocks.filter(
    (block): block is Exclude<Block, { kind: 'title-fields' }> => block.kind !== 'title-fields'
  )
  const name = section.number === '' ? section.heading : `${section.number}   ${section.heading}`
  const above = section.startsPage || first ? 0 : 10
  const title: PdfNode = { text: name, style: 'section', margin: [0, above, 0, 8] }
  const [opening, ...others] = blocks
  const opened: PdfNode[] =
    opening === undefined
      ? [title]
      : opening.kind === 'table'
        ? [tableContent(opening, name, above)]
        : [{ unbreakable: true, stack: [title, blockContent(opening)] }]
  const rest = others.map(blockContent)
  const nodes: PdfNode[] = [
    ...(fields
      ? [
          {
            text: ' ',
            fontSize: 1,
            lineHeight: 1,
            margin: [0, 0, 0, pt(TITLE_BLOCK_MM - 3 + BELOW_TITLE_BLOCK_MM)]
          } satisfies PdfNode
        ]
      : []),
    ...opened,
    ...rest,
    ...(section.part === 'templates' ? tiles(sheet, page) : [])
  ]
  const [head, ...tail] = nodes
  if (head === undefined) return []
  return section.startsPage && !first ? [{ ...head, pageBreak: 'before', pageOrientation: 'portrait' }, ...tail] : nodes
}

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
