import {
  type ChannelTemplate,
  circle,
  line,
  point,
  polygon,
  type Shape,
  type TemplateHole,
  type TextShape,
  text,
  textWidthMm
} from '../sheet'
import { clipAlong, clipDown } from './clip'

/** How a shop reads distances on a template. */
export interface Reading {
  readonly length: (valueMm: number) => string
  readonly stepMm: number
}

/** A part of a template, in the template's own coordinates. */
export interface Part {
  readonly fromMm: number
  readonly toMm: number
  readonly fromYMm: number
  readonly toYMm: number
}

/** The part of a template that goes on one tile: edges, holes, datum, and the baseline along its lower edge. */
export const stripShapes = (template: ChannelTemplate, part: Part, reading: Reading): Shape[] => [
  ...[...template.shapes, ...template.holes.flatMap((hole) => holeShapes(hole, template, part))].flatMap((shape) =>
    shape.kind === 'text' ? whole(shape, part) : cutTo(shape, part)
  ),
  ...[...datumShapes(template, part), ...baseline(template, part, reading)].flatMap((shape) =>
    shape.kind === 'text' ? wholeAlong(shape, part) : clipAlong(shape, part.fromMm, part.toMm)
  )
]

/** Past the ends of a tile there is this much bare paper that lettering may use. */
const SPILL_MM = 2.5

/** The dashed outside of a proud closure reaches past its part by no more than this. */
const cutTo = (shape: Shape, { fromMm, toMm, fromYMm, toYMm }: Part): readonly Shape[] =>
  clipAlong(shape, fromMm, toMm).flatMap((one) => clipDown(one, fromYMm, toYMm))

/** Lettering is set whole or not at all: what does not fit here is on the tile beside. */
const wholeAlong = (shape: TextShape, { fromMm, toMm }: Part): readonly Shape[] => {
  const width = textWidthMm(shape.text, shape.sizePt, shape.bold)
  const left = shape.atMm.xMm - (shape.anchor === 'middle' ? width / 2 : shape.anchor === 'end' ? width : 0)
  return left >= fromMm - SPILL_MM && left + width <= toMm + SPILL_MM ? [shape] : []
}

const whole = (shape: TextShape, part: Part): readonly Shape[] =>
  shape.atMm.yMm >= part.fromYMm && shape.atMm.yMm <= part.toYMm ? wholeAlong(shape, part) : []

const holeShapes = (hole: TemplateHole, { toYMm }: ChannelTemplate, part: Part): Shape[] => {
  const radius = hole.diameterMm / 2
  const { atMm, acrossMm } = hole
  const arm = Math.max(4, radius * 0.35)
  const edge = hole.outlineMm.length === 0 ? radius : Math.max(...hole.outlineMm.map((p) => p.yMm)) - acrossMm
  const insideY = acrossMm + arm + 3.4
  const chord = 2 * Math.sqrt(Math.max(0, radius ** 2 - (insideY - acrossMm) ** 2))
  const below = acrossMm + edge + 3.6
  const fits = textWidthMm(hole.label, 8) < chord - 2 && insideY < part.toYMm
  const labelY = fits ? insideY : below < Math.min(toYMm, part.toYMm) - 1 ? below : acrossMm - edge - 1.4
  return [
    hole.outlineMm.length === 0 ? circle(atMm, acrossMm, radius, 'outline') : polygon(hole.outlineMm, 'outline'),
    line(atMm - radius - 2, acrossMm, atMm + radius + 2, acrossMm, 'dimension'),
    line(atMm, acrossMm - arm, atMm, acrossMm + arm, 'thin'),
    circle(atMm, acrossMm, 0.6, 'dimension'),
    text(atMm, labelY, hole.label, { sizePt: 8, anchor: 'middle' })
  ]
}

/** The line on which x begins, its name, and on the part with the centre line the datum's triangle. */
const datumShapes = ({ zero }: ChannelTemplate, { fromYMm, toYMm }: Part): Shape[] => {
  const middle = Math.max(fromYMm + 1.9, Math.min(toYMm - 1.9, 0))
  return [
    line(0, fromYMm - 3, 0, toYMm + 3, 'cut'),
    polygon([point(0, middle), point(-3.4, middle + 1.9), point(-3.4, middle - 1.9)], 'none', 'ink'),
    text(2.2, fromYMm + 4.6, zero.label, { sizePt: 8.5, bold: true })
  ]
}

/** Strokes along the lower edge with their distance from the datum end: the datum is on every tile. */
const baseline = (template: ChannelTemplate, { toYMm }: Part, reading: Reading): Shape[] => {
  const shapes: Shape[] = []
  for (let atMm = 0; atMm <= template.lengthMm + 1e-9; atMm += reading.stepMm) {
    shapes.push(
      line(atMm, toYMm, atMm, toYMm + 2, 'thin'),
      text(atMm, toYMm + 5.2, reading.length(atMm), { sizePt: 8, anchor: 'middle' })
    )
  }
  return shapes
}
