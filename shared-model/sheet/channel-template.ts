import type { DrillRow } from '../bench'
import type { Design } from '../design'
import type { Plan } from '../plan'
import type { Section } from '../profile'
import { developedSaddle } from './developed'
import { line, point, type Shape } from './drawing'
import { endTemplate } from './end-template'
import { type Built, openedAt } from './named'
import { pipeBand } from './pipe-band'
import type { Printed } from './printed'
import type { ChannelTemplate, TemplateHole } from './sheet-data'

/** Paper past the widest saddle of a pipe, and the least half width of a pipe's template. */
const PAST_SADDLE_MM = 8
const LEAST_HALF_MM = 25
const FACES = ['top', 'front', 'back', 'bottom'] as const
const ENDS = ['datum-end', 'far-end'] as const
const FACE_WORDS = { top: 'upper face', front: 'front face', back: 'back face', bottom: 'underside' }

/**
 * A channel's 1:1 templates: its upper face (a round pipe's surface, unrolled), each other face and each end that has
 * holes, and for a round pipe a band to find its crown and sides with.
 */
export const channelTemplates = (one: Built, plan: Plan, design: Design, show: Printed): readonly ChannelTemplate[] => {
  const rows = openedAt(plan, one)
  const on = (face: DrillRow['face']) => rows.filter((row) => row.face === face)
  return [
    ...FACES.filter((face) => face === 'top' || on(face).length > 0).map((face) =>
      faceTemplate(one, face, on(face), design, show)
    ),
    ...ENDS.filter((face) => on(face).length > 0).map((face) => endTemplate(one, face, on(face), design, show)),
    ...(one.plan.layout.section.shape === 'round' ? [pipeBand(one)] : [])
  ]
}

const faceTemplate = (
  one: Built,
  face: (typeof FACES)[number],
  rows: readonly DrillRow[],
  design: Design,
  show: Printed
): ChannelTemplate => {
  const { channel, plan, profile, cutLengthMm } = one
  const { section } = plan.layout
  const round = section.shape === 'round'
  const upright = face === 'front' || face === 'back'
  const holes = rows.map((row) => templateHole(row, one, show))
  const half = round ? wrapHalf(holes, section.widthMm / 2) : section.widthMm / 2
  const [fromYMm, toYMm] = upright && !round ? [0, section.heightMm] : [-half, half]
  return {
    channelId: channel.id,
    mark: plan.mark,
    name: `${FACE_WORDS[face]}, ${channel.name === '' ? profile.name : channel.name}`,
    face,
    wraps: round,
    zero: { label: 'DATUM END', from: 'datum' },
    lengthMm: cutLengthMm,
    fromYMm,
    toYMm,
    holes,
    shapes: [...edges(cutLengthMm, fromYMm, toYMm, upright && !round), ...closureLines(one, design, fromYMm, toYMm)]
  }
}

/** Half of a pipe's template: as far round as its widest saddle reaches and a little more, at most half way round. */
const wrapHalf = (holes: readonly TemplateHole[], radiusMm: number): number => {
  const reach = Math.max(0, ...holes.flatMap(({ outlineMm }) => outlineMm.map(({ yMm }) => Math.abs(yMm))))
  return Math.min(Math.PI * radiusMm, Math.max(LEAST_HALF_MM, reach + PAST_SADDLE_MM))
}

const templateHole = (row: DrillRow, { plan }: Built, show: Printed): TemplateHole => {
  const { section } = plan.layout
  const acrossMm = acrossOf(row, section)
  const pipeRadiusMm = section.widthMm / 2
  const outlineMm =
    section.shape === 'round'
      ? developedSaddle(row.diameterMm / 2, pipeRadiusMm, row.atMm).map(({ xMm, yMm }) => point(xMm, yMm + acrossMm))
      : []
  return {
    mark: row.mark,
    atMm: row.atMm,
    acrossMm,
    diameterMm: row.diameterMm,
    label: `${row.mark} · ${show.length(row.atMm)} · ${show.diameter(row.diameterMm)}`,
    outlineMm
  }
}

/**
 * Where a centre lies across its template. On the upper face and the underside: on the centre line. On a flat side: down
 * from the upper edge. On a pipe's side the centre line of the template is the pipe's widest line, and a centre at a
 * height h above the outside's lowest line lies R · asin((h - R) / R) of arc above it.
 */
const acrossOf = (row: DrillRow, section: Section): number => {
  if (row.heightMm === null) return 0
  const upMm = row.heightMm + section.averageWallMm
  if (section.shape !== 'round') return section.heightMm - upMm
  const radiusMm = section.widthMm / 2
  return -radiusMm * Math.asin(Math.max(-1, Math.min(1, (upMm - radiusMm) / radiusMm)))
}

/** Long edges, the far end, and the centre line of a face that is laid out from it. */
const edges = (lengthMm: number, fromYMm: number, toYMm: number, upright: boolean): Shape[] => [
  line(0, fromYMm, lengthMm, fromYMm, 'outline'),
  line(0, toYMm, lengthMm, toYMm, 'outline'),
  line(lengthMm, fromYMm, lengthMm, toYMm, 'outline'),
  ...(upright ? [] : [line(0, 0, lengthMm, 0, 'centre')])
]

/** How far each closure covers the outside or reaches into the bore. */
const closureLines = ({ channel, cutLengthMm }: Built, design: Design, fromYMm: number, toYMm: number): Shape[] => {
  const reach = (id: string): number => {
    const closure = design.parts.closures.find((one) => one.id === id)
    return closure === undefined ? 0 : Math.max(closure.insideDepthMm, closure.outsideDepthMm)
  }
  const upright = (xMm: number): Shape => line(xMm, fromYMm, xMm, toYMm, 'hidden')
  const near = reach(channel.datumClosureId)
  const far = reach(channel.farClosureId)
  return [...(near > 0 ? [upright(near)] : []), ...(far > 0 ? [upright(cutLengthMm - far)] : [])]
}
