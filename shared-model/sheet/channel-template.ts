import type { DrillRow } from '../bench'
import type { Design } from '../design'
import type { Plan } from '../plan'
import type { Section } from '../profile'
import { developedSaddle } from './developed'
import { line, point, type Shape } from './drawing'
import type { Built } from './named'
import type { Printed } from './printed'
import type { ChannelTemplate, TemplateHole } from './sheet-data'

/** Widest strip of a pipe's surface that is drawn: it must lie on one page between the bars. */
const WIDEST_WRAP_MM = 122
const FACES = ['top', 'front', 'back', 'bottom'] as const
const FACE_WORDS = { top: 'upper face', front: 'front face', back: 'back face', bottom: 'underside' }

/** A channel's 1:1 templates: its upper face (a round pipe's surface, unrolled), and each other face that has holes. */
export const channelTemplates = (one: Built, plan: Plan, design: Design, show: Printed): readonly ChannelTemplate[] => {
  const seen = new Set<string>()
  const rows = plan.bench.holes.filter((row) => {
    if (row.channelId !== one.channel.id || seen.has(row.holeId)) return false
    seen.add(row.holeId)
    return true
  })
  return FACES.filter((face) => face === 'top' || rows.some((row) => row.face === face)).map((face) =>
    faceTemplate(
      one,
      face,
      rows.filter((row) => row.face === face),
      design,
      show
    )
  )
}

const faceTemplate = (
  one: Built,
  face: ChannelTemplate['face'],
  rows: readonly DrillRow[],
  design: Design,
  show: Printed
): ChannelTemplate => {
  const { channel, plan, profile, cutLengthMm } = one
  const { section } = plan.layout
  const round = section.shape === 'round'
  const upright = face === 'front' || face === 'back'
  const half = round ? Math.min((Math.PI * section.widthMm) / 2, WIDEST_WRAP_MM / 2) : section.widthMm / 2
  const [fromYMm, toYMm] = upright && !round ? [0, section.heightMm] : [-half, half]
  return {
    channelId: channel.id,
    mark: plan.mark,
    name: `${channel.name === '' ? profile.name : channel.name}, ${FACE_WORDS[face]}`,
    face,
    wraps: round,
    lengthMm: cutLengthMm,
    fromYMm,
    toYMm,
    holes: rows.map((row) => templateHole(row, one, show)),
    shapes: [...edges(cutLengthMm, fromYMm, toYMm, upright && !round), ...closureLines(one, design, fromYMm, toYMm)]
  }
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
