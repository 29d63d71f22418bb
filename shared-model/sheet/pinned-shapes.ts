import { type Design, pinnedSpan, standOffWithin } from '../design'
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
/** Room for what passes a dimension line at the picture's edge, and for a figure beside or above its line. */
const EDGE_MM = 1.5
const FIGURE_PT = 8.5
const FIGURE_GAP_MM = 2
const FIGURE_HEIGHT_MM = 4
const NOTE_PT = 8
const NOTE_HEIGHT_MM = 4

/** The picture's paper, and where the sill ends on it: notes turn to the other side of their place there. */
interface PinnedRoom {
  readonly widthMm: number
  readonly heightMm: number
  readonly sillRightMm: number
}

/**
 * Dimensions and notes that the grower pinned to the sill. A dimension line that was put farther off than the picture
 * reaches stands at its edge, its figure still inside; so does a note.
 */
export const pinnedShapes = (
  plan: Plan,
  design: Design,
  x: Axis,
  y: Axis,
  room: PinnedRoom,
  show: Printed
): Shape[] => [
  ...design.dimensions.flatMap((dimension, serial): Shape[] => {
    const span = pinnedSpan(design, plan.sill, dimension)
    if (span === null || span.valueMm === 0) return []
    const beside = OFF_MM + STEP_MM * (serial % STEPS)
    const offMm = dimension.offMm === undefined ? undefined : standOffWithin(span, plan.sill, dimension.offMm)
    const figure = show.length(span.valueMm)
    const [fromX, toX, fromY, toY] = [x(span.from.xMm), x(span.to.xMm), y(span.from.yMm), y(span.to.yMm)]
    const figureMm = FIGURE_GAP_MM + textWidthMm(figure, FIGURE_PT)
    if (span.upright) {
      const objectX = Math.max(fromX, toX)
      const wanted = offMm === undefined ? objectX + beside : x(span.from.xMm + offMm)
      const lineX = within(wanted, wanted > objectX ? EDGE_MM : figureMm, room.widthMm - figureMm)
      return uprightDimension(fromY, toY, lineX, objectX, figure)
    }
    const objectY = Math.max(fromY, toY)
    const wanted = offMm === undefined ? objectY + beside : y(span.from.yMm - offMm)
    const lineY = within(wanted, FIGURE_HEIGHT_MM, room.heightMm - EDGE_MM)
    return levelDimension(Math.min(fromX, toX), Math.max(fromX, toX), lineY, objectY, figure)
  }),
  ...design.notes.flatMap((note): Shape[] => {
    const width = textWidthMm(note.text, NOTE_PT) + 2
    const atX = within(x(note.xMm), EDGE_MM, room.widthMm - EDGE_MM)
    const atY = within(y(note.yMm), EDGE_MM, room.heightMm - EDGE_MM)
    const beside = atX + 4 + width > room.sillRightMm ? atX - 4 - width : atX + 4
    const left = within(beside, 0, Math.max(0, room.widthMm - width))
    const middle = Math.max(NOTE_HEIGHT_MM / 2, atY - 5)
    return [
      line(atX, atY, left > atX ? left : left + width, middle, 'dimension'),
      circle(atX, atY, 0.6, 'none', 'ink'),
      rect(left, middle - NOTE_HEIGHT_MM / 2, width, NOTE_HEIGHT_MM, 'thin', 'paper'),
      text(left + 1, middle + 1, note.text, { sizePt: NOTE_PT })
    ]
  })
]

const within = (wantedMm: number, leastMm: number, mostMm: number): number =>
  Math.min(mostMm, Math.max(leastMm, wantedMm))
