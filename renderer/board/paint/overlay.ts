import type { Shows } from '../../../shared-model/design'
import { pointOnSill } from '../../../shared-model/layout'
import type { MassCentre } from '../../../shared-model/structure'
import { mm, showLength } from '../../../shared-model/units'
import type { BoardState } from '../board-store'
import { endsOf } from '../pick'
import { type Point, type Scale, type Size, toPx, xPx, yPx } from '../scale'
import type { ChannelPicture } from './channel-picture'
import { paintDimension, paintRunning, plainLook, snapLook } from './dimension'
import { type Ink, lettering } from './ink'
import type { SillPicture } from './sill'

type Ctx = CanvasRenderingContext2D

/** Length and depth of the sill, outside it. */
export function paintSillDimensions(ctx: Ctx, scale: Scale, sill: SillPicture, shows: Shows, ink: Ink): void {
  const look = plainLook(ink)
  const text = (valueMm: number): string => showLength(mm(valueMm), shows)
  const front = toPx(scale, 0, 0)
  const right = toPx(scale, sill.lengthMm, 0)
  const back = toPx(scale, sill.lengthMm, sill.depthMm)
  paintDimension(ctx, front, right, 34 * ink.size, text(sill.lengthMm), look)
  paintDimension(ctx, back, right, 30 * ink.size, text(sill.depthMm), look)
}

/** Running dimensions of a chosen channel from its datum end, and its overall length where it differs. */
export function paintChannelDimensions(ctx: Ctx, scale: Scale, picture: ChannelPicture, shows: Shows, ink: Ink): void {
  const { channel, layout } = picture
  const text = (valueMm: number): string => showLength(mm(valueMm), shows, { mark: false })
  const at = (alongMm: number): Point => {
    const { xMm, yMm } = pointOnSill(channel, alongMm)
    return toPx(scale, xMm, yMm)
  }
  const upright = channel.heading === 90 || channel.heading === 270
  const half = ((upright ? layout.outline.lengthMm : layout.outline.depthMm) / 2) * scale.pxPerMm
  const marks = [
    ...[...channel.sites].sort((a, b) => a.atMm - b.atMm).map((site) => ({ at: at(site.atMm), text: text(site.atMm) })),
    { at: at(channel.lengthMm), text: text(channel.lengthMm) }
  ]
  paintRunning(ctx, at(0), marks, half + 12, plainLook(ink))
}

/** Round handles on both cut ends: pull one to change the length. */
export function paintHandles(ctx: Ctx, scale: Scale, picture: ChannelPicture, ink: Ink): void {
  const ends = endsOf(picture.layout, picture.channel.heading)
  for (const end of [ends.datum, ends.far]) {
    ctx.beginPath()
    ctx.arc(xPx(scale, end.x), yPx(scale, end.y), 6, 0, 2 * Math.PI)
    ctx.fillStyle = ink.sill
    ctx.fill()
    ctx.strokeStyle = ink.select
    ctx.lineWidth = 2.5
    ctx.stroke()
  }
}

/** A quartered disc where the mass of all stands, as drawings mark it. */
export function paintMassCentre(ctx: Ctx, scale: Scale, centre: MassCentre, ink: Ink): void {
  const { x, y } = toPx(scale, centre.xMm, centre.yMm)
  const radius = 7
  ctx.fillStyle = ink.sill
  ctx.strokeStyle = ink.mass
  ctx.lineWidth = 1.25
  ctx.beginPath()
  ctx.arc(x, y, radius, 0, 2 * Math.PI)
  ctx.fill()
  ctx.stroke()
  ctx.fillStyle = ink.mass
  for (const turn of [0, Math.PI]) {
    ctx.beginPath()
    ctx.moveTo(x, y)
    ctx.arc(x, y, radius, turn, turn + Math.PI / 2)
    ctx.closePath()
    ctx.fill()
  }
}

/** What a gesture shows: lines it was drawn to with their distance, the box, the channel being drawn. */
export function paintGesture(
  ctx: Ctx,
  scale: Scale,
  { gesture, live, size }: Pick<BoardState, 'gesture' | 'live' | 'size'>,
  shows: Shows,
  ink: Ink
): void {
  for (const line of live?.lines ?? []) paintSnapLine(ctx, scale, line, size, shows, ink)
  if (gesture?.kind !== 'box' && gesture?.kind !== 'draw') return
  const from = toPx(scale, gesture.from.x, gesture.from.y)
  const to = toPx(scale, gesture.to.x, gesture.to.y)
  ctx.strokeStyle = ink.select
  ctx.lineWidth = 1.25
  if (gesture.kind === 'box') {
    ctx.setLineDash([5, 3])
    ctx.strokeRect(from.x, from.y, to.x - from.x, to.y - from.y)
    ctx.setLineDash([])
    return
  }
  const upright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x)
  const end = upright ? { x: from.x, y: to.y } : { x: to.x, y: from.y }
  ctx.beginPath()
  ctx.moveTo(from.x, from.y)
  ctx.lineTo(end.x, end.y)
  ctx.lineWidth = 3
  ctx.stroke()
  const lengthMm = Math.abs(upright ? gesture.to.y - gesture.from.y : gesture.to.x - gesture.from.x)
  paintDimension(ctx, from, end, 26, showLength(mm(lengthMm), shows), snapLook(ink))
}

function paintSnapLine(
  ctx: Ctx,
  scale: Scale,
  line: { readonly axis: 'x' | 'y'; readonly atMm: number },
  size: Size,
  shows: Shows,
  ink: Ink
): void {
  ctx.strokeStyle = ink.snap
  ctx.fillStyle = ink.snap
  ctx.lineWidth = 1
  ctx.setLineDash([8, 3, 2, 3])
  ctx.beginPath()
  const x = xPx(scale, line.atMm)
  const y = yPx(scale, line.atMm)
  ctx.moveTo(line.axis === 'x' ? x : 0, line.axis === 'x' ? 0 : y)
  ctx.lineTo(line.axis === 'x' ? x : size.width, line.axis === 'x' ? size.height : y)
  ctx.stroke()
  ctx.setLineDash([])
  ctx.font = lettering(ink, 12)
  ctx.textAlign = 'left'
  ctx.textBaseline = 'top'
  const text = showLength(mm(line.atMm), shows)
  if (line.axis === 'x') ctx.fillText(text, x + 5, 28)
  else ctx.fillText(text, 28, y + 4)
}
