import {
  type Design,
  type PinnedDimension,
  type PinnedNote,
  pinnedSpan,
  standOffWithin
} from '../../../shared-model/design'
import { type Point, type Scale, toPx } from '../scale'

/** Dimension lines stand this far from what they measure, and as many steps as keep neighbours apart. */
const OFFSET_PX = 24
const STEP_PX = 18
const STEPS = 3
/** Room around a note's words, height of its box, and how far it stands from its place. */
const PAD_PX = 5
const HEIGHT_PX = 18
const LEADS_PX = 14
const LIFT_PX = 18

export interface DimensionLie {
  readonly from: Point
  readonly to: Point
  readonly offset: number
  readonly upright: boolean
  readonly valueMm: number
}

/** Where a pinned dimension lies in the picture; null where what it measures is gone. */
export function dimensionLie(
  design: Pick<Design, 'channels'>,
  sill: { readonly lengthMm: number; readonly depthMm: number },
  dimension: PinnedDimension,
  serial: number,
  scale: Scale,
  letters: number
): DimensionLie | null {
  const span = pinnedSpan(design, sill, dimension)
  if (span === null) return null
  const beside = (OFFSET_PX + STEP_PX * (serial % STEPS)) * letters
  return {
    from: toPx(scale, span.from.xMm, span.from.yMm),
    to: toPx(scale, span.to.xMm, span.to.yMm),
    offset: dimension.offMm === undefined ? beside : standOffWithin(span, sill, dimension.offMm) * scale.pxPerMm,
    upright: span.upright,
    valueMm: span.valueMm
  }
}

/** The two ends of the line that carries the figure. */
export const lineOf = ({ from, to, offset, upright }: DimensionLie): readonly [Point, Point] =>
  upright
    ? [
        { x: from.x + offset, y: from.y },
        { x: from.x + offset, y: to.y }
      ]
    : [
        { x: from.x, y: from.y + offset },
        { x: to.x, y: from.y + offset }
      ]

export interface NoteLie {
  readonly at: Point
  readonly left: number
  readonly middle: number
  readonly width: number
  readonly height: number
  readonly pad: number
}

/** Where a note's words stand: beside its place, on the side where the picture has room. */
export function noteLie(
  note: PinnedNote,
  wordsPx: number,
  scale: Scale,
  letters: number,
  pictureWidth: number
): NoteLie {
  const at = toPx(scale, note.xMm, note.yMm)
  const width = wordsPx + 2 * PAD_PX
  const leads = LEADS_PX * letters
  const left = at.x + leads + width > pictureWidth ? at.x - leads - width : at.x + leads
  return { at, left, middle: at.y - LIFT_PX * letters, width, height: HEIGHT_PX * letters, pad: PAD_PX }
}
