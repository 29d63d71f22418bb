/** A picture in millimetres on paper: x to the right, y downwards, origin in the upper left corner. */
export interface Drawing {
  readonly widthMm: number
  readonly heightMm: number
  /** `1:5`, or `not to scale`. */
  readonly scale: string
  /** What the picture shows, for a person who does not see it. */
  readonly alt: string
  readonly shapes: readonly Shape[]
}

/** Line types after ISO 128-2: outlines wide, dimensions narrow, axes chain, hidden edges dashed. */
export type Pen = 'outline' | 'thin' | 'dimension' | 'centre' | 'hidden' | 'cut' | 'none'

/** Greys that stay apart on a grey printer. */
export type Fill = 'none' | 'paper' | 'pale' | 'tint' | 'dark' | 'ink'

export interface PointMm {
  readonly xMm: number
  readonly yMm: number
}

export interface LineShape {
  readonly kind: 'line'
  readonly fromMm: PointMm
  readonly toMm: PointMm
  readonly pen: Pen
}

export interface RectShape {
  readonly kind: 'rect'
  readonly xMm: number
  readonly yMm: number
  readonly widthMm: number
  readonly heightMm: number
  readonly cornerMm: number
  readonly pen: Pen
  readonly fill: Fill
}

export interface CircleShape {
  readonly kind: 'circle'
  readonly centreMm: PointMm
  readonly radiusMm: number
  readonly pen: Pen
  readonly fill: Fill
}

export interface PolygonShape {
  readonly kind: 'polygon'
  readonly pointsMm: readonly PointMm[]
  readonly closed: boolean
  readonly pen: Pen
  readonly fill: Fill
}

/** Text with its baseline at the point; `turned` reads from below, a quarter turn anticlockwise. */
export interface TextShape {
  readonly kind: 'text'
  readonly atMm: PointMm
  readonly text: string
  readonly sizePt: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly bold: boolean
  readonly turned: boolean
  readonly white: boolean
}

export type Shape = LineShape | RectShape | CircleShape | PolygonShape | TextShape

export const point = (xMm: number, yMm: number): PointMm => ({ xMm, yMm })

export const line = (x1Mm: number, y1Mm: number, x2Mm: number, y2Mm: number, pen: Pen): LineShape => ({
  kind: 'line',
  fromMm: point(x1Mm, y1Mm),
  toMm: point(x2Mm, y2Mm),
  pen
})

export const rect = (
  xMm: number,
  yMm: number,
  widthMm: number,
  heightMm: number,
  pen: Pen,
  fill: Fill = 'none',
  cornerMm = 0
): RectShape => ({ kind: 'rect', xMm, yMm, widthMm, heightMm, cornerMm, pen, fill })

export const circle = (xMm: number, yMm: number, radiusMm: number, pen: Pen, fill: Fill = 'none'): CircleShape => ({
  kind: 'circle',
  centreMm: point(xMm, yMm),
  radiusMm,
  pen,
  fill
})

export const polygon = (pointsMm: readonly PointMm[], pen: Pen, fill: Fill = 'none', closed = true): PolygonShape => ({
  kind: 'polygon',
  pointsMm,
  closed,
  pen,
  fill
})

export interface Lettering {
  readonly sizePt?: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly bold?: boolean
  readonly turned?: boolean
  readonly white?: boolean
}

export const text = (xMm: number, yMm: number, words: string, how: Lettering = {}): TextShape => ({
  kind: 'text',
  atMm: point(xMm, yMm),
  text: words,
  sizePt: how.sizePt ?? 8.5,
  anchor: how.anchor ?? 'start',
  bold: how.bold ?? false,
  turned: how.turned ?? false,
  white: how.white ?? false
})
