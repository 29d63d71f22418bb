import type { RingPlan, SheetCut } from '../rings'
import { levelDimension, uprightDimension } from './dimension-lines'
import { circle, type Drawing, point, polygon, rect, type Shape, text } from './drawing'
import type { Printed } from './printed'
import { scaleThatFits } from './scale'
import { cross } from './sill-picture'

const WIDTH_MM = 182
const LEFT_MM = 8
const RIGHT_MM = 28
const TOP_MM = 3
const BOTTOM_MM = 13
/** The centres stand below the sheet on the same page where they can. */
const TALLEST_MM = 84

/** A sheet to scale with the circles and plates to cut from it; the datum corner is the lower left. */
export const sheetLayout = (sheet: SheetCut, rings: RingPlan, show: Printed): Drawing => {
  const scale = scaleThatFits(sheet.widthMm, sheet.heightMm, WIDTH_MM - LEFT_MM - RIGHT_MM, TALLEST_MM)
  const k = scale.factor
  const base = TOP_MM + sheet.heightMm * k
  const x = (realMm: number): number => LEFT_MM + realMm * k
  const y = (realMm: number): number => base - realMm * k
  const numbers = new Map(rings.needs.map((need, index) => [need.id, String.fromCharCode(97 + (index % 26))]))
  return {
    widthMm: WIDTH_MM,
    heightMm: base + BOTTOM_MM,
    scale: scale.name,
    alt: `Sheet ${sheet.mark} with ${sheet.circles.length} circles`,
    shapes: [
      rect(x(0), y(sheet.heightMm), sheet.widthMm * k, sheet.heightMm * k, 'outline', 'pale'),
      ...sheet.offcuts.map((area) =>
        rect(x(area.xMm), y(area.yMm + area.heightMm), area.widthMm * k, area.heightMm * k, 'hidden', 'paper')
      ),
      ...sheet.plates.map((area) =>
        rect(x(area.xMm), y(area.yMm + area.heightMm), area.widthMm * k, area.heightMm * k, 'outline', 'tint')
      ),
      ...sheet.circles.flatMap((ring, index): Shape[] => {
        const need = rings.needs.find(({ id }) => id === ring.needId)
        const label = `${numbers.get(ring.needId) ?? ''}${index + 1}`
        const outer = (ring.diameterMm / 2) * k
        const inner = need?.holeMm ?? null
        return [
          circle(x(ring.xMm), y(ring.yMm), outer, 'thin', 'paper'),
          ...(inner === null ? [] : [circle(x(ring.xMm), y(ring.yMm), (inner / 2) * k, 'thin')]),
          ...cross(x(ring.xMm), y(ring.yMm), Math.min(1.2, outer * 0.3)),
          ...(outer > 4.5 ? [text(x(ring.xMm), y(ring.yMm) + 3.6, label, { sizePt: 8, anchor: 'middle' })] : [])
        ]
      }),
      polygon([point(x(0), y(0)), point(x(0) - 2.6, y(0) + 0.4), point(x(0) - 0.4, y(0) + 2.6)], 'none', 'ink'),
      ...levelDimension(x(0), x(sheet.widthMm), base + 8, base, show.length(sheet.widthMm)),
      ...uprightDimension(y(sheet.heightMm), base, x(sheet.widthMm) + 6, x(sheet.widthMm), show.length(sheet.heightMm))
    ]
  }
}
