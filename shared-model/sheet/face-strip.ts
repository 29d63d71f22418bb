import type { DrillRow } from '../bench'
import { runningDimensions, runningRoomMm, uprightDimension } from './dimension-lines'
import { circle, line, point, polygon, rect, type Shape, text } from './drawing'
import { textWidthMm } from './lettering'
import type { Built } from './named'
import type { Printed } from './printed'
import { cross } from './sill-picture'
import { spreadAlong } from './spread-along'

const TOP_MM = 9
const FACE_WORDS = { top: 'upper face', front: 'front face', back: 'back face', bottom: 'underside' }
/** Marks above the holes, and the least gap between two of them. */
const MARK_PT = 8
const MARK_GAP_MM = 1
const MOST_X_MM = 180

export type LongFace = keyof typeof FACE_WORDS

/** A stretch of the channel that is drawn on a strip of its own. */
export interface Reach {
  readonly fromMm: number
  readonly toMm: number
}

export interface Strip {
  readonly shapes: readonly Shape[]
  readonly heightMm: number
}

/** Room along the channel, on paper, that the marks above these holes take. */
export const marksAlongMm = (holes: readonly DrillRow[]): number =>
  holes.reduce((sum, { mark }) => sum + textWidthMm(mark, MARK_PT) + MARK_GAP_MM, 0)

/** One long face of a channel, or a stretch of it, to scale: datum end at the left, running dimensions below. */
export const faceStrip = (
  one: Built,
  face: LongFace,
  { fromMm, toMm }: Reach,
  holes: readonly DrillRow[],
  leftMm: number,
  factor: number,
  show: Printed
): Strip => {
  const { section } = one.plan.layout
  const { cutLengthMm } = one
  const flat = face === 'top' || face === 'bottom'
  const acrossMm = flat ? section.widthMm : section.heightMm
  const upper = TOP_MM
  const lower = upper + acrossMm * factor
  const middle = (upper + lower) / 2
  const right = leftMm + (toMm - fromMm) * factor
  const x = (atMm: number): number => leftMm + (atMm - fromMm) * factor
  const y = (hole: DrillRow): number =>
    flat || hole.heightMm === null ? middle : lower - (hole.heightMm + section.averageWallMm) * factor
  const whole = fromMm === 0 && toMm === cutLengthMm
  const inOrder = [...holes].sort((a, b) => a.atMm - b.atMm)
  const marks = [
    ...inOrder.map((hole) => ({ xMm: x(hole.atMm), figure: show.bare(hole.atMm) })),
    ...(toMm === cutLengthMm ? [{ xMm: right, figure: show.bare(cutLengthMm) }] : [])
  ]
  const part = whole ? '' : `, ${show.bare(fromMm)} to ${show.length(toMm)}`
  const axis = flat ? [line(leftMm - 3, middle, right + 3, middle, 'centre')] : []
  return {
    heightMm: TOP_MM + acrossMm * factor + 6 + runningRoomMm(marks.map(({ figure }) => figure)),
    shapes: [
      text(leftMm, 3.4, `Channel ${one.plan.mark}, ${FACE_WORDS[face]}${part}`, { sizePt: 8.5, bold: true }),
      rect(leftMm, upper, right - leftMm, lower - upper, 'none', 'pale'),
      line(leftMm, upper, right, upper, 'outline'),
      line(leftMm, lower, right, lower, 'outline'),
      ...(fromMm === 0
        ? [line(leftMm, upper, leftMm, lower, 'outline'), ...datumEnd(leftMm, middle)]
        : [brokenEnd(leftMm, upper, lower)]),
      toMm === cutLengthMm ? line(right, upper, right, lower, 'outline') : brokenEnd(right, upper, lower),
      ...axis,
      ...inOrder.flatMap((hole): Shape[] => {
        const radius = (hole.diameterMm / 2) * factor
        return [
          circle(x(hole.atMm), y(hole), radius, 'outline', 'paper'),
          ...cross(x(hole.atMm), y(hole), radius + 1.2)
        ]
      }),
      ...holeMarks(
        inOrder.map((hole) => ({ xMm: x(hole.atMm), mark: hole.mark })),
        upper - 1.4
      ),
      ...uprightDimension(upper, lower, right + 6, right, show.length(acrossMm)),
      ...runningDimensions(leftMm, lower + 5, lower, marks, fromMm === 0)
    ]
  }
}

const datumEnd = (leftMm: number, middleMm: number): Shape[] => [
  polygon(
    [point(leftMm, middleMm), point(leftMm - 3, middleMm + 1.7), point(leftMm - 3, middleMm - 1.7)],
    'none',
    'ink'
  ),
  text(2.2, middleMm, 'datum', { sizePt: 8, turned: true, anchor: 'middle' })
]

/** A break in a long piece: a narrow line with a zigzag (ISO 128-2, line 01.1). */
const brokenEnd = (xMm: number, upperMm: number, lowerMm: number): Shape => {
  const middle = (upperMm + lowerMm) / 2
  const places = [
    point(xMm, upperMm - 1.5),
    point(xMm, middle - 1.6),
    point(xMm - 1.2, middle - 0.8),
    point(xMm + 1.2, middle + 0.8),
    point(xMm, middle + 1.6),
    point(xMm, lowerMm + 1.5)
  ]
  return polygon(places, 'thin', 'none', false)
}

/** The marks above their holes, pushed along where they would run into each other. */
const holeMarks = (holes: readonly { readonly xMm: number; readonly mark: string }[], yMm: number): Shape[] => {
  const places = spreadAlong(
    holes.map(({ xMm, mark }) => ({ atMm: xMm, halfMm: textWidthMm(mark, MARK_PT) / 2 })),
    MARK_GAP_MM,
    MOST_X_MM
  )
  return holes.map(({ xMm, mark }, index) =>
    text(places[index] ?? xMm, yMm, mark, { sizePt: MARK_PT, anchor: 'middle' })
  )
}
