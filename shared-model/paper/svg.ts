import type { Drawing, Fill, Pen, PointMm, Shape, TextShape } from '../sheet'
import { plainOrder } from '../words'
import { FILL_GREYS } from './palette'
import { runsFromLeft } from './right-to-left'

/** Line widths in mm (ISO 128-2 group 0.5 : 0.25, a little finer for dimensions) and dash patterns. */
const PENS: Readonly<Record<Pen, string>> = {
  outline: 'stroke="#000" stroke-width="0.4"',
  thin: 'stroke="#000" stroke-width="0.2"',
  dimension: 'stroke="#000" stroke-width="0.15"',
  centre: 'stroke="#000" stroke-width="0.15" stroke-dasharray="4 0.8 0.8 0.8"',
  hidden: 'stroke="#000" stroke-width="0.2" stroke-dasharray="1.6 0.9"',
  cut: 'stroke="#000" stroke-width="0.7"',
  none: 'stroke="none"'
}

const FILLS: Readonly<Record<Fill, string>> = {
  none: 'fill="none"',
  paper: `fill="${FILL_GREYS.paper}"`,
  pale: `fill="${FILL_GREYS.pale}"`,
  tint: `fill="${FILL_GREYS.tint}"`,
  dark: `fill="${FILL_GREYS.dark}"`,
  ink: `fill="${FILL_GREYS.ink}"`
}

const PT_MM = 25.4 / 72

/** A number of millimetres to a hundred-thousandth, without an exponent. */
const figure = (value: number): string => {
  const text = value.toFixed(5)
  return Number(text) === 0 ? '0' : text.replace(/\.?0+$/, '')
}

const escaped = (words: string): string =>
  plainOrder(words).replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')

const at = ({ xMm, yMm }: PointMm): string => `${figure(xMm)},${figure(yMm)}`

const lettering = (shape: TextShape, { unit, fontFamily }: SvgOptions): string => {
  const { xMm, yMm } = shape.atMm
  const turn = shape.turned ? ` transform="rotate(-90 ${figure(xMm)} ${figure(yMm)})"` : ''
  const weight = shape.bold ? ' font-weight="bold"' : ''
  return (
    `<text x="${figure(xMm)}" y="${figure(yMm)}" font-family="${fontFamily}" font-size="${figure(shape.sizePt * PT_MM)}"` +
    ` text-anchor="${shape.anchor}" fill="${shape.white ? '#fff' : '#000'}"${weight}${turn}>${unit === 'pt' ? runsFromLeft(escaped(shape.text)) : escaped(shape.text)}</text>`
  )
}

const element = (shape: Shape, options: SvgOptions): string => {
  switch (shape.kind) {
    case 'line':
      return `<path d="M${at(shape.fromMm)} L${at(shape.toMm)}" fill="none" ${PENS[shape.pen]}/>`
    case 'rect':
      return (
        `<rect x="${figure(shape.xMm)}" y="${figure(shape.yMm)}" width="${figure(shape.widthMm)}" ` +
        `height="${figure(shape.heightMm)}"${shape.cornerMm > 0 ? ` rx="${figure(shape.cornerMm)}"` : ''} ` +
        `${FILLS[shape.fill]} ${PENS[shape.pen]}/>`
      )
    case 'circle':
      return (
        `<circle cx="${figure(shape.centreMm.xMm)}" cy="${figure(shape.centreMm.yMm)}" r="${figure(shape.radiusMm)}" ` +
        `${FILLS[shape.fill]} ${PENS[shape.pen]}/>`
      )
    case 'polygon':
      return (
        `<path d="M${shape.pointsMm.map(at).join(' L')}${shape.closed ? ' Z' : ''}" ` +
        `${FILLS[shape.fill]} ${PENS[shape.pen]}/>`
      )
    case 'text':
      return lettering(shape, options)
  }
}

export interface SvgOptions {
  /** `mm` writes the size in millimetres, for a cutter, a plotter or a screen; `pt` for the PDF writer. */
  readonly unit: 'mm' | 'pt'
  readonly fontFamily: string
}

/** A drawing as SVG text, its user unit one millimetre on paper. */
export const svgText = (drawing: Drawing, options: SvgOptions): string => {
  const { unit } = options
  const size = (valueMm: number): string => (unit === 'mm' ? `${figure(valueMm)}mm` : figure(valueMm / PT_MM))
  const label = unit === 'mm' ? ` role="img" aria-label="${escaped(drawing.alt)}"` : ''
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size(drawing.widthMm)}" height="${size(drawing.heightMm)}" ` +
    `viewBox="0 0 ${figure(drawing.widthMm)} ${figure(drawing.heightMm)}"${label}>` +
    `${drawing.shapes.map((shape) => element(shape, options)).join('')}</svg>`
  )
}

/** A picture of the sheet for a screen or a file, in true millimetres. */
export const svgPicture = (drawing: Drawing): string =>
  svgText(drawing, { unit: 'mm', fontFamily: "'DejaVu Sans Condensed', 'DejaVu Sans', sans-serif" })
