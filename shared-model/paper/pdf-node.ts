/**
 * The few node kinds of the PDF writer that the sheet uses. Written out here because the writer's own type file draws in
 * the types of a browser and of Node, which this folder must not see; each host's driver checks that the two agree.
 */
export interface PdfStyle {
  style?: string
  fontSize?: number
  bold?: boolean
  lineHeight?: number
  color?: string
  fillColor?: string
  alignment?: 'left' | 'right' | 'center'
  margin?: [number, number, number, number]
  noWrap?: boolean
}

interface PdfPlace {
  absolutePosition?: { x: number; y: number }
  pageBreak?: 'before' | 'after'
  pageOrientation?: 'portrait' | 'landscape'
  unbreakable?: boolean
}

interface PdfText extends PdfStyle, PdfPlace {
  text: string | PdfText[]
}

interface PdfStack extends PdfStyle, PdfPlace {
  stack: PdfNode[]
}

interface PdfColumns extends PdfStyle, PdfPlace {
  columns: (PdfNode & { width?: number | '*' | 'auto' })[]
  columnGap?: number
}

interface PdfSvg extends PdfStyle, PdfPlace {
  svg: string
  width?: number
  font?: string
}

export interface PdfTable extends PdfStyle, PdfPlace {
  table: {
    headerRows?: number
    keepWithHeaderRows?: number
    dontBreakRows?: boolean
    widths: (number | '*' | 'auto')[]
    heights?: number | number[]
    body: PdfCell[][]
  }
  layout: PdfTableLayout
}

export type PdfNode = PdfText | PdfStack | PdfColumns | PdfSvg | PdfTable

export type PdfCell = PdfNode & {
  colSpan?: number
  rowSpan?: number
  border?: [boolean, boolean, boolean, boolean]
}

/** What the writer tells a layout about the table it draws. */
interface PdfTableShape {
  readonly table: { readonly body: readonly (readonly unknown[])[]; readonly widths?: unknown }
}

export interface PdfTableLayout {
  hLineWidth(line: number, node: PdfTableShape): number
  vLineWidth(line: number, node: PdfTableShape): number
  hLineColor?(line: number): string
  vLineColor?(line: number): string
  fillColor?(row: number): string | null
  paddingLeft(column: number): number
  paddingRight(column: number): number
  paddingTop(row: number): number
  paddingBottom(row: number): number
}

export interface PdfDocument {
  version: '1.7'
  compress: boolean
  language: string
  displayTitle: boolean
  info: { title: string; author: string; subject: string; creator: string; producer: string; creationDate: Date }
  pageSize: { width: number; height: number }
  pageOrientation: 'portrait'
  pageMargins: [number, number, number, number]
  defaultStyle: PdfStyle & { font: string }
  styles: Record<string, PdfStyle>
  header(page: number, pages: number, size: { width: number; height: number }): PdfNode
  footer(page: number, pages: number, size: { width: number; height: number }): PdfNode
  content: PdfNode[]
}
