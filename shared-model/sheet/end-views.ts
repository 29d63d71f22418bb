import type { DrillRow } from '../bench'
import { uprightDimension } from './dimension-lines'
import { circle, line, rect, type Shape, text } from './drawing'
import type { Built } from './named'
import type { Printed } from './printed'
import { cross } from './sill-picture'

/** Words above an end and paper below it. */
const END_ROOM_MM = 16
const TOP_MM = 9
/** From one end to the next: room for two heights. */
const APART_MM = 62
const ENDS = ['datum-end', 'far-end'] as const
const END_WORDS = { 'datum-end': 'datum end', 'far-end': 'far end' }

/** Ends that are bored, seen from outside, to the scale of the faces above: each centre's height up from the underside. */
export const endViews = (
  { plan }: Built,
  holes: readonly DrillRow[],
  leftMm: number,
  factor: number,
  show: Printed
): { readonly shapes: readonly Shape[]; readonly heightMm: number } => {
  const bored = ENDS.filter((end) => holes.some(({ face }) => face === end))
  if (bored.length === 0) return { shapes: [], heightMm: 0 }
  const { section } = plan.layout
  const width = section.widthMm * factor
  const height = section.heightMm * factor
  const upper = TOP_MM
  const lower = upper + height
  const shapes = bored.flatMap((end, index): Shape[] => {
    const left = leftMm + index * (width + APART_MM)
    const middle = left + width / 2
    return [
      text(left, 3.4, `Channel ${plan.mark}, ${END_WORDS[end]} from outside`, { sizePt: 8.5, bold: true }),
      section.shape === 'round'
        ? circle(middle, (upper + lower) / 2, width / 2, 'outline', 'pale')
        : rect(left, upper, width, height, 'outline', 'pale'),
      line(middle, upper - 2, middle, lower + 2, 'centre'),
      ...holes
        .filter(({ face }) => face === end)
        .flatMap((hole, place): Shape[] => {
          const upMm = hole.heightMm === null ? section.heightMm / 2 : hole.heightMm + section.averageWallMm
          const centre = lower - upMm * factor
          const radius = (hole.diameterMm / 2) * factor
          return [
            circle(middle, centre, radius, 'outline', 'paper'),
            ...cross(middle, centre, radius + 1.2),
            ...uprightDimension(
              centre,
              lower,
              left + width + 6 + 24 * place,
              left + width,
              show.length(upMm),
              hole.mark
            )
          ]
        })
    ]
  })
  return { shapes, heightMm: END_ROOM_MM + height }
}
