import type { Design } from '../design'
import type { Collar } from '../parts'
import type { Plan } from '../plan'
import type { SeatFit } from '../seating'
import { uprightDimension } from './dimension-lines'
import { circle, type Drawing, line, type PointMm, point, polygon, rect, type Shape, text } from './drawing'
import { type Built, type StackPart, sawOf, seatOf, stackParts } from './named'
import type { Printed } from './printed'
import { scaleThatFits } from './scale'

/** Two sections to a row, or three: the dimensions then stand closer. */
const WIDTHS_MM = { 2: 91, 3: 60.6 }
const LEFT_MM = 22
const RIGHT_MM = 24
const CLOSE_MM = 20.5
const TOP_MM = 7

/** A cut across a channel at one plant: wall, solution, what sits in the hole, the fill line and the air gap. */
export const sideSection = (
  one: Built,
  plan: Plan,
  design: Design,
  seatFit: SeatFit | undefined,
  show: Printed,
  room: { readonly toARow: 2 | 3; readonly heightMm: number }
): Drawing => {
  const widthMm = WIDTHS_MM[room.toARow]
  const leftMm = room.toARow === 2 ? LEFT_MM : CLOSE_MM
  const rightMm = room.toARow === 2 ? RIGHT_MM : CLOSE_MM
  const { section } = one.plan.layout
  const wall = section.averageWallMm
  const water = one.plan.water
  const highest = Math.max(section.heightMm - wall, seatFit?.topMm ?? 0) + wall
  const lowest = Math.min(-wall, seatFit?.lowestMm ?? 0, seatFit?.undersideMm ?? 0)
  const scale = scaleThatFits(section.widthMm, highest - wall - lowest, widthMm - leftMm - rightMm, room.heightMm)
  const k = scale.factor
  const middle = leftMm + (widthMm - leftMm - rightMm) / 2
  const y = (aboveFloorMm: number): number => TOP_MM + (highest - wall - aboveFloorMm) * k
  const halfWidth = (section.widthMm / 2) * k
  const levelY = y(water.levelMm)
  const topY = y(section.heightMm - wall)
  const baseY = y(lowest)
  const site = water.sites.find(({ siteId }) => siteId === seatFit?.siteId)
  const gapMm = site?.gapMm ?? water.leastGapMm
  const underside = seatFit?.undersideMm
  return {
    widthMm,
    heightMm: baseY + 9,
    scale: scale.name,
    alt: `Section across channel ${one.plan.mark}`,
    shapes: [
      ...solution(one, middle, y, k, site?.levelMm ?? water.levelMm),
      ...walls(one, middle, y, k),
      ...(seatFit === undefined ? [] : opening(seatFit, middle, topY, wall * k, k)),
      ...(seatFit === undefined ? [] : stackShapes(seatFit, design, one, collarSizes(plan, design), middle, y, k)),
      line(middle - halfWidth - 3, levelY, middle + halfWidth + 3, levelY, 'thin'),
      polygon(
        [
          point(middle + halfWidth + 4.4, levelY),
          point(middle + halfWidth + 3.2, levelY - 2),
          point(middle + halfWidth + 5.6, levelY - 2)
        ],
        'thin',
        'none'
      ),
      ...uprightDimension(
        topY,
        levelY,
        middle - halfWidth - 4.6,
        middle - halfWidth,
        show.length(water.fromTopMm),
        'fill line'
      ),
      ...(underside === undefined || gapMm === null
        ? []
        : uprightDimension(
            y(underside),
            y(site?.levelMm ?? water.levelMm),
            middle + halfWidth + (room.toARow === 2 ? 9 : 7),
            middle + halfWidth + 3,
            show.length(Math.abs(gapMm)),
            gapMm < 0 ? 'dips in' : 'air gap'
          )),
      text(middle, baseY + 7, `Channel ${one.plan.mark}, ${scale.name}`, { sizePt: 8.5, anchor: 'middle' })
    ]
  }
}

/** A ring as cut: what the plan says, else the saws' own diameters. */
const collarSizes =
  (plan: Plan, design: Design): CollarSize =>
  (collar) => {
    const need = plan.rings.needs.find(({ id }) => id === collar.id)
    return {
      outsideMm: need?.outsideMm ?? sawOf(design, collar.outerSawId)?.diameterMm ?? 0,
      holeMm: need?.holeMm ?? sawOf(design, collar.innerSawId)?.diameterMm ?? 0
    }
  }

type Up = (aboveFloorMm: number) => number

