import type { Shows } from '../../../shared-model/design'
import { rulerMarks } from '../ruler-marks'
import { type Scale, type Size, toMm, xPx, yPx } from '../scale'
import { type Ink, lettering } from './ink'

/** How broad the rulers are at the usual text size. */
export const RULER_PX = 22

type Ctx = CanvasRenderingContext2D

/** Rulers along the top and the left, in the shop's units, with nought at the sill's left front corner. */
export function paintRulers(ctx: Ctx, scale: Scale, picture: Size, units: Shows['units'], ink: Ink): void {
  const broad = RULER_PX * ink.size
  ctx.fillStyle = ink.sill
  ctx.fillRect(0, 0, picture.width, broad)
  ctx.fillRect(0, 0, broad, picture.height)
  ctx.strokeStyle = ink.dimension
  ctx.lineWidth = 0.7
  ctx.setLineDash([])
  ctx.beginPath()
  ctx.moveTo(broad, broad + 0.5)
  ctx.lineTo(picture.width, broad + 0.5)
  ctx.moveTo(broad + 0.5, broad)
  ctx.lineTo(broad + 0.5, picture.height)
  ctx.fillStyle = ink.dimension
  ctx.font = lettering(ink, 11)
  const from = toMm(scale, { x: broad, y: picture.height })
  const to = toMm(scale, { x: picture.width, y: broad })
  ctx.textAlign = 'left'
  ctx.textBaseline = 'top'
  for (const mark of rulerMarks(from.x, to.x, scale.pxPerMm, units)) {
    const x = Math.round(xPx(scale, mark.atMm)) + 0.5
    ctx.moveTo(x, broad)
    ctx.lineTo(x, mark.label === null ? broad - 4 : 4)
    if (mark.label !== null) ctx.fillText(mark.label, x + 3, 3)
  }
  for (const mark of rulerMarks(from.y, to.y, scale.pxPerMm, units)) {
    const y = Math.round(yPx(scale, mark.atMm)) + 0.5
    ctx.moveTo(broad, y)
    ctx.lineTo(mark.label === null ? broad - 4 : 4, y)
    if (mark.label === null) continue
    ctx.save()
    ctx.translate(3, y - 3)
    ctx.rotate(-Math.PI / 2)
    ctx.fillText(mark.label, 0, 0)
    ctx.restore()
  }
  ctx.stroke()
  ctx.fillStyle = ink.sill
  ctx.fillRect(0, 0, broad, broad)
  ctx.fillStyle = ink.dimension
  ctx.textAlign = 'center'
  ctx.textBaseline = 'middle'
  ctx.fillText(units, broad / 2, broad / 2)
}
