import type { Point } from '../scale'
import { type Ink, lettering } from './ink'

type Ctx = CanvasRenderingContext2D

export interface DimensionLook {
  readonly colour: string
  readonly face: string
  readonly size: number
  readonly paper: string
}

export const plainLook = (ink: Ink): DimensionLook => ({ ...ink, colour: ink.dimension, paper: ink.room })
export const snapLook = (ink: Ink): DimensionLook => ({ ...ink, colour: ink.snap, paper: ink.room })

/**
 * A dimension between two points, drawn `offset` to the side: thin extension lines, a thin dimension line with oblique
 * end marks, the figure above it or beside it.
 */
export function paintDimension(
  ctx: Ctx,
  from: Point,
  to: Point,
  offset: number,
  text: string,
  look: DimensionLook,
  upright = Math.abs(to.x - from.x) < Math.abs(to.y - from.y)
): void {
  const a = upright ? { x: from.x + offset, y: from.y } : { x: from.x, y: from.y + offset }
  const b = upright ? { x: from.x + offset, y: to.y } : { x: to.x, y: from.y + offset }
  const past = Math.sign(offset || 1) * 4
  ctx.strokeStyle = look.colour
  ctx.lineWidth = 0.8
  ctx.setLineDash([])
  ctx.beginPath()
  ctx.moveTo(upright ? from.x + past : from.x, upright ? from.y : from.y + past)
  ctx.lineTo(upright ? a.x + past : a.x, upright ? a.y : a.y + past)
  ctx.moveTo(upright ? to.x + past : to.x, upright ? to.y : to.y + past)
  ctx.lineTo(upright ? b.x + past : b.x, upright ? b.y : b.y + past)
  ctx.moveTo(a.x, a.y)
  ctx.lineTo(b.x, b.y)
  for (const end of [a, b]) {
    ctx.moveTo(end.x - 3.5, end.y + 3.5)
    ctx.lineTo(end.x + 3.5, end.y - 3.5)
  }
  ctx.stroke()
  paintFigure(ctx, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, text, look, upright)
}

/** The figure on its line, on a patch of paper so that nothing runs through it. */
function paintFigure(ctx: Ctx, at: Point, text: string, look: DimensionLook, upright: boolean): void {
  ctx.save()
  ctx.translate(at.x, at.y)
  if (upright) ctx.rotate(-Math.PI / 2)
  ctx.font = lettering(look, 12)
  ctx.textAlign = 'center'
  ctx.textBaseline = 'middle'
  const width = ctx.measureText(text).width + 8
  ctx.fillStyle = look.paper
  ctx.fillRect(-width / 2, -8 * look.size, width, 16 * look.size)
  ctx.fillStyle = look.colour
  ctx.fillText(text, 0, 0.5)
  ctx.restore()
}

export interface RunningMark {
  readonly at: Point
  readonly text: string
}

/** Running dimensions: one line from a zero mark, a tick and a figure at each place, never chained. */
export function paintRunning(
  ctx: Ctx,
  zero: Point,
  marks: readonly RunningMark[],
  offset: number,
  look: DimensionLook
): void {
  const last = marks.at(-1)
  if (last === undefined) return
  const upright = Math.abs(last.at.x - zero.x) < Math.abs(last.at.y - zero.y)
  const place = (point: Point): Point =>
    upright ? { x: zero.x + offset, y: point.y } : { x: point.x, y: zero.y + offset }
  const start = place(zero)
  const end = place(last.at)
  ctx.strokeStyle = look.colour
  ctx.fillStyle = look.colour
  ctx.lineWidth = 0.8
  ctx.setLineDash([])
  ctx.beginPath()
  ctx.arc(start.x, start.y, 3, 0, 2 * Math.PI)
  ctx.moveTo(start.x, start.y)
  ctx.lineTo(end.x, end.y)
  for (const mark of marks) {
    const at = place(mark.at)
    ctx.moveTo(at.x - (upright ? 4 : 0), at.y - (upright ? 0 : 4))
    ctx.lineTo(at.x + (upright ? 4 : 0), at.y + (upright ? 0 : 4))
  }
  ctx.stroke()
  ctx.font = lettering(look, 11)
  ctx.textBaseline = 'middle'
  let shownTo = Number.NEGATIVE_INFINITY
  for (const mark of marks) {
    const at = place(mark.at)
    const along = Math.abs(upright ? at.y - start.y : at.x - start.x)
    const room = upright ? 14 * look.size : ctx.measureText(mark.text).width + 6
    if (along - room / 2 < shownTo) continue
    shownTo = along + room / 2
    ctx.textAlign = upright ? 'left' : 'center'
    ctx.fillText(mark.text, upright ? at.x + 7 : at.x, upright ? at.y : at.y + Math.sign(offset) * 11 * look.size)
  }
}
