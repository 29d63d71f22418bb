import { type Scale, xPx, yPx } from '../scale'

type Ctx = CanvasRenderingContext2D

/** A circle in the picture. */
export interface Round {
  readonly x: number
  readonly y: number
  readonly radius: number
}

export const roundPx = (scale: Scale, xMm: number, yMm: number, radiusMm: number): Round => ({
  x: xPx(scale, xMm),
  y: yPx(scale, yMm),
  radius: radiusMm * scale.pxPerMm
})

/** The rounds as one path, to be filled or stroked. */
export function trace(ctx: Ctx, rounds: readonly Round[]): void {
  ctx.beginPath()
  for (const { x, y, radius } of rounds) {
    ctx.moveTo(x + radius, y)
    ctx.arc(x, y, radius, 0, 2 * Math.PI)
  }
}

/** Filled and edged alike, in one go: a board has thousands. */
export function circles(ctx: Ctx, rounds: readonly Round[], fill: string, edge: string, line: number): void {
  if (rounds.length === 0) return
  trace(
    ctx,
    rounds.map((each) => ({ ...each, radius: Math.max(0.5, each.radius) }))
  )
  ctx.fillStyle = fill
  ctx.fill()
  ctx.strokeStyle = edge
  ctx.lineWidth = line
  ctx.stroke()
}
