import type { Riser } from '../parts'
import { uprightDimension } from './dimension-lines'
import { type Drawing, line, point, polygon, rect, text } from './drawing'
import { fittedText } from './lettering'
import type { Printed } from './printed'

const WIDTH_MM = 60
const MIDDLE_MM = 25
const TOP_MM = 4

/** A cup from the side with the line it is cut at, measured down from the rim's top; the rim end is kept. */
export const riserDrawing = (riser: Riser, show: Printed): Drawing => {
  const { cup, opened } = riser
  const k = [1, 0.5, 0.2, 0.1].find((factor) => cup.heightMm * factor <= 58 && cup.rimOutsideMm * factor <= 44) ?? 0.05
  const scale = `1:${Math.round(1 / k)}`
  const low = TOP_MM + cup.heightMm * k
  const shoulder = TOP_MM + cup.rimThicknessMm * k
  const half = (valueMm: number): number => (valueMm / 2) * k
  const cutY = opened.by === 'cut' ? TOP_MM + opened.belowRimMm * k : low
  return {
    widthMm: WIDTH_MM,
    heightMm: low + 12,
    scale,
    alt: `${riser.name}: where to cut`,
    shapes: [
      polygon(
        [
          point(MIDDLE_MM - half(cup.bodyUnderRimMm), shoulder),
          point(MIDDLE_MM - half(cup.bottomMm), low),
          point(MIDDLE_MM + half(cup.bottomMm), low),
          point(MIDDLE_MM + half(cup.bodyUnderRimMm), shoulder)
        ],
        'thin'
      ),
      rect(MIDDLE_MM - half(cup.rimOutsideMm), TOP_MM, cup.rimOutsideMm * k, cup.rimThicknessMm * k, 'outline', 'tint'),
      ...(opened.by === 'cut'
        ? [
            line(MIDDLE_MM - half(cup.rimOutsideMm) - 2, cutY, MIDDLE_MM + half(cup.rimOutsideMm) + 2, cutY, 'cut'),
            ...uprightDimension(
              TOP_MM,
              cutY,
              MIDDLE_MM + half(cup.rimOutsideMm) + 6,
              MIDDLE_MM + half(cup.rimOutsideMm) + 1,
              show.length(opened.belowRimMm)
            )
          ]
        : [
            line(MIDDLE_MM - half(opened.sawDiameterMm), low, MIDDLE_MM + half(opened.sawDiameterMm), low, 'cut'),
            text(MIDDLE_MM, low + 4.5, `bore ${show.diameter(opened.sawDiameterMm)}`, { sizePt: 8.5, anchor: 'middle' })
          ]),
      text(0, low + 9.5, fittedText(`${riser.name}, ${scale}`, WIDTH_MM - 2, 8), { sizePt: 8 })
    ]
  }
}
