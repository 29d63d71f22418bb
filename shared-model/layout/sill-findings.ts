import type { SillSize } from './channel-layout'
import type { LayoutFinding } from './codes'
import type { LaidOut } from './laid-out'
import type { Sill } from './layout'

/** Readings closer than this count as touching, mm. */
const TOUCH_MM = 0.01

/** Too long for the sill, past its edges, or nearer to them than the fit clearance. */
export function sillFindings({ channel, layout }: LaidOut, sill: Sill, size: SillSize): readonly LayoutFinding[] {
  const alongSill = channel.heading === 0 || channel.heading === 180
  const sideMm = alongSill ? size.lengthMm : size.depthMm
  const roomMm = sideMm - 2 * sill.clearanceMm
  const lengthField = `channels.${channel.id}.lengthMm`
  if (layout.overallLengthMm > roomMm + TOUCH_MM) {
    const cutMm = roomMm - (layout.overallLengthMm - layout.cutLengthMm)
    return [
      {
        code: 'too-long-for-sill',
        severity: 'stop',
        figures: { overallMm: layout.overallLengthMm, roomMm, cutMm: Math.max(0, cutMm) },
        where: { channelId: channel.id, field: lengthField },
        ...(cutMm >= 1 ? { fix: { field: lengthField, value: Math.floor(cutMm) } } : {})
      },
      ...pastEdges(channel, layout.outline, sill, size).filter((f) => f.code === 'over-front-edge')
    ]
  }
  return pastEdges(channel, layout.outline, sill, size)
}

function pastEdges(
  channel: LaidOut['channel'],
  outline: LaidOut['layout']['outline'],
  sill: Sill,
  size: SillSize
): readonly LayoutFinding[] {
  const found: LayoutFinding[] = []
  const leftMm = outline.xMm
  const rightMm = size.lengthMm - (outline.xMm + outline.lengthMm)
  const frontMm = outline.yMm
  const backMm = size.depthMm - (outline.yMm + outline.depthMm)
  const edges = [
    { edge: 'left', clearMm: leftMm, field: 'xMm', moveMm: sill.clearanceMm - leftMm, across: rightMm },
    { edge: 'right', clearMm: rightMm, field: 'xMm', moveMm: rightMm - sill.clearanceMm, across: leftMm },
    { edge: 'back', clearMm: backMm, field: 'yMm', moveMm: backMm - sill.clearanceMm, across: frontMm }
  ] as const
  for (const { edge, clearMm, field, moveMm, across } of edges) {
    const path = `channels.${channel.id}.${field}`
    const where = { channelId: channel.id, field: path }
    // Moving clears it only where the other side has the room to give.
    const room = across - Math.abs(moveMm) >= sill.clearanceMm - TOUCH_MM
    const fix = room ? { fix: { field: path, value: (field === 'xMm' ? channel.xMm : channel.yMm) + moveMm } } : {}
    if (clearMm < -TOUCH_MM) {
      found.push({ code: 'past-sill', severity: 'stop', figures: { edge, overMm: -clearMm }, where, ...fix })
    } else if (clearMm < sill.clearanceMm - TOUCH_MM) {
      found.push({
        code: 'clearance-short',
        severity: 'note',
        figures: { edge, clearMm: Math.max(0, clearMm), wantedMm: sill.clearanceMm },
        where,
        source: 'sill-clearance',
        ...fix
      })
    }
  }
  if (frontMm < -TOUCH_MM) {
    const field = `channels.${channel.id}.yMm`
    const room = backMm + frontMm >= sill.clearanceMm - TOUCH_MM
    found.push({
      code: 'over-front-edge',
      severity: 'warn',
      figures: { overMm: -frontMm, share: Math.min(1, -frontMm / Math.max(outline.depthMm, TOUCH_MM)) },
      where: { channelId: channel.id, field },
      ...(room ? { fix: { field, value: channel.yMm - frontMm } } : {})
    })
  }
  return found
}
