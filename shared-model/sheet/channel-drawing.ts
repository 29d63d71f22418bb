import type { DrillRow } from '../bench'
import { runningDimensions, runningRoomMm, uprightDimension } from './dimension-lines'
import { circle, type Drawing, line, point, polygon, rect, type Shape, text } from './drawing'
import type { Built } from './named'
import type { Printed } from './printed'
import { scaleThatFits } from './scale'
import { cross } from './sill-picture'

const WIDTH_MM = 182
const LEFT_MM = 9
const RIGHT_MM = 25
const TOP_MM = 9
/** The drawing with its heading stays on one page. */
const HIGHEST_MM = 190
/** Words above a face and running dimensions below it. */
const AROUND_FACE_MM = 38

const FACES = ['top', 'front', 'back', 'bottom'] as const
const FACE_WORDS = { top: 'upper face', front: 'front face', back: 'back face', bottom: 'underside' }

/** A channel to scale, face by face where holes are: datum end at the left, running dimensions from it. */
export const channelDrawing = (one: Built, holes: readonly DrillRow[], show: Printed): Drawing => {
  const { section } = one.plan.layout
  const { cutLengthMm } = one
  const faces = FACES.filter((face) => face === 'top' || holes.some((hole) => hole.face === face))
  const acrossMm = faces.reduce((sum, face) => sum + (isFlat(face) ? section.widthMm : section.heightMm), 0)
  const scale = scaleThatFits(
    cutLengthMm,
    acrossMm,
    WIDTH_MM - LEFT_MM - RIGHT_MM,
    HIGHEST_MM - faces.length * AROUND_FACE_MM
  )
  let yMm = 0
  const shapes: Shape[] = []
  for (const face of faces) {
    const strip = faceStrip(
      one,
      face,
      holes.filter((hole) => hole.face === face),
      yMm,
      scale.factor,
      show
    )
    shapes.push(...strip.shapes)
    yMm += strip.heightMm
  }
  return {
    widthMm: WIDTH_MM,
    heightMm: yMm,
    scale: scale.name,
    alt: `Channel ${one.plan.mark} with ${holes.length} holes`,
    shapes
  }
}

const isFlat = (face: (typeof FACES)[number]): boolean => face === 'top' || face === 'bottom'

const faceStrip = (
  one: Built,
  face: (typeof FACES)[number],
  holes: readonly DrillRow[],
  topMm: number,
  factor: number,
  show: Printed
): { readonly shapes: Shape[]; readonly heightMm: number } => {
  const { section } = one.plan.layout
  const { cutLengthMm } = one
  const flat = isFlat(face)
  const acrossMm = flat ? section.widthMm : section.heightMm
  const upper = topMm + TOP_MM
  const lower = upper + acrossMm * factor
  const left = LEFT_MM
  const right = left + cutLengthMm * factor
  const x = (atMm: number): number => left + atMm * factor
  const y = (hole: DrillRow): number =>
    flat || hole.heightMm === null ? (upper + lower) / 2 : lower - (hole.heightMm + section.averageWallMm) * factor
  const inOrder = [...holes].sort((a, b) => a.atMm - b.atMm)
  const marks = [
    ...inOrder.map((hole) => ({ xMm: x(hole.atMm), figure: show.bare(hole.atMm) })),
    { xMm: right, figure: show.bare(cutLengthMm) }
  ]
  const axis = flat ? [line(left - 3, (upper + lower) / 2, right + 3, (upper + lower) / 2, 'centre')] : []
  return {
    heightMm: TOP_MM + acrossMm * factor + 6 + runningRoomMm(marks.map(({ figure }) => figure)),
    shapes: [
      text(left, topMm + 3.4, `Channel ${one.plan.mark}, ${FACE_WORDS[face]}`, { sizePt: 8.5, bold: true }),
      rect(left, upper, right - left, lower - upper, 'outline', 'pale'),
      ...axis,
      polygon(
        [
          point(left, (upper + lower) / 2),
          point(left - 3, (upper + lower) / 2 + 1.7),
          point(left - 3, (upper + lower) / 2 - 1.7)
        ],
        'none',
        'ink'
      ),
      text(2.2, (upper + lower) / 2, 'datum', { sizePt: 8, turned: true, anchor: 'middle' }),
      ...inOrder.flatMap((hole): Shape[] => {
        const centre = y(hole)
        const radius = (hole.diameterMm / 2) * factor
        return [
          circle(x(hole.atMm), centre, radius, 'outline', 'paper'),
          ...cross(x(hole.atMm), centre, radius + 1.2),
          text(x(hole.atMm), upper - 1.4, hole.mark, { sizePt: 8, anchor: 'middle' })
        ]
      }),
      ...uprightDimension(upper, lower, right + 6, right, show.length(acrossMm)),
      ...runningDimensions(left, lower + 5, lower, marks)
    ]
  }
}
