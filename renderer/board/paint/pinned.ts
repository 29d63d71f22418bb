import type { Anchor, Design, PinnedNote, Shows } from '../../../shared-model/design'
import { pinnedSpan } from '../../../shared-model/design'
import { mm, showLength } from '../../../shared-model/units'
import { dimensionLie, lineOf, noteLie } from '../pinned/lie'
import { type Scale, toPx } from '../scale'
import { paintDimension, plainLook } from './dimension'
import { type Ink, lettering } from './ink'

type Ctx = CanvasRenderingContext2D

/** Dimensions and notes that stay; the chosen one in a ring. */
export function paintPinned(
  ctx: Ctx,
  scale: Scale,
  design: Pick<Design, 'channels' | 'dimensions' | 'notes'> & {
    readonly pinFrom: Anchor | null
    readonly pinnedId: string | null
  },
  sill: { readonly lengthMm: number; readonly depthMm: number },
  shows: Shows,
  ink: Ink
): void {
  design.dimensions.forEach((dimension, serial) => {
    const lie = dimensionLie(design, sill, dimension, serial, scale, ink.size)
    if (lie === null) return
    const chosen = dimension.id === design.pinnedId
    const look = { ...plainLook(ink), colour: chosen ? ink.select : ink.text }
    paintDimension(ctx, lie.from, lie.to, lie.offset, showLength(mm(lie.valueMm), shows), look, lie.upright)
    if (chosen) {
      const [a, b] = lineOf(lie)
      paintRing(
        ctx,
        Math.min(a.x, b.x) - 8,
        Math.min(a.y, b.y) - 8,
        Math.abs(a.x - b.x) + 16,
        Math.abs(a.y - b.y) + 16,
        ink
      )
    }
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
  for (const note of design.notes) paintNote(ctx, scale, note, ink, note.id === design.pinnedId)
}

function paintRing(ctx: Ctx, x: number, y: number, width: number, height: number, ink: Ink): void {
  ctx.strokeStyle = ink.select
  ctx.lineWidth = 2.5
  ctx.setLineDash([])
  ctx.strokeRect(x, y, width, height)
}

/** A dot at the place, a short leader and the words. */
function paintNote(ctx: Ctx, scale: Scale, note: PinnedNote, ink: Ink, chosen: boolean): void {
  ctx.font = lettering(ink, 12)
  ctx.textAlign = 'left'
  ctx.textBaseline = 'middle'
  const roomPx = ctx.canvas.width / Math.max(1, ctx.getTransform().a)
  const { at, left, middle, width, height, pad } = noteLie(
    note,
    ctx.measureText(note.text).width,
    scale,
    ink.size,
    roomPx
  )
  ctx.strokeStyle = ink.text
  ctx.fillStyle = ink.text
  ctx.lineWidth = 0.9
  ctx.setLineDash([])
  ctx.beginPath()
  ctx.moveTo(at.x, at.y)
  ctx.lineTo(left > at.x ? left : left + width, middle)
  ctx.stroke()
  ctx.beginPath()
  ctx.arc(at.x, at.y, 2.5, 0, 2 * Math.PI)
  ctx.fill()
  ctx.fillStyle = ink.sill
  ctx.fillRect(left, middle - height / 2, width, height)
  ctx.strokeRect(left, middle - height / 2, width, height)
  ctx.fillStyle = ink.text
  ctx.fillText(note.text, left + pad, middle + 0.5)
  if (chosen) paintRing(ctx, left - 3, middle - height / 2 - 3, width + 6, height + 6, ink)
}