const walls = ({ plan }: Built, middle: number, y: Up, k: number): Shape[] => {
  const { section } = plan.layout
  const wall = section.averageWallMm
  const half = (section.widthMm / 2) * k
  if (section.shape === 'round') {
    const centreY = y(section.heightMm / 2 - wall)
    return [circle(middle, centreY, half, 'outline'), circle(middle, centreY, half - wall * k, 'thin')]
  }
  const corner = section.cornerRadiusMm * k
  return [
    rect(
      middle - half,
      y(section.heightMm - wall),
      section.widthMm * k,
      section.heightMm * k,
      'outline',
      'none',
      corner
    ),
    rect(
      middle - half + wall * k,
      y(section.heightMm - 2 * wall),
      (section.widthMm - 2 * wall) * k,
      (section.heightMm - 2 * wall) * k,
      'thin',
      'none',
      Math.max(0, corner - wall * k)
    )
  ]
}

const solution = ({ plan }: Built, middle: number, y: Up, k: number, levelMm: number): Shape[] => {
  const { section } = plan.layout
  const wall = section.averageWallMm
  const level = Math.max(0, Math.min(levelMm, section.heightMm - 2 * wall))
  if (level === 0) return []
  if (section.shape !== 'round') {
    const width = (section.widthMm - 2 * wall) * k
    return [rect(middle - width / 2, y(level), width, level * k, 'none', 'tint')]
  }
  const radius = section.heightMm / 2 - wall
  const reach = Math.acos(Math.max(-1, Math.min(1, (radius - level) / radius)))
  const steps = 48
  const points: PointMm[] = Array.from({ length: steps + 1 }, (_, index) => {
    const angle = -reach + (2 * reach * index) / steps
    return point(middle + radius * Math.sin(angle) * k, y(radius - radius * Math.cos(angle)))
  })
  return [polygon(points, 'none', 'tint')]
}

/** The hole in the face: the wall is left open between its edges. */
const opening = (fit: SeatFit, middle: number, topY: number, wallMm: number, k: number): Shape[] => {
  const half = (fit.holeMm / 2) * k
  return [
    rect(middle - half, topY - 0.25, 2 * half, wallMm + 0.5, 'none', 'paper'),
    line(middle - half, topY, middle - half, topY + wallMm, 'outline'),
    line(middle + half, topY, middle + half, topY + wallMm, 'outline')
  ]
}

type CollarSize = (collar: Collar) => { readonly outsideMm: number; readonly holeMm: number }

const stackShapes = (
  fit: SeatFit,
  design: Design,
  { channel }: Built,
  collarSize: CollarSize,
  middle: number,
  y: Up,
  k: number
): Shape[] => {
  const seat = seatOf(design, fit.siteId, channel)
  const parts = seat === undefined ? [] : stackParts(design, seat)
  const shapes = fit.interfaces.flatMap((joint): Shape[] => {
    const found = parts.find(({ part }) => part.id === joint.partId)
    return found === undefined ? [] : partShapes(found, joint.undersideMm, joint.topMm, collarSize, middle, y, k)
  })
  return [line(middle, y(fit.topMm) - 3, middle, y(fit.lowestMm) + 3, 'centre'), ...shapes]
}

const partShapes = (
  found: StackPart,
  lowMm: number,
  highMm: number,
  collarSize: CollarSize,
  middle: number,
  y: Up,
  k: number
): Shape[] => {
  const body = (lowHalf: number, highHalf: number, upperMm: number): Shape =>
    polygon(
      [
        point(middle - highHalf * k, y(upperMm)),
        point(middle - lowHalf * k, y(lowMm)),
        point(middle + lowHalf * k, y(lowMm)),
        point(middle + highHalf * k, y(upperMm))
      ],
      'thin'
    )
  const block = (half: number, fill: 'dark' | 'tint'): Shape =>
    rect(middle - half * k, y(highMm), 2 * half * k, (highMm - lowMm) * k, 'thin', fill)
  switch (found.kind) {
    case 'cup':
    case 'riser': {
      const cup = found.kind === 'cup' ? found.part : found.part.cup
      const taper = (cup.bodyUnderRimMm - cup.bottomMm) / (2 * Math.max(1, cup.heightMm - cup.rimThicknessMm))
      const shoulder = highMm - cup.rimThicknessMm
      const low = Math.max(0, cup.bodyUnderRimMm / 2 - taper * Math.max(0, shoulder - lowMm))
      const rimHalf = cup.rimOutsideMm / 2
      return [
        body(low, cup.bodyUnderRimMm / 2, shoulder),
        rect(middle - rimHalf * k, y(highMm), 2 * rimHalf * k, cup.rimThicknessMm * k, 'thin', 'paper')
      ]
    }
    case 'collar': {
      const { outsideMm, holeMm } = collarSize(found.part)
      const height = (highMm - lowMm) * k
      const ring = ((outsideMm - holeMm) / 2) * k
      return [
        rect(middle - (outsideMm / 2) * k, y(highMm), ring, height, 'thin', 'dark'),
        rect(middle + (holeMm / 2) * k, y(highMm), ring, height, 'thin', 'dark')
      ]
    }
    case 'plant-collar':
      return [block(found.part.outsideMm / 2, 'dark')]
  }
}
