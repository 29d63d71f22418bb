import { barSource, type CutPlan, type Piece, wholePiece } from '../cutting'
import type { Design, Workshop } from '../design'
import type { Plan } from '../plan'
import { BAR_SOURCE_NAMES } from '../words'
import { cutBars } from './cut-bars'
import { profileName } from './named'
import { cell, count, type Printed, TICK } from './printed'
import type { Block, SheetSection, TableBlock } from './sheet-data'
import { SAME_LENGTH_MM } from './the-rest'

/** The saw's pages: bars to scale, stops, pieces in cutting order, what goes back on the rack. */
export const cutList = (plan: Plan, design: Design, workshop: Workshop, show: Printed): SheetSection => ({
  part: 'cuts',
  number: '2',
  heading: 'Cut list',
  startsPage: true,
  blocks: [
    {
      kind: 'text',
      heading: '',
      strong: false,
      paragraphs: [
        `Cut with ${workshop.cutting.toolName}, kerf ${exactLength(workshop.cutting.kerfMm, show)}. ` +
          `${workshop.cutting.endTrimMm > 0 ? `Trim ${show.length(workshop.cutting.endTrimMm)} off the raw end of each new bar first. ` : ''}` +
          'Mark the datum end of each piece as it comes off the saw, and write its number on it.'
      ]
    },
    ...plan.cuts.flatMap((cuts) => profileBlocks(cuts, plan, design, show))
  ]
})

/** A kerf is thinner than the graduation: two decimals of a millimetre, three of an inch. */
const exactLength = (valueMm: number, show: Printed): string =>
  show.units === 'in' ? `${show.decimal(valueMm / 25.4, 3)} in` : `${show.decimal(valueMm, 2)} mm`

const profileBlocks = (cuts: CutPlan, plan: Plan, design: Design, show: Printed): Block[] => {
  const name = profileName(design, cuts.profileId)
  const drawings = cutBars(cuts, show)
  return [
    ...drawings.map(
      (drawing, index): Block => ({
        kind: 'figure',
        startsPage: false,
        heading: index === 0 ? name : `${name}, continued`,
        caption:
          index === drawings.length - 1
            ? `Scale ${drawing.scale}. Black bands are saw cuts; grey is a piece, dashed is what is left.`
            : '',
        drawing
      })
    ),
    ...(cuts.bars.length === 0
      ? []
      : [stopTable(cuts, name, show), pieceTable(cuts, plan, name, show), barTable(cuts, name, show)]),
    ...(cuts.uncut.length === 0
      ? []
      : [
          {
            kind: 'text',
            heading: 'Not cut',
            strong: true,
            paragraphs: cuts.uncut.map(
              (piece) =>
                `Piece ${markOf(plan.pieces, piece.pieceId)}, ${show.length(piece.lengthMm)}: the longest bar is ${show.length(piece.longestMm)}.`
            )
          } as const
        ])
  ]
}

const markOf = (pieces: readonly Piece[], id: string): string => wholePiece(pieces, id)?.mark ?? id

const stopTable = (cuts: CutPlan, name: string, show: Printed): TableBlock => ({
  kind: 'table',
  name: 'stops',
  heading: `Stop settings: ${name}`,
  note: '',
  columns: [
    { head: '☐', align: 'left', widthMm: 9 },
    { head: 'Setting', align: 'left', widthMm: 18 },
    { head: 'Stop at', align: 'right', widthMm: 32, exactUnit: 'mm' },
    { head: 'Pieces', align: 'right', widthMm: 18, exactUnit: 'pieces' },
    { head: 'Marks', align: 'left', widthMm: 'rest' }
  ],
  rows: cuts.stopSettingsMm.map((stopMm, index) => {
    const same = cuts.bars
      .flatMap((bar) => bar.pieces)
      .filter(({ lengthMm, state }) => state === 'planned' && Math.abs(lengthMm - stopMm) < SAME_LENGTH_MM)
    return [
      TICK,
      cell(`${index + 1}`),
      show.lengthCell(stopMm, true),
      count(same.length),
      cell(same.map((piece) => piece.mark).join(', '))
    ]
  })
})

const pieceTable = (cuts: CutPlan, plan: Plan, name: string, show: Printed): TableBlock => {
  const rows = cuts.bars.flatMap((bar) =>
    bar.pieces.filter(({ state }) => state === 'planned').map((piece) => ({ bar, piece }))
  )
  return {
    kind: 'table',
    name: 'cuts',
    heading: `Pieces in cutting order: ${name}`,
    note: '',
    columns: [
      { head: '☐', align: 'left', widthMm: 9 },
      { head: 'Cut', align: 'right', widthMm: 14 },
      { head: 'Bar', align: 'left', widthMm: 16 },
      { head: 'Piece', align: 'left', widthMm: 22 },
      { head: 'Length', align: 'right', widthMm: 34, exactUnit: 'mm' },
      { head: 'For channel', align: 'left', widthMm: 'rest' },
      { head: 'Starts at', align: 'right', widthMm: 34, exactUnit: 'mm' }
    ],
    rows: rows.map(({ bar, piece }, index) => [
      TICK,
      cell(`${index + 1}`),
      cell(bar.mark, true),
      cell(piece.mark, true),
      show.lengthCell(piece.lengthMm, true),
      cell(channelOf(plan, piece.pieceId)),
      show.lengthCell(piece.startMm)
    ])
  }
}

const channelOf = (plan: Plan, pieceId: string): string => {
  const piece = wholePiece(plan.pieces, pieceId)
  const channel = plan.channels.find(({ channelId }) => channelId === piece?.channelId)
  return channel === undefined ? '' : `Channel ${channel.mark}`
}

const barTable = (cuts: CutPlan, name: string, show: Printed): TableBlock => ({
  kind: 'table',
  name: 'bars',
  heading: `Bars, and what is left: ${name}`,
  note: `${cuts.proven ? 'No cheaper way to cut these pieces exists (proven).' : 'A good plan; a cheaper one is not ruled out.'} Write the length on each offcut that goes back on the rack.`,
  columns: [
    { head: '☐', align: 'left', widthMm: 9 },
    { head: 'Bar', align: 'left', widthMm: 16 },
    { head: 'Comes from', align: 'left', widthMm: 28 },
    { head: 'Bar length', align: 'right', widthMm: 32, exactUnit: 'mm' },
    { head: 'Pieces', align: 'right', widthMm: 16, exactUnit: 'pieces' },
    { head: 'Cuts', align: 'right', widthMm: 14, exactUnit: 'cuts' },
    { head: 'Left over', align: 'right', widthMm: 32, exactUnit: 'mm' },
    { head: 'Goes to', align: 'left', widthMm: 'rest' }
  ],
  rows: cuts.bars.map((bar) => [
    TICK,
    cell(bar.mark, true),
    cell(BAR_SOURCE_NAMES[barSource(bar)]),
    show.lengthCell(bar.lengthMm),
    count(bar.pieces.filter(({ state }) => state === 'planned').length),
    count(bar.cuts - bar.pieces.filter(({ state }) => state !== 'planned').length),
    show.lengthCell(bar.leftoverMm, bar.keep),
    cell(bar.keep ? 'back on the rack' : 'waste', bar.keep)
  ])
})
