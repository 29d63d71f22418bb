import { type ChannelTemplate, type Drawing, shifted, text } from '../sheet'
import { type LengthShows, mm, showLength } from '../units'
import { barsAlong, inchSquare, SIX_INCHES_MM } from './check-bars'
import { shortName } from './short-name'
import { stripShapes } from './strip'
import { svgPicture } from './svg'

const MARGIN_MM = 10
const FOOT_MM = 46

/**
 * A channel's template as one SVG in true millimetres, its whole length, for a cutter or plotter; check bars below.
 * The datum end is 10 mm from the left edge of the picture.
 */
export const svgTemplate = (template: ChannelTemplate, shows: LengthShows): string => {
  const reading = {
    length: (valueMm: number): string => showLength(mm(valueMm), shows),
    stepMm: shows.units === 'in' ? 50.8 : 50
  }
  const acrossMm = template.toYMm - template.fromYMm
  const widthMm = Math.max(template.lengthMm, SIX_INCHES_MM + 40) + 2 * MARGIN_MM
  const footY = MARGIN_MM + 6 + acrossMm
  const name = `Channel ${template.mark}, ${shortName(template.name)}, 1:1`
  const whole = {
    fromMm: -MARGIN_MM,
    toMm: template.lengthMm + MARGIN_MM,
    fromYMm: template.fromYMm,
    toYMm: template.toYMm
  }
  const drawing: Drawing = {
    widthMm,
    heightMm: footY + FOOT_MM,
    scale: '1:1',
    alt: name,
    shapes: [
      text(MARGIN_MM, MARGIN_MM, name, { sizePt: 9, bold: true }),
      ...stripShapes(template, whole, reading).map((shape) =>
        shifted(shape, MARGIN_MM, MARGIN_MM + 6 - template.fromYMm)
      ),
      ...barsAlong(MARGIN_MM, footY + 20),
      ...inchSquare(MARGIN_MM + SIX_INCHES_MM + 12, footY + 14)
    ]
  }
  return svgPicture(drawing)
}
