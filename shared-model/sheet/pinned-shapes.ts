import { type Design, pinnedSpan } from '../design'
import type { Plan } from '../plan'
import { levelDimension, uprightDimension } from './dimension-lines'
import { circle, line, rect, type Shape, text } from './drawing'
import { textWidthMm } from './lettering'
import type { Printed } from './printed'

type Axis = (realMm: number) => number

/** Dimension lines stand this far from what they measure, on paper, and as many steps as keep neighbours apart. */
const OFF_MM = 6
const STEP_MM = 5
const STEPS = 3
const NOTE_PT = 8
const NOTE_HEIGHT_MM = 4

/** Dimensions and notes that the grower pinned to the sill. */
export const pinnedShapes = (plan: Plan, design: Design, x: Axis, y: Axis, rightMm: number, show: Printed): Shape[] => [
  ...design.dimensions.flatMap((dimension, serial): Shape[] => {
    const span = pinnedSpan(design, plan.sill, dimension)
    if (span === null || span.valueMm === 0) return []
    const off = OFF_MM + STEP_MM * (serial % STEPS)
    const figure = show.length(span.valueMm)
    const [fromX, toX, fromY, toY] = [x(span.from.xMm), x(span.to.xMm), y(span.from.yMm), y(span.to.yMm)]
    return span.upright
      ? uprightDimension(fromY, toY, Math.max(fromX, toX) + off, Math.max(fromX, toX), figure)
      : levelDimension(
          Math.min(fromX, toX),
          Math.max(fromX, toX),
          Math.max(fromY, toY) + off,
          Math.max(fromY, toY),
          figure
        )
  }),
  ...design.notes.flatMap((note): Shape[] => {
    const [atX, atY] = [x(note.xMm), y(note.yMm)]
    const width = textWidthMm(note.text, NOTE_PT) + 2
    const left = atX + 4 + width > rightMm ? atX - 4 - width : atX + 4
    const middle = atY - 5
    return [
      line(atX, atY, left > atX ? left : left + width, middle, 'dimension'),
      circle(atX, atY, 0.6, 'none', 'ink'),
      rect(left, middle - NOTE_HEIGHT_MM / 2, width, NOTE_HEIGHT_MM, 'thin', 'paper'),
      text(left + 1, middle + 1, note.text, { sizePt: NOTE_PT })
    ]
  })
]
