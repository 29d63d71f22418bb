import type { Shows } from '../../../shared-model/design'
import { rulerMarks } from '../ruler-marks'
import { type Scale, type Size, toMm, xPx, yPx } from '../scale'
import type { Ink } from './ink'

/** How broad the rulers are. */
export const RULER_PX = 22

type Ctx = CanvasRenderingContext2D

/** Rulers along the top and the left, in the shop's units, with nought at the sill's left front corner. */
export function paintRulers(ctx: Ctx, scale: Scale, picture: Size, units: Shows['units'], ink: Ink): void {
  ctx.fillStyle = ink.sill
  ctx.fillRect(0, 0, picture.width, RULER_PX)
  ctx.fillRect(0, 0, RULER_PX, picture.height)
  ctx.strokeStyle = ink.dimension
  ctx.lineWidth = 0.7
  ctx.setLineDash([])
  ctx.beginPath()
  ctx.moveTo(RULER_PX, RULER_PX + 0.5)
  ctx.lineTo(picture.width, RULER_PX + 0.5)
  ctx.moveTo(RULER_PX + 0.5, RULER_PX)
  ctx.lineTo(RULER_PX + 0.5, picture.height)
  ctx.fillStyle = ink.dimension
  ctx.font = `11px ${ink.face}`
  const from = toMm(scale, { x: RULER_PX, y: picture.height })
  const to = toMm(scale, { x: picture.width, y: RULER_PX })
  ctx.textAlign = 'left'
  ctx.textBaseline = 'top'
  for (const mark of rulerMarks(from.x, to.x, scale.pxPerMm, units)) {
    const x = Math.round(xPx(scale, mark.atMm)) + 0.5
    ctx.moveTo(x, RULER_PX)
    ctx.lineTo(x, mark.label === null ? RULER_PX - 4 : 4)
    if (mark.label !== null) ctx.fillText(mark.label, x + 3, 3)
  }
  for (const mark of rulerMarks(from.y, to.y, scale.pxPerMm, units)) {
    const y = Math.round(yPx(scale, mark.atMm)) + 0.5
    ctx.moveTo(RULER_PX, y)
    ctx.lineTo(mark.label === null ? RULER_PX - 4 : 4, y)
    if (mark.label === null) continue
    ctx.save()
    ctx.translate(3, y - 3)
    ctx.rotate(-Math.PI / 2)
    ctx.fillText(mark.label, 0, 0)
    ctx.restore()
  }
  ctx.stroke()
  ctx.fillStyle = ink.sill
  ctx.fillRect(0, 0, RULER_PX, RULER_PX)
  ctx.fillStyle = ink.dimension
  ctx.textAlign = 'center'
  ctx.textBaseline = 'middle'
  ctx.fillText(units, RULER_PX / 2, RULER_PX / 2)
}
