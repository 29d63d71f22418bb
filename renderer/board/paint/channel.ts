import { type ChannelLayout, direction, type Outline, pointOnSill } from '../../../shared-model/layout'
import { type Scale, xPx, yPx } from '../scale'
import type { ChannelPicture } from './channel-picture'
import { circles, roundPx, trace } from './circles'
import { paintHoles } from './holes'
import { type Ink, lettering } from './ink'

type Ctx = CanvasRenderingContext2D

/** Supports and canopies lie under the channel, holes and rims on it. */
export function paintChannel(ctx: Ctx, scale: Scale, picture: ChannelPicture, ink: Ink): void {
  const { layout, chosen } = picture
  paintSupports(ctx, scale, picture, ink)
  paintBox(ctx, scale, layout.outline, ink.closure, ink['channel-edge'], 1)
  paintBox(ctx, scale, layout.body, ink.channel, ink['channel-edge'], 1.25)
  if (picture.canopies) paintCanopies(ctx, scale, layout, ink)
  paintHoles(ctx, scale, picture, ink)
  if (layout.section.shape === 'round') paintCentreLine(ctx, scale, layout.body, picture.channel.heading, ink)
  paintDatum(ctx, scale, picture, ink)
  if (chosen) {
    const { x, y, width, height } = boxPx(scale, layout.outline)
    ctx.strokeStyle = ink.select
    ctx.lineWidth = 2.5
    ctx.strokeRect(x - 3, y - 3, width + 6, height + 6)
  }
}

const boxPx = (scale: Scale, box: Outline) => ({
  x: xPx(scale, box.xMm),
  y: yPx(scale, box.yMm + box.depthMm),
  width: box.lengthMm * scale.pxPerMm,
  height: box.depthMm * scale.pxPerMm
})

function paintBox(ctx: Ctx, scale: Scale, box: Outline, fill: string, edge: string, line: number): void {
  const { x, y, width, height } = boxPx(scale, box)
  ctx.fillStyle = fill
  ctx.fillRect(x, y, width, height)
  ctx.strokeStyle = edge
  ctx.lineWidth = line
  ctx.strokeRect(x, y, width, height)
}

/** Every other canopy is filled in one go, so that neighbours' fills still lie over each other where leaves do. */
function paintCanopies(ctx: Ctx, scale: Scale, layout: ChannelLayout, ink: Ink): void {
  const rounds = layout.canopies.map(({ xMm, yMm, radiusMm }) => roundPx(scale, xMm, yMm, radiusMm))
  ctx.fillStyle = ink.canopy
  ctx.globalAlpha = 0.09
  for (const odd of [0, 1]) {
    trace(
      ctx,
      rounds.filter((_, at) => at % 2 === odd)
    )
    ctx.fill()
  }
  ctx.globalAlpha = 1
  ctx.strokeStyle = ink.canopy
  ctx.lineWidth = 1
  ctx.setLineDash([5, 3])
  trace(ctx, rounds)
  ctx.stroke()
  ctx.setLineDash([])
}

/** Long and short dashes along a tube's axis, as drawings mark it. */
function paintCentreLine(ctx: Ctx, scale: Scale, body: Outline, heading: number, ink: Ink): void {
  const { x, y, width, height } = boxPx(scale, body)
  const along = heading === 0 || heading === 180
  ctx.beginPath()
  ctx.moveTo(along ? x - 6 : x + width / 2, along ? y + height / 2 : y - 6)
  ctx.lineTo(along ? x + width + 6 : x + width / 2, along ? y + height / 2 : y + height + 6)
  ctx.strokeStyle = ink.dimension
  ctx.lineWidth = 0.7
  ctx.setLineDash([12, 3, 2, 3])
  ctx.stroke()
  ctx.setLineDash([])
}

function paintSupports(ctx: Ctx, scale: Scale, { channel }: ChannelPicture, ink: Ink): void {
  const run = direction(channel.heading)
  for (const support of channel.supports) {
    const at = pointOnSill(channel, support.atMm)
    const x = xPx(scale, at.xMm)
    const y = yPx(scale, at.yMm)
    const along = support.alongMm * scale.pxPerMm
    const across = support.acrossMm * scale.pxPerMm
    const [width, height] = run.dx === 0 ? [across, along] : [along, across]
    ctx.fillStyle = ink.support
    ctx.globalAlpha = 0.55
    ctx.fillRect(x - width / 2, y - height / 2, width, height)
    ctx.globalAlpha = 1
    ctx.strokeStyle = ink.support
    ctx.lineWidth = 1
    ctx.strokeRect(x - width / 2, y - height / 2, width, height)
  }
}

/** A filled triangle at the cut end that all positions are measured from, and the channel's number. */
function paintDatum(ctx: Ctx, scale: Scale, { channel, mark }: ChannelPicture, ink: Ink): void {
  const { dx, dy } = direction(channel.heading)
  const x = xPx(scale, channel.xMm)
  const y = yPx(scale, channel.yMm)
  ctx.beginPath()
  ctx.moveTo(x, y)
  ctx.lineTo(x + 8 * dx + 5 * dy, y - 8 * dy + 5 * dx)
  ctx.lineTo(x + 8 * dx - 5 * dy, y - 8 * dy - 5 * dx)
  ctx.closePath()
  ctx.fillStyle = ink['channel-edge']
  ctx.fill()
  const at = { x: x + dx * 20 * ink.size, y: y - dy * 20 * ink.size }
  circles(ctx, [{ ...at, radius: 9.5 * ink.size }], ink.channel, ink['channel-edge'], 1)
  ctx.fillStyle = ink.text
  ctx.font = lettering(ink, 12, 600)
  ctx.textAlign = 'center'
  ctx.textBaseline = 'middle'
  ctx.fillText(mark, at.x, at.y + 0.5)
}
