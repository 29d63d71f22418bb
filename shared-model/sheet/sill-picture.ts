import type { Design } from '../design'
import type { Plan } from '../plan'
import { levelDimension, uprightDimension } from './dimension-lines'
import { circle, type Drawing, line, point, polygon, rect, type Shape, text } from './drawing'
import { textWidthMm } from './lettering'
import type { Built } from './named'
import { pinnedShapes } from './pinned-shapes'
import type { Printed } from './printed'
import { scaleThatFits } from './scale'

const ROOM_WIDTH_MM = 182
const LEFT_MM = 4
const RIGHT_MM = 34
const TOP_MM = 4
const BOTTOM_MM = 16
/** Leaves that hang over the sill are drawn this far and no farther. */
const MOST_LEAF_MM = 24
const TALLEST_MM = 78

/** The sill from above, room side below and glass above, its channels numbered and their datum ends marked. */
export const sillPicture = (plan: Plan, design: Design, built: readonly Built[], show: Printed): Drawing => {
  const { lengthMm, depthMm } = plan.sill
  const past = channelsPast(built, lengthMm, depthMm)
  const scale = scaleThatFits(
    past.leftMm + lengthMm + past.rightMm,
    past.backMm + depthMm + past.frontMm,
    ROOM_WIDTH_MM - LEFT_MM - RIGHT_MM,
    TALLEST_MM
  )
  const paperLength = lengthMm * scale.factor
  const paperDepth = depthMm * scale.factor
  const x = (realMm: number): number => LEFT_MM + (past.leftMm + realMm) * scale.factor
  const over = leavesOver(built, depthMm)
  const topMm = TOP_MM + Math.max(past.backMm * scale.factor, Math.min(MOST_LEAF_MM, over.backMm * scale.factor))
  const frontMm = Math.max(past.frontMm * scale.factor, Math.min(MOST_LEAF_MM, over.frontMm * scale.factor))
  const y = (realMm: number): number => topMm + (depthMm - realMm) * scale.factor
  const left = x(0)
  const right = x(lengthMm)
  const rightmost = x(lengthMm + past.rightMm)
  const front = y(0)
  const heightMm = topMm + paperDepth + frontMm + BOTTOM_MM
  const shapes: Shape[] = [
    rect(left, topMm - 2.4, paperLength, 2.4, 'thin', 'tint'),
    text(rightmost + 2, topMm + 1, 'glass', { sizePt: 8.5 }),
    rect(left, topMm, paperLength, paperDepth, 'outline', 'pale'),
    text(rightmost + 2, front, 'room', { sizePt: 8.5 }),
    ...built.flatMap(({ plan: channel }) => canopies(channel.layout.canopies, x, y, scale.factor)),
    ...built.flatMap((one) => channelFromAbove(one, x, y, scale.factor)),
    ...design.sill.obstacles.flatMap((obstacle): Shape[] => [
      rect(
        x(obstacle.xMm),
        y(obstacle.yMm + obstacle.depthMm),
        obstacle.lengthMm * scale.factor,
        obstacle.depthMm * scale.factor,
        'hidden',
        'tint'
      ),
      text(x(obstacle.xMm) + 1, y(obstacle.yMm + obstacle.depthMm) + 3.6, obstacle.name, { sizePt: 8 })
    ]),
    ...pinnedShapes(plan, design, x, y, { widthMm: ROOM_WIDTH_MM, heightMm, sillRightMm: right }, show),
    ...levelDimension(left, right, front + frontMm + 9, front, show.length(lengthMm)),
    ...uprightDimension(topMm, front, rightmost + 16, rightmost + 11.5, show.length(depthMm))
  ]
  return {
    widthMm: ROOM_WIDTH_MM,
    heightMm,
    scale: scale.name,
    alt: `The sill from above with ${built.length === 1 ? 'one channel' : `${built.length} channels`}`,
    shapes
  }
}

/** How far channels stand out over each edge of the sill: a build that does not fit is drawn whole all the same. */
const channelsPast = (
  built: readonly Built[],
  lengthMm: number,
  depthMm: number
): Readonly<Record<'leftMm' | 'rightMm' | 'frontMm' | 'backMm', number>> => {
  const outlines = built.map(({ plan }) => plan.layout.outline)
  return {
    leftMm: Math.max(0, ...outlines.map(({ xMm }) => -xMm)),
    rightMm: Math.max(0, ...outlines.map((area) => area.xMm + area.lengthMm - lengthMm)),
    frontMm: Math.max(0, ...outlines.map(({ yMm }) => -yMm)),
    backMm: Math.max(0, ...outlines.map((area) => area.yMm + area.depthMm - depthMm))
  }
}

