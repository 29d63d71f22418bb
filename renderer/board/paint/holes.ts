import type { ChannelLayout } from '../../../shared-model/layout'
import type { Scale } from '../scale'
import type { ChannelPicture } from './channel-picture'
import { circles, type Round, roundPx, trace } from './circles'
import type { Ink } from './ink'
import { paintLock } from './lock'

type Ctx = CanvasRenderingContext2D
type Hole = ChannelLayout['holes'][number]

/** Rims, then holes, then their middles: each kind of line is drawn once for the whole channel. */
export function paintHoles(ctx: Ctx, scale: Scale, picture: ChannelPicture, ink: Ink): void {
  const { holes } = picture.layout
  const bores = holes.map((hole) => roundPx(scale, hole.xMm, hole.yMm, hole.diameterMm / 2))
  const rims = holes.map((hole) => roundPx(scale, hole.xMm, hole.yMm, (picture.rimsMm.get(hole.id) ?? 0) / 2))
  const of = (rounds: readonly Round[], kind: Hole['kind']) => rounds.filter((_, at) => holes[at]?.kind === kind)
  circles(
    ctx,
    rims.filter((rim, at) => rim.radius > (bores[at]?.radius ?? 0)),
    ink.channel,
    ink.rim,
    1
  )
  circles(ctx, of(bores, 'site'), ink.hole, ink.rim, 1)
  const openings = of(bores, 'opening')
  circles(ctx, openings, ink.hole, ink.rim, 1.5)
  ctx.beginPath()
  for (const { x, y, radius } of bores) {
    const cross = Math.max(3, Math.min(radius * 0.35, 9))
    ctx.moveTo(x - cross, y)
    ctx.lineTo(x + cross, y)
    ctx.moveTo(x, y - cross)
    ctx.lineTo(x, y + cross)
  }
  for (const { x, y, radius } of openings) ctx.rect(x - radius - 2, y - radius - 2, 2 * radius + 4, 2 * radius + 4)
  ctx.strokeStyle = ink.dimension
  ctx.lineWidth = 0.8
  ctx.stroke()
  const outer = holes.map((_, at) => Math.max(bores[at]?.radius ?? 0, rims[at]?.radius ?? 0))
  const locked = new Set(picture.channel.sites.filter((site) => site.locked).map((site) => site.id))
  const chosen: Round[] = []
  for (const [at, hole] of holes.entries()) {
    const { x, y } = bores[at] ?? { x: 0, y: 0 }
    const radius = outer[at] ?? 0
    if (locked.has(hole.id)) paintLock(ctx, x + radius * Math.SQRT1_2, y + radius * Math.SQRT1_2, ink)
    if (picture.chosenSites.includes(hole.id) || picture.openingId === hole.id)
      chosen.push({ x, y, radius: radius + 4 })
  }
  if (chosen.length === 0) return
  trace(ctx, chosen)
  ctx.strokeStyle = ink.select
  ctx.lineWidth = 2.5
  ctx.stroke()
}
