import { line, type Shape, text } from './drawing'
import type { Built } from './named'
import type { ChannelTemplate } from './sheet-data'

const BAND_MM = 24
/** Paper past the whole turn, to lie under the beginning. */
const FLAP_MM = 10
const QUARTERS = ['', 'BACK', 'UNDERSIDE', 'FRONT', 'CROWN AGAIN']

/**
 * What a round pipe has no edge to measure from: a band as long as the pipe is round (π × outside diameter), with its
 * quarter turns marked. Wrapped square about the pipe it gives the crown, both sides and the underside.
 */
export const pipeBand = ({ channel, plan }: Built): ChannelTemplate => {
  const roundMm = Math.PI * plan.layout.section.widthMm
  const half = BAND_MM / 2
  const lengthMm = roundMm + FLAP_MM
  return {
    channelId: channel.id,
    mark: plan.mark,
    name: 'band round the pipe',
    face: 'around',
    wraps: true,
    zero: { label: 'CROWN', from: 'the crown' },
    lengthMm,
    fromYMm: -half,
    toYMm: half,
    holes: [],
    shapes: [
      line(0, -half, lengthMm, -half, 'outline'),
      line(0, half, lengthMm, half, 'outline'),
      line(lengthMm, -half, lengthMm, half, 'thin'),
      ...QUARTERS.flatMap((words, quarter): Shape[] => {
        const atMm = (quarter * roundMm) / 4
        return quarter === 0
          ? []
          : [
              line(atMm, -half, atMm, half, quarter === 4 ? 'cut' : 'centre'),
              text(atMm - 1.6, half - 2.4, words, { sizePt: 8, bold: true, anchor: 'end' })
            ]
      })
    ]
  }
}
