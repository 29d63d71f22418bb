import type { DrillRow } from '../bench'
import type { Design } from '../design'
import { circle, line, rect, type Shape } from './drawing'
import { type Built, closureName } from './named'
import type { Printed } from './printed'
import type { ChannelTemplate } from './sheet-data'

/**
 * An end that is bored, at 1:1: the channel's outside as it meets the closure, upright lying on its side, so that x runs
 * up from the underside. The dashed line round it is the closure's own outside, where it stands proud.
 */
export const endTemplate = (
  { channel, plan }: Built,
  face: 'datum-end' | 'far-end',
  rows: readonly DrillRow[],
  design: Design,
  show: Printed
): ChannelTemplate => {
  const { section } = plan.layout
  const id = face === 'datum-end' ? channel.datumClosureId : channel.farClosureId
  const proudMm = design.parts.closures.find((closure) => closure.id === id)?.proudMm ?? 0
  const halfMm = section.widthMm / 2 + proudMm
  return {
    channelId: channel.id,
    mark: plan.mark,
    name: `${face === 'datum-end' ? 'datum end' : 'far end'}, ${closureName(design, id)}`,
    face,
    wraps: false,
    zero: { label: 'UNDERSIDE', from: 'the underside' },
    lengthMm: section.heightMm,
    fromYMm: -halfMm,
    toYMm: halfMm,
    holes: rows.map((row) => {
      const upMm = row.heightMm === null ? section.heightMm / 2 : row.heightMm + section.averageWallMm
      return {
        mark: row.mark,
        atMm: upMm,
        acrossMm: 0,
        diameterMm: row.diameterMm,
        label: `${row.mark} · ${show.length(upMm)} up · ${show.diameter(row.diameterMm)}`,
        outlineMm: []
      }
    }),
    shapes: [
      ...outline(section.shape === 'round', section.heightMm, section.widthMm, 0, 'outline'),
      ...(proudMm > 0 ? outline(section.shape === 'round', section.heightMm, section.widthMm, proudMm, 'hidden') : []),
      line(0, 0, section.heightMm, 0, 'centre')
    ]
  }
}

const outline = (
  round: boolean,
  heightMm: number,
  widthMm: number,
  outMm: number,
  pen: 'outline' | 'hidden'
): Shape[] =>
  round
    ? [circle(heightMm / 2, 0, heightMm / 2 + outMm, pen)]
    : [rect(-outMm, -widthMm / 2 - outMm, heightMm + 2 * outMm, widthMm + 2 * outMm, pen)]
