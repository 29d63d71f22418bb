import { circle, line, type Shape, text } from '../sheet'
import type { Reading } from './strip'
import type { Stretch, Tile } from './tiles'

const REGISTER_MM = 2
/** Crosses stand this far in from the edges of a tile, and past a corner where two match lines meet. */
const IN_MM = 5
const PAST_CORNER_MM = 18

/**
 * Where tiles meet: a dashed line with a registration cross near each end and its distance from the datum (or from the
 * centre line, or the upper edge); its figure stands on the tile's own side of it.
 */
export const matchShapes = ({ template, along, across }: Tile, reading: Reading): Shape[] => {
  const upright = template.face === 'front' || template.face === 'back'
  const fromAcross = upright && !template.wraps ? 'the upper edge' : 'the centre line'
  return [
    ...ends(along).flatMap(({ atMm, first }): Shape[] => [
      line(atMm, across.fromMm - 2, atMm, across.toMm + 6, 'hidden'),
      ...crossesAt(across).flatMap((yMm) => cross(atMm, yMm, false)),
      text(atMm + (first ? -2 : 2), across.fromMm - 3, `match ${reading.length(atMm)} from ${template.zero.from}`, {
        sizePt: 8,
        anchor: first ? 'start' : 'end'
      })
    ]),
    ...ends(across).flatMap(({ atMm, first }): Shape[] => [
      line(along.fromMm - 2, atMm, along.toMm + 2, atMm, 'hidden'),
      ...crossesAt(along).flatMap((xMm) => cross(xMm, atMm, true)),
      text(
        (along.fromMm + along.toMm) / 2,
        atMm + (first ? 3.8 : -1.2),
        `match ${reading.length(Math.abs(atMm))} from ${fromAcross}`,
        { sizePt: 8, anchor: 'middle' }
      )
    ])
  ]
}

const ends = ({ matchBeforeMm, matchAfterMm }: Stretch): readonly { atMm: number; first: boolean }[] => [
  ...(matchBeforeMm === null ? [] : [{ atMm: matchBeforeMm, first: true }]),
  ...(matchAfterMm === null ? [] : [{ atMm: matchAfterMm, first: false }])
]

const crossesAt = ({ fromMm, toMm, matchBeforeMm, matchAfterMm }: Stretch): readonly number[] => [
  fromMm + (matchBeforeMm === null ? IN_MM : PAST_CORNER_MM),
  toMm - (matchAfterMm === null ? IN_MM : PAST_CORNER_MM)
]

/** A ring with a stroke square to the match line. */
const cross = (xMm: number, yMm: number, down: boolean): Shape[] => [
  circle(xMm, yMm, REGISTER_MM, 'dimension'),
  down
    ? line(xMm, yMm - 2 * REGISTER_MM, xMm, yMm + 2 * REGISTER_MM, 'dimension')
    : line(xMm - 2 * REGISTER_MM, yMm, xMm + 2 * REGISTER_MM, yMm, 'dimension')
]
