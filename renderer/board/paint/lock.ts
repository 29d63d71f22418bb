import type { Ink } from './ink'

/** A small padlock: this site stays where it is when others are spread or matched. */
export function paintLock(ctx: CanvasRenderingContext2D, x: number, y: number, ink: Ink): void {
  const unit = ink.size
  ctx.setLineDash([])
  ctx.lineWidth = 1.5 * unit
  ctx.strokeStyle = ink.rim
  ctx.fillStyle = ink.sill
  ctx.beginPath()
  ctx.arc(x, y - 2 * unit, 3.2 * unit, Math.PI, 2 * Math.PI)
  ctx.lineTo(x + 3.2 * unit, y + unit)
  ctx.moveTo(x - 3.2 * unit, y - 2 * unit)
  ctx.lineTo(x - 3.2 * unit, y + unit)
  ctx.stroke()
  ctx.fillStyle = ink.rim
  ctx.fillRect(x - 5 * unit, y, 10 * unit, 7 * unit)
}
