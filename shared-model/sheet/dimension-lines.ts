import { circle, line, point, polygon, type Shape, text } from './drawing'
import { capHeightMm, textWidthMm } from './lettering'
import { spreadAlong } from './spread-along'

const ARROW_MM = 2.2
const SIZE_PT = 8.5
/** Gap between an object and its extension line, and what the line passes the dimension line by (ISO 129-1). */
const GAP_MM = 1
const PAST_MM = 1.5
/** Figures of running dimensions stand no farther to the right: the sheet's drawings are 182 mm wide. */
const MOST_X_MM = 180

const arrow = (xMm: number, yMm: number, dxMm: number, dyMm: number): Shape => {
  const half = 0.38
  return polygon(
    [
      point(xMm, yMm),
      point(xMm - dxMm * ARROW_MM - dyMm * half, yMm - dyMm * ARROW_MM + dxMm * half),
      point(xMm - dxMm * ARROW_MM + dyMm * half, yMm - dyMm * ARROW_MM - dxMm * half)
    ],
    'none',
    'ink'
  )
}

/** A length between two points on a level line, with its figure above the line. */
export const levelDimension = (
  fromXMm: number,
  toXMm: number,
  yMm: number,
  objectYMm: number,
  figure: string
): Shape[] => {
  const side = yMm > objectYMm ? 1 : -1
  const extension = (xMm: number): Shape => line(xMm, objectYMm + side * GAP_MM, xMm, yMm + side * PAST_MM, 'dimension')
  const middle = (fromXMm + toXMm) / 2
  const tight = toXMm - fromXMm < 3 * ARROW_MM
  const arrows = tight
    ? [arrow(fromXMm, yMm, 1, 0), arrow(toXMm, yMm, -1, 0)]
    : [arrow(fromXMm, yMm, -1, 0), arrow(toXMm, yMm, 1, 0)]
  const outside = toXMm - fromXMm < textWidthMm(figure, SIZE_PT) + 1
  return [
    extension(fromXMm),
    extension(toXMm),
    line(fromXMm - (tight ? 4 : 0), yMm, toXMm + (tight ? 4 : 0), yMm, 'dimension'),
    ...arrows,
    outside
      ? text(toXMm + (tight ? 4.5 : 1.5), yMm - 0.8, figure, { sizePt: SIZE_PT })
      : text(middle, yMm - 0.9, figure, { sizePt: SIZE_PT, anchor: 'middle' })
  ]
}

/** A height between two points on an upright line, with its figure beside the line. */
export const uprightDimension = (
  fromYMm: number,
  toYMm: number,
  xMm: number,
  objectXMm: number,
  figure: string,
  note = ''
): Shape[] => {
  const side = xMm > objectXMm ? 1 : -1
  const extension = (yMm: number): Shape => line(objectXMm + side * GAP_MM, yMm, xMm + side * PAST_MM, yMm, 'dimension')
  const upper = Math.min(fromYMm, toYMm)
  const lower = Math.max(fromYMm, toYMm)
  const tight = lower - upper < 3 * ARROW_MM
  const middle = (upper + lower) / 2
  const anchor = side > 0 ? 'start' : 'end'
  const labelX = xMm + side * 2
  const firstY = note === '' ? middle + capHeightMm(SIZE_PT) / 2 : middle - 0.6
  return [
    extension(upper),
    extension(lower),
    line(xMm, upper - (tight ? 4 : 0), xMm, lower + (tight ? 4 : 0), 'dimension'),
    ...(tight
      ? [arrow(xMm, upper, 0, 1), arrow(xMm, lower, 0, -1)]
      : [arrow(xMm, upper, 0, -1), arrow(xMm, lower, 0, 1)]),
    text(labelX, firstY, figure, { sizePt: SIZE_PT, anchor, bold: note !== '' }),
    ...(note === '' ? [] : [text(labelX, firstY + 3.6, note, { sizePt: 8, anchor })])
  ]
}

export interface RunningMark {
  readonly xMm: number
  readonly figure: string
}

/**
 * @source iso-129-1
 *
 * Running dimensions (ISO 129-1): one line from an origin circle, an arrow at each mark, its figure at the end of the
 * extension line. Figures read from the right, turned, so that close marks stay apart; they are spread when closer.
 */
export const runningDimensions = (
  originXMm: number,
  yMm: number,
  objectYMm: number,
  marks: readonly RunningMark[],
  /** Whether the line begins at the origin itself, not at a break in a long piece. */
  atOrigin = true
): Shape[] => {
  const halfMm = capHeightMm(SIZE_PT) / 2
  const placed = spreadAlong(
    marks.map(({ xMm }) => ({ atMm: xMm, halfMm })),
    1.1,
    MOST_X_MM
  )
  const last = marks[marks.length - 1]
  const bendY = yMm + PAST_MM
  const textY = bendY + 2.6
  return [
    line(originXMm + (atOrigin ? 0.9 : 0), yMm, last === undefined ? originXMm + 3 : last.xMm, yMm, 'dimension'),
    ...(atOrigin
      ? [
          circle(originXMm, yMm, 0.9, 'thin', 'paper'),
          line(originXMm, objectYMm + GAP_MM, originXMm, yMm - 0.9, 'dimension'),
          line(originXMm, yMm + 0.9, originXMm, bendY, 'dimension'),
          text(originXMm + capHeightMm(SIZE_PT) / 2, bendY + 1, '0', { sizePt: SIZE_PT, anchor: 'end', turned: true })
        ]
      : []),
    ...marks.flatMap((mark, index): Shape[] => {
      const atX = placed[index] ?? mark.xMm
      return [
        line(mark.xMm, objectYMm + GAP_MM, mark.xMm, bendY, 'dimension'),
        ...(mark.xMm - originXMm > ARROW_MM + 1 ? [arrow(mark.xMm, yMm, 1, 0)] : []),
        ...(atX === mark.xMm ? [] : [line(mark.xMm, bendY, atX, textY - 0.4, 'dimension')]),
        text(atX + capHeightMm(SIZE_PT) / 2, atX === mark.xMm ? bendY + 1 : textY, mark.figure, {
          sizePt: SIZE_PT,
          anchor: 'end',
          turned: true
        })
      ]
    })
  ]
}

/** Room below the dimension line that turned figures of running dimensions take. */
export const runningRoomMm = (figures: readonly string[]): number =>
  PAST_MM + 3.6 + Math.max(4, ...figures.map((figure) => textWidthMm(figure, SIZE_PT)))
