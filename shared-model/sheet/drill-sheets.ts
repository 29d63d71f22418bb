import type { DrillRow } from '../bench'
import type { Design } from '../design'
import type { Plan } from '../plan'
import { channelDrawings } from './channel-drawing'
import { type Built, closureName, openedAt } from './named'
import { cell, type Printed, TICK } from './printed'
import type { Block, Cell, SheetSection, TableBlock } from './sheet-data'

/** One drill sheet a channel: drawing to scale, hole table, and the marks that join the two. */
export const drillSheets = (plan: Plan, design: Design, built: readonly Built[], show: Printed): SheetSection => ({
  part: 'drilling',
  number: '3',
  heading: 'Drill sheets',
  startsPage: false,
  blocks: [
    {
      kind: 'text',
      heading: '',
      strong: false,
      paragraphs: [
        `Measure every hole from the datum end, never from the hole before. ${design.quantity === 1 || plan.rest !== null ? '' : `Drill ${design.quantity} of each channel alike. `}` +
          `Centres on the upper face lie on the centre line unless a height is given. ${roundingWords(plan.bench.holes, show)}`,
        ...(built.some(({ profile }) => profile.shape === 'trunking')
          ? [
              'The upper face of trunking is its lid: cut the lid with its body, clip it on, and drill the two together.'
            ]
          : [])
      ]
    },
    ...built.flatMap((one): Block[] => channelBlocks(one, openedAt(plan, one), design, show, leftWords(plan, one)))
  ]
})

/** The saws of one centre in their order; a hole without a saw is drilled with a twist drill. */
const sawWords = (hole: DrillRow): string =>
  hole.concentric.length > 1 ? hole.concentric.join(' → ') : hole.sawName === '' ? 'twist drill' : hole.sawName

const roundingWords = (holes: readonly DrillRow[], show: Printed): string => {
  const most = Math.max(0, ...holes.map((hole) => Math.abs(hole.roundingMm)))
  const text = show.units === 'in' ? `${show.decimal(most / 25.4, 3)} in` : `${show.decimal(most, 2)} mm`
  return most < 0.0005
    ? 'Each distance is printed exactly.'
    : `Each distance is rounded on its own, by ${text} at the most.`
}

/** Which pieces of this channel are still to be drilled, once the bench has begun. */
const leftWords = (plan: Plan, { channel }: Built): string => {
  const { rest } = plan
  if (rest === null) return ''
  const left = plan.pieces.filter(({ id, channelId }) => channelId === channel.id && rest.toDrill.includes(id))
  return ` Still to drill: ${left.map(({ mark }) => mark).join(', ')}.`
}

const channelBlocks = (
  one: Built,
  holes: readonly DrillRow[],
  design: Design,
  show: Printed,
  left: string
): Block[] => {
  const { channel, plan, profile, cutLengthMm } = one
  const drawings = channelDrawings(one, holes, show)
  const name = channel.name === '' ? '' : `: ${channel.name}`
  return [
    ...drawings.map(
      (drawing, index): Block => ({
        kind: 'figure',
        startsPage: false,
        heading: `Channel ${plan.mark}${name}${index === 0 ? '' : ', continued'}`,
        caption:
          index < drawings.length - 1
            ? `Scale ${drawing.scale}.`
            : `Scale ${drawing.scale}. ${profile.name}, cut ${show.length(cutLengthMm)}. ` +
              `Datum end: ${closureName(design, channel.datumClosureId)}; far end: ${closureName(design, channel.farClosureId)}.${left}`,
        drawing
      })
    ),
    ...(holes.length === 0 ? [] : [holeTable(plan.mark, plan.layout.section.averageWallMm, holes, show)])
  ]
}

const holeTable = (mark: string, wallMm: number, holes: readonly DrillRow[], show: Printed): TableBlock => ({
  kind: 'table',
  name: `holes-channel-${mark}`,
  heading: `Holes of channel ${mark}`,
  note: holes.some((hole) => hole.heightMm !== null)
    ? 'A height up is measured outside, from the underside of the channel.'
    : '',
  columns: [
    { head: '☐', align: 'left', widthMm: 9 },
    { head: 'Hole', align: 'left', widthMm: 14 },
    { head: 'From datum', align: 'right', widthMm: 27, exactUnit: 'mm' },
    { head: 'Face', align: 'left', widthMm: 30 },
    { head: 'Diameter', align: 'right', widthMm: 25, exactUnit: 'mm' },
    { head: 'Saw, in this order', align: 'left', widthMm: 36 },
    { head: 'What sits there', align: 'left', widthMm: 'rest' }
  ],
  rows: [...holes]
    .sort((a, b) => a.atMm - b.atMm)
    .map((hole) => [
      TICK,
      cell(hole.mark, true),
      alongCell(hole, show),
      faceCell(hole, wallMm, show),
      show.diameterCell(hole.diameterMm),
      cell(sawWords(hole)),
      cell(hole.sits)
    ])
})

/** Along the channel; a hole in an end has no distance from the datum end. */
const alongCell = (hole: DrillRow, show: Printed): Cell =>
  hole.face.endsWith('-end') ? cell('—') : show.lengthCell(hole.atMm, true)

/** On a side or end face the centre's height is measured outside, up from the underside. */
const faceCell = (hole: DrillRow, wallMm: number, show: Printed): Cell => {
  const face = hole.face.replace('-', ' ')
  if (hole.heightMm === null) return cell(face)
  const upMm = hole.heightMm + wallMm
  return { text: `${face}, ${show.length(upMm)} up`, exact: upMm }
}
