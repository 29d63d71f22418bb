/** Paper sizes: A4 by ISO 216, Letter 8 1/2 by 11 in by ANSI/ASME Y14.1. @source paper-sizes */
export type Paper = 'letter' | 'a4'

export interface PageSize {
  readonly widthMm: number
  readonly heightMm: number
}

export const PAGES: Readonly<Record<Paper, PageSize>> = {
  letter: { widthMm: 215.9, heightMm: 279.4 },
  a4: { widthMm: 210, heightMm: 297 }
}

/** Nothing that is needed stands nearer to the edge of the paper: 1/2 in. */
export const BARE_EDGE_MM = 12.7
/** The same on both papers, so that one drawing fits both. */
export const CONTENT_WIDTH_MM = 182
export const CONTENT_TOP_MM = 27
export const CONTENT_BOTTOM_MM = 24

/** PDF points of a length: 72 points are 25.4 mm. */
export const pt = (valueMm: number): number => (valueMm * 72) / 25.4

export const sideMarginMm = (page: PageSize): number => (page.widthMm - CONTENT_WIDTH_MM) / 2
