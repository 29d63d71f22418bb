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
import { clipAlong } from './clip'

/** How a shop reads distances on a template. */
export interface Reading {
  readonly length: (valueMm: number) => string
  readonly stepMm: number
}

const REGISTER_MM = 2

/** The part of a template between two distances, in the template's own coordinates: edges, holes, datum, baseline. */
export const stripShapes = (template: ChannelTemplate, fromMm: number, toMm: number, reading: Reading): Shape[] => {
  const drawn: Shape[] = [
    ...template.shapes,
    ...template.holes.flatMap((hole) => holeShapes(hole, template)),
    ...datumShapes(template),
    ...baseline(template, reading)
  ]
  return drawn.flatMap((shape) => (shape.kind === 'text' ? whole(shape, fromMm, toMm) : clipAlong(shape, fromMm, toMm)))
}

/** Past the ends of a tile there is this much bare paper that lettering may use. */
const SPILL_MM = 2.5

/** Lettering is set whole or not at all: what does not fit here is on the tile beside. */
const whole = (shape: TextShape, fromMm: number, toMm: number): readonly Shape[] => {
  const width = textWidthMm(shape.text, shape.sizePt, shape.bold)
  const left = shape.atMm.xMm - (shape.anchor === 'middle' ? width / 2 : shape.anchor === 'end' ? width : 0)
  return left >= fromMm - SPILL_MM && left + width <= toMm + SPILL_MM ? [shape] : []
}

const holeShapes = (hole: TemplateHole, template: ChannelTemplate): Shape[] => {
  const radius = hole.diameterMm / 2
  const { atMm, acrossMm } = hole
  const arm = Math.max(4, radius * 0.35)
  const edge = hole.outlineMm.length === 0 ? radius : Math.max(...hole.outlineMm.map((p) => p.yMm))
  const insideY = acrossMm + arm + 3.4
  const chord = 2 * Math.sqrt(Math.max(0, radius ** 2 - (insideY - acrossMm) ** 2))
  const below = acrossMm + edge + 3.6
  const labelY =
    textWidthMm(hole.label, 8) < chord - 2 ? insideY : below < template.toYMm - 1 ? below : acrossMm - edge - 1.4
  return [
    hole.outlineMm.length === 0 ? circle(atMm, acrossMm, radius, 'outline') : polygon(hole.outlineMm, 'outline'),
    line(atMm - radius - 2, acrossMm, atMm + radius + 2, acrossMm, 'dimension'),
    line(atMm, acrossMm - arm, atMm, acrossMm + arm, 'thin'),
    circle(atMm, acrossMm, 0.6, 'dimension'),
    text(atMm, labelY, hole.label, { sizePt: 8, anchor: 'middle' })
  ]
}

const datumShapes = (template: ChannelTemplate): Shape[] => [
  line(0, template.fromYMm - 3, 0, template.toYMm + 3, 'cut'),
  polygon([point(0, 0), point(-3.4, 1.9), point(-3.4, -1.9)], 'none', 'ink'),
  text(2.2, template.fromYMm + 4.6, 'DATUM END', { sizePt: 8.5, bold: true })
]

/** Strokes along the lower edge with their distance from the datum end: the datum is on every tile. */
const baseline = (template: ChannelTemplate, reading: Reading): Shape[] => {
  const shapes: Shape[] = []
  for (let atMm = 0; atMm <= template.lengthMm + 1e-9; atMm += reading.stepMm) {
    shapes.push(
      line(atMm, template.toYMm, atMm, template.toYMm + 2, 'thin'),
      text(atMm, template.toYMm + 5.2, reading.length(atMm), { sizePt: 8, anchor: 'middle' })
    )
  }
  return shapes
}

/** A match line with a registration cross at each end; its figure stands on the tile's own side of it. */
export const matchShapes = (template: ChannelTemplate, atMm: number, first: boolean, reading: Reading): Shape[] => [
  line(atMm, template.fromYMm - 2, atMm, template.toYMm + 6, 'hidden'),
  ...[template.fromYMm + 5, template.toYMm - 5].flatMap((yMm): Shape[] => [
    circle(atMm, yMm, REGISTER_MM, 'dimension'),
    line(atMm - 2 * REGISTER_MM, yMm, atMm + 2 * REGISTER_MM, yMm, 'dimension')
  ]),
  text(atMm + (first ? -2 : 2), template.fromYMm - 3, `match ${reading.length(atMm)} from datum`, {
    sizePt: 8,
    anchor: first ? 'start' : 'end'
  })
]