/** How far the widest leaves reach past the back and the front of the sill. */
const leavesOver = (
  built: readonly Built[],
  depthMm: number
): { readonly backMm: number; readonly frontMm: number } => {
  const leaves = built.flatMap(({ plan }) => plan.layout.canopies)
  return {
    backMm: Math.max(0, ...leaves.map((leaf) => leaf.yMm + leaf.radiusMm - depthMm)),
    frontMm: Math.max(0, ...leaves.map((leaf) => leaf.radiusMm - leaf.yMm))
  }
}

type Axis = (realMm: number) => number

const canopies = (rounds: Built['plan']['layout']['canopies'], x: Axis, y: Axis, factor: number): Shape[] =>
  rounds.map((round) => circle(x(round.xMm), y(round.yMm), round.radiusMm * factor, 'hidden'))

const channelFromAbove = ({ channel, plan }: Built, x: Axis, y: Axis, factor: number): Shape[] => {
  const { outline, body } = plan.layout
  const box = (area: typeof body, pen: 'outline' | 'thin', fill: 'paper' | 'none'): Shape =>
    rect(x(area.xMm), y(area.yMm + area.depthMm), area.lengthMm * factor, area.depthMm * factor, pen, fill)
  const datumX = x(channel.xMm)
  const datumY = y(channel.yMm)
  return [
    box(outline, 'outline', 'paper'),
    box(body, 'thin', 'none'),
    ...plan.layout.holes.flatMap((hole): Shape[] => [
      circle(x(hole.xMm), y(hole.yMm), (hole.diameterMm / 2) * factor, 'thin', 'none'),
      ...cross(x(hole.xMm), y(hole.yMm), 0.9)
    ]),
    datumFlag(datumX, datumY, channel.heading),
    ...balloon(
      datumX,
      datumY,
      channel.heading,
      plan.mark,
      plan.layout.holes.map((hole) => ({
        xMm: x(hole.xMm),
        yMm: y(hole.yMm),
        radiusMm: (hole.diameterMm / 2) * factor
      })),
      channel.lengthMm * factor
    )
  ]
}

export const cross = (xMm: number, yMm: number, armMm: number): Shape[] => [
  line(xMm - armMm, yMm, xMm + armMm, yMm, 'dimension'),
  line(xMm, yMm - armMm, xMm, yMm + armMm, 'dimension')
]

/** A filled triangle that points at the datum end (the mark of ISO 5459). */
const datumFlag = (xMm: number, yMm: number, heading: number): Shape => {
  const turn = (heading * Math.PI) / 180
  const place = (alongMm: number, acrossMm: number) =>
    point(
      xMm + alongMm * Math.cos(turn) - acrossMm * Math.sin(turn),
      yMm - alongMm * Math.sin(turn) - acrossMm * Math.cos(turn)
    )
  return polygon([place(0, 0), place(-2.4, 1.4), place(-2.4, -1.4)], 'none', 'ink')
}

interface PaperHole {
  readonly xMm: number
  readonly yMm: number
  readonly radiusMm: number
}

/** The channel's number inside its datum end, where it first stands clear of every hole. */
const balloon = (
  xMm: number,
  yMm: number,
  heading: number,
  mark: string,
  holes: readonly PaperHole[],
  lengthMm: number
): Shape[] => {
  const turn = (heading * Math.PI) / 180
  const radius = Math.max(2.3, textWidthMm(mark, 9, true) / 2 + 0.7)
  const at = (alongMm: number): readonly [number, number] => [
    xMm + alongMm * Math.cos(turn),
    yMm - alongMm * Math.sin(turn)
  ]
  const clear = (alongMm: number): boolean => {
    const [centreX, centreY] = at(alongMm)
    return holes.every((hole) => Math.hypot(hole.xMm - centreX, hole.yMm - centreY) > hole.radiusMm + radius + 0.3)
  }
  const first = radius + 1
  let along = first
  while (!clear(along) && along + radius < lengthMm) along += 0.5
  const [centreX, centreY] = at(clear(along) ? along : first)
  return [
    circle(centreX, centreY, radius, 'thin', 'paper'),
    text(centreX, centreY + 1.15, mark, { sizePt: 9, bold: true, anchor: 'middle' })
  ]
}
