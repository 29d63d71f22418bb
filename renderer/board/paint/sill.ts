import type { Obstacle } from '../../../shared-model/layout'
import { type Scale, xPx, yPx } from '../scale'
import { type Ink, lettering } from './ink'

export interface SillPicture {
  readonly lengthMm: number
  readonly depthMm: number
  readonly clearanceMm: number
  readonly obstacles: readonly Obstacle[]
}

type Ctx = CanvasRenderingContext2D

/** How deep the window stands behind the sill in the picture; a picture only, no measure of the design. */
const GLASS_MM = 26

/** The sill from above: the glass along the top, the room along the bottom, what stands on it already. */
export function paintSill(ctx: Ctx, scale: Scale, sill: SillPicture, ink: Ink): void {
  const left = xPx(scale, 0)
  const top = yPx(scale, sill.depthMm)
  const width = sill.lengthMm * scale.pxPerMm
  const height = sill.depthMm * scale.pxPerMm
  ctx.fillStyle = ink.sill
  ctx.fillRect(left, top, width, height)
  paintClearance(ctx, scale, sill, ink)
  ctx.strokeStyle = ink['sill-edge']
  ctx.lineWidth = 1.5
  ctx.setLineDash([])
  ctx.strokeRect(left, top, width, height)
  for (const obstacle of sill.obstacles) paintObstacle(ctx, scale, obstacle, ink)
}

/** The window behind the sill; drawn over the leaves, which stop at the glass. */
export function paintWindow(ctx: Ctx, scale: Scale, sill: SillPicture, ink: Ink): void {
  const left = xPx(scale, 0)
  const top = yPx(scale, sill.depthMm)
  const width = sill.lengthMm * scale.pxPerMm
  const deep = GLASS_MM * scale.pxPerMm
  const frame = Math.max(3, deep * 0.28)
  ctx.fillStyle = ink.room
  ctx.fillRect(left - frame, top - deep, width + 2 * frame, deep)
  ctx.fillStyle = ink['sill-edge']
  ctx.globalAlpha = 0.35
  ctx.fillRect(left - frame, top - deep, width + 2 * frame, deep)
  ctx.globalAlpha = 1
  const pane = Math.max(2, deep * 0.3)
  const paneTop = top - deep / 2 - pane / 2
  const posts = 2
  const gap = width / posts
  for (let post = 0; post < posts; post += 1) {
    ctx.fillStyle = ink.glass
    ctx.fillRect(left + post * gap + frame / 2, paneTop, gap - frame, pane)
    ctx.strokeStyle = ink['glass-edge']
    ctx.lineWidth = 1
    ctx.strokeRect(left + post * gap + frame / 2, paneTop, gap - frame, pane)
  }
}

function paintClearance(ctx: Ctx, scale: Scale, sill: SillPicture, ink: Ink): void {
  const kept = sill.clearanceMm * scale.pxPerMm
  if (kept < 2) return
  ctx.strokeStyle = ink['sill-edge']
  ctx.globalAlpha = 0.45
  ctx.lineWidth = 0.75
  ctx.setLineDash([4, 4])
  ctx.strokeRect(
    xPx(scale, 0) + kept,
    yPx(scale, sill.depthMm) + kept,
    sill.lengthMm * scale.pxPerMm - 2 * kept,
    sill.depthMm * scale.pxPerMm - 2 * kept
  )
  ctx.setLineDash([])
  ctx.globalAlpha = 1
}

function paintObstacle(ctx: Ctx, scale: Scale, obstacle: Obstacle, ink: Ink): void {
  const x = xPx(scale, obstacle.xMm)
  const y = yPx(scale, obstacle.yMm + obstacle.depthMm)
  const width = obstacle.lengthMm * scale.pxPerMm
  const height = obstacle.depthMm * scale.pxPerMm
  ctx.save()
  ctx.beginPath()
  ctx.rect(x, y, width, height)
  ctx.fillStyle = ink.obstacle
  ctx.fill()
  ctx.clip()
  ctx.strokeStyle = ink['sill-edge']
  ctx.lineWidth = 0.6
  ctx.beginPath()
  for (let line = -height; line < width; line += 9) {
    ctx.moveTo(x + line, y + height)
    ctx.lineTo(x + line + height, y)
  }
  ctx.stroke()
  ctx.restore()
  ctx.strokeStyle = ink['sill-edge']
  ctx.lineWidth = 1
  ctx.strokeRect(x, y, width, height)
  ctx.fillStyle = ink.text
  ctx.font = lettering(ink, 12)
  ctx.textAlign = 'center'
  ctx.textBaseline = 'middle'
  if (width > 40) ctx.fillText(obstacle.name, x + width / 2, y + height / 2, width - 6)
}
