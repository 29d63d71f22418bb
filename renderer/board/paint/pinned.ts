import { type Anchor, type Design, type PinnedNote, pinnedSpan, type Shows } from '../../../shared-model/design'
import { mm, showLength } from '../../../shared-model/units'
import { type Scale, toPx } from '../scale'
import { paintDimension, plainLook } from './dimension'
import { type Ink, lettering } from './ink'

type Ctx = CanvasRenderingContext2D

/** Dimension lines stand this far from what they measure, and as many steps as keep neighbours apart. */
const OFFSET_PX = 24
const STEP_PX = 18
const STEPS = 3

/** Dimensions and notes that stay. */
export function paintPinned(
  ctx: Ctx,
  scale: Scale,
  design: Pick<Design, 'channels' | 'dimensions' | 'notes'> & { readonly pinFrom: Anchor | null },
  sill: { readonly lengthMm: number; readonly depthMm: number },
  shows: Shows,
  ink: Ink
): void {
  const look = { ...plainLook(ink), colour: ink.text }
  design.dimensions.forEach((dimension, serial) => {
    const span = pinnedSpan(design, sill, dimension)
    if (span === null) return
    const offset = (OFFSET_PX + STEP_PX * (serial % STEPS)) * ink.size
    const from = toPx(scale, span.from.xMm, span.from.yMm)
    const to = toPx(scale, span.to.xMm, span.to.yMm)
    paintDimension(ctx, from, to, offset, showLength(mm(span.valueMm), shows), look, span.upright)
  })
  const begun = design.pinFrom === null ? null : pinnedSpan(design, sill, { from: design.pinFrom, to: design.pinFrom })
  if (begun !== null) {
    const { x, y } = toPx(scale, begun.from.xMm, begun.from.yMm)
    ctx.beginPath()
    ctx.arc(x, y, 9, 0, 2 * Math.PI)
    ctx.strokeStyle = ink.select
    ctx.lineWidth = 2.5
    ctx.stroke()
  }
  for (const note of design.notes) paintNote(ctx, scale, note, ink)
}

/** A dot at the place, a short leader and the words. */
function paintNote(ctx: Ctx, scale: Scale, note: PinnedNote, ink: Ink): void {
  const { x, y } = toPx(scale, note.xMm, note.yMm)
  ctx.font = lettering(ink, 12)
  ctx.textAlign = 'left'
  ctx.textBaseline = 'middle'
  const width = ctx.measureText(note.text).width + 10
  const leads = 14 * ink.size
  const roomPx = ctx.canvas.width / Math.max(1, ctx.getTransform().a)
  const left = x + leads + width > roomPx ? x - leads - width : x + leads
  const at = { x: left, y: y - 18 * ink.size }
  const height = 18 * ink.size
  ctx.strokeStyle = ink.text
  ctx.fillStyle = ink.text
  ctx.lineWidth = 0.9
  ctx.setLineDash([])
  ctx.beginPath()
  ctx.moveTo(x, y)
  ctx.lineTo(left > x ? left : left + width, at.y)
  ctx.stroke()
  ctx.beginPath()
  ctx.arc(x, y, 2.5, 0, 2 * Math.PI)
  ctx.fill()
  ctx.fillStyle = ink.sill
  ctx.fillRect(at.x, at.y - height / 2, width, height)
  ctx.strokeRect(at.x, at.y - height / 2, width, height)
  ctx.fillStyle = ink.text
  ctx.fillText(note.text, at.x + 5, at.y + 0.5)
}
