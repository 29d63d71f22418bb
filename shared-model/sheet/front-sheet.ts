import type { Design } from '../design'
import type { Plan } from '../plan'
import { findingTable, stopWords } from './finding-table'
import { type Built, closureName, cropName } from './named'
import { cell, count, type Printed } from './printed'
import type { Block, SheetSection, TableBlock } from './sheet-data'
import { sideBySide } from './side-by-side'
import { sideSection } from './side-section'
import { sillPicture } from './sill-picture'
import { restWords } from './the-rest'

/** First sheet: what is built and how many, the sill from above, a section with the fill line, the channels. */
export const frontSheet = (plan: Plan, design: Design, built: readonly Built[], show: Printed): SheetSection => {
  const picture = sillPicture(plan, design, built, show)
  const distinct = distinctSections(built)
  const room = { toARow: distinct.length === 3 ? 3 : 2, heightMm: distinct.length > 3 ? LOW_MM : SECTION_MM } as const
  const sections = distinct.map((one) => sideSection(one, plan, design, one.plan.seats[0], show, room))
  const cross = rowsOf(sections, room.toARow).map(
    (row, index, all): Block => ({
      kind: 'figure',
      startsPage: false,
      heading: index === 0 ? 'Section, filled for the first time' : '',
      caption:
        index === all.length - 1 ? `Fill line measured down from the top of the channel. ${stageWords(design)}` : '',
      drawing: sideBySide(row, 'Sections across the channels')
    })
  )
  return {
    part: 'build',
    number: '1',
    heading: 'What is built',
    startsPage: false,
    blocks: [
      { kind: 'title-fields' },
      ...(plan.rest === null
        ? []
        : [{ kind: 'text', heading: '', strong: true, paragraphs: [restWords(plan, design.revision)] } as const]),
      ...stopWords(plan, show),
      { kind: 'big', figures: bigFigures(plan, design, show) },
      {
        kind: 'figure',
        startsPage: false,
        heading: 'The sill from above',
        caption: `Scale ${picture.scale}. A black triangle points at each channel's datum end: every distance along a channel is measured from there.`,
        drawing: picture
      },
      ...cross,
      channelTable(design, built, show),
      ...findingTable(plan, show),
      ...(design.remarks === ''
        ? []
        : [{ kind: 'text', heading: 'Remarks', paragraphs: [design.remarks], strong: false } as const])
    ]
  }
}

/** One row of sections; two rows are drawn smaller. */
const SECTION_MM = 62
const LOW_MM = 40

const bigFigures = (plan: Plan, design: Design, show: Printed) => [
  { name: 'To make', value: `${design.quantity}`, note: design.quantity === 1 ? 'unit' : 'units alike' },
  { name: 'Channels in each', value: `${plan.channels.length}`, note: `${plan.totals.plants} plants` },
  {
    name: 'Filled weight',
    value: show.mass(plan.load.filledG),
    note: `${show.mass(plan.load.grownG)} with grown plants`
  },
  { name: 'Solution', value: show.volume(plan.totals.litres), note: 'to the fill lines' }
]

const rowsOf = <T>(list: readonly T[], toARow: number): readonly (readonly T[])[] =>
  list.flatMap((_, index) => (index % toARow === 0 ? [list.slice(index, index + toARow)] : []))

const stageWords = (design: Design): string => {
  const stage = {
    unrooted: 'unrooted cuttings',
    rooting: 'plants that root',
    rooted: 'rooted plants',
    full: 'full roots'
  }
  return `Drawn for ${stage[design.water.stage]}.`
}

/** One channel for each profile, side and seat: channels that look the same in section are drawn once. */
const distinctSections = (built: readonly Built[]): readonly Built[] => {
  const seen = new Set<string>()
  return built
    .filter(({ channel, plan }) => {
      const key = [channel.profileId, channel.turned, channel.sites[0]?.seatId, plan.water.levelMm.toFixed(1)].join('|')
      if (seen.has(key)) return false
      seen.add(key)
      return true
    })
    .slice(0, 4)
}

const channelTable = (design: Design, built: readonly Built[], show: Printed): TableBlock => ({
  kind: 'table',
  name: 'channels',
  heading: 'Channels of one unit',
  note: '',
  columns: [
    { head: 'No.', align: 'left', widthMm: 10 },
    { head: 'Channel and profile', align: 'left', widthMm: 'rest' },
    { head: 'Cut length', align: 'right', widthMm: 23, exactUnit: 'mm' },
    { head: 'Over ends', align: 'right', widthMm: 23, exactUnit: 'mm' },
    { head: 'Plants', align: 'right', widthMm: 14, exactUnit: 'pieces' },
    { head: 'Ends (datum, far) and crop', align: 'left', widthMm: 54 }
  ],
  rows: built.map(({ channel, plan, profile, cutLengthMm }) => [
    cell(plan.mark, true),
    { text: channel.name === '' ? `Channel ${plan.mark}` : channel.name, under: profile.name },
    show.lengthCell(cutLengthMm, true),
    show.lengthCell(plan.layout.overallLengthMm),
    count(channel.sites.length),
    {
      text: ends(design, channel.datumClosureId, channel.farClosureId),
      under: [...new Set(channel.sites.map((site) => cropName(design, site.cropId)))]
        .filter((name) => name !== '')
        .join(', ')
    }
  ])
})

const ends = (design: Design, datumId: string, farId: string): string =>
  datumId === farId
    ? `2 × ${closureName(design, datumId)}`
    : `${closureName(design, datumId)}; ${closureName(design, farId)}`
