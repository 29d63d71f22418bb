import type { Design } from '../design'
import type { Plan } from '../plan'
import type { RingPlan, SheetCut } from '../rings'
import { sawOf } from './named'
import { cell, count, type Printed, TICK } from './printed'
import { riserDrawing } from './riser-drawing'
import type { Block, SheetSection, TableBlock } from './sheet-data'
import { sheetLayout } from './sheet-layout'
import { sideBySide } from './side-by-side'

/** Collars, plates, risers and cup bottoms: what to cut, from which sheet, where, and which cores to keep. */
export const collarSheets = (plan: Plan, design: Design, show: Printed): SheetSection => {
  const { rings } = plan
  const seated = new Set(design.channels.flatMap(({ sites }) => sites.map(({ seatId }) => seatId)))
  const risers = design.parts.risers.filter((riser) =>
    design.seats.some(
      ({ id, stack }) => seated.has(id) && stack.some((item) => item.kind === 'riser' && item.partId === riser.id)
    )
  )
  return {
    part: 'collars',
    number: '4',
    heading: 'Collars, risers and cup bottoms',
    startsPage: false,
    blocks: [
      ...(rings.needs.length === 0 ? [] : [needTable(rings, design, show)]),
      ...(rings.plates.length === 0 ? [] : [plateTable(rings, show)]),
      ...(rings.fromCores.length + rings.coresLeft.length === 0 ? [] : [coreTable(rings, show)]),
      ...(rings.sheets.length === 0 ? [] : [boundWords(rings, show)]),
      ...rings.sheets.flatMap((sheet): Block[] => {
        const drawing = sheetLayout(sheet, rings, show)
        return [
          {
            kind: 'figure',
            startsPage: false,
            heading: `Sheet ${sheet.mark}`,
            caption: `Scale ${drawing.scale}. The black triangle is the datum corner: measure across and up from it. ${mostWords(sheet, rings)}`,
            drawing
          },
          ...(sheet.circles.length === 0 ? [] : [centreTable(sheet, rings, show)])
        ]
      }),
      ...(risers.length === 0
        ? []
        : [
            {
              kind: 'figure',
              startsPage: false,
              heading: 'Risers',
              caption: 'Measure down from the top of the rim and keep the rim end.',
              drawing: sideBySide(
                risers.map((riser) => riserDrawing(riser, show)),
                'Risers'
              )
            } as const,
            riserTable(plan, design, show)
          ]),
      ...(rings.needs.length + rings.plates.length + risers.length === 0
        ? [{ kind: 'text', heading: '', strong: false, paragraphs: ['Nothing of this kind is needed.'] } as const]
        : [])
    ]
  }
}

/** How many sheets are cut into, and how few could do: the bound that holds for every layout. */
const boundWords = (rings: RingPlan, show: Printed): Block => {
  const { sheets, leastSheets, proven, costMinor, lowerBound } = rings
  const bound = costMinor === null ? '' : `; no layout costs less than ${show.money(Math.ceil(lowerBound))}`
  return {
    kind: 'text',
    heading: 'Sheets',
    strong: false,
    paragraphs: [
      `${sheets.length === 1 ? 'One sheet is' : `${sheets.length} sheets are`} cut into, after every core that serves is used. ` +
        `However they are laid, no fewer than ${leastSheets} would do${proven ? ', and no cheaper way exists (proven)' : bound}.`
    ]
  }
}

/** For each kind of circle cut from a sheet: how many of it alone go on one of its size, and the bound on that. */
const mostWords = ({ sheetId, circles }: SheetCut, { perSheet, ...rings }: RingPlan): string =>
  perSheet
    .filter((fit) => fit.sheetId === sheetId && circles.some(({ needId }) => needId === fit.needId))
    .map(({ needId, count: most, upperBound }) => {
      const letter = rings.needs.length === 1 ? '' : ` of ${letterOf(rings, needId)} alone`
      return upperBound === most
        ? `A whole sheet like it holds ${most}${letter}; more is not possible (proven).`
        : `A whole sheet like it holds ${most}${letter}; no layout holds more than ${upperBound}.`
    })
    .join(' ')

/** The letter before a circle's number on the drawing: one for each kind of ring. */
const letterOf = (rings: Pick<RingPlan, 'needs'>, needId: string): string =>
  String.fromCharCode(
    97 +
      (Math.max(
        0,
        rings.needs.findIndex(({ id }) => id === needId)
      ) %
        26)
  )

const needTable = (rings: RingPlan, design: Design, show: Printed): TableBlock => ({
  kind: 'table',
  name: 'collars',
  heading: 'Rings and discs',
  note: rings.needs.some((need) => need.innerSawId !== null)
    ? 'Two saws on one centre: score with the larger and do not go through, saw through with the smaller, then finish with the larger (common practice, no source).'
    : '',
  columns: [
    { head: '', align: 'left', widthMm: 8 },
    { head: 'What', align: 'left', widthMm: 'rest' },
    { head: 'How many', align: 'right', widthMm: 20, exactUnit: 'pieces' },
    { head: 'Outside', align: 'right', widthMm: 25, exactUnit: 'mm' },
    { head: 'Hole', align: 'right', widthMm: 25, exactUnit: 'mm' },
    { head: 'Core that falls out', align: 'right', widthMm: 25, exactUnit: 'mm' },
    { head: 'Saws in order', align: 'left', widthMm: 40 }
  ],
  rows: rings.needs.map((need) => {
    const outer = sawName(design, need.outerSawId)
    const inner = need.innerSawId === null ? null : sawName(design, need.innerSawId)
    return [
      cell(letterOf(rings, need.id), true),
      cell(need.name),
      count(need.count),
      show.diameterCell(need.outsideMm),
      need.holeMm === null ? cell('none') : show.diameterCell(need.holeMm),
      need.coreMm === null ? cell('none') : show.diameterCell(need.coreMm),
      cell(inner === null ? outer : `${outer} → ${inner} → ${outer}`)
    ]
  })
})

const sawName = (design: Design, sawId: string): string => sawOf(design, sawId)?.name ?? sawId

const plateTable = (rings: RingPlan, show: Printed): TableBlock => ({
  kind: 'table',
  name: 'plates',
  heading: 'End plates',
  note: '',
  columns: [
    { head: '☐', align: 'left', widthMm: 9 },
    { head: 'What', align: 'left', widthMm: 'rest' },
    { head: 'How many', align: 'right', widthMm: 22, exactUnit: 'pieces' },
    { head: 'Width', align: 'right', widthMm: 30, exactUnit: 'mm' },
    { head: 'Height', align: 'right', widthMm: 30, exactUnit: 'mm' },
    { head: 'Thickness', align: 'right', widthMm: 30, exactUnit: 'mm' }
  ],
  rows: rings.plates.map((plate) => [
    TICK,
    cell(plate.name),
    count(plate.count),
    show.lengthCell(plate.widthMm),
    show.lengthCell(plate.heightMm),
    show.lengthCell(plate.thicknessMm)
  ])
})

/** `99 15/16 in` is the longest figure that three rows abreast have room for. */
const THREE_ABREAST_MM = 2_540

const centreTable = ({ mark, circles, widthMm, heightMm }: SheetCut, rings: RingPlan, show: Printed): TableBlock => ({
  kind: 'table',
  name: `sheet-${mark}-centres`,
  heading: `Centres on sheet ${mark}`,
  note: 'The letter is that of the ring or disc in the first table; its first saw is the one to begin with.',
  abreast: Math.max(widthMm, heightMm) < THREE_ABREAST_MM ? 3 : 2,
  columns: [
    { head: '☐', align: 'left', widthMm: 6.6 },
    { head: 'Circle', align: 'left', widthMm: 12.2 },
    { head: 'Across', align: 'right', widthMm: 20, exactUnit: 'mm' },
    { head: 'Up', align: 'right', widthMm: 20, exactUnit: 'mm' },
    { head: 'Outer saw', align: 'right', widthMm: 30, exactUnit: 'mm', fileOnly: true },
    { head: 'Becomes', align: 'left', widthMm: 'rest', fileOnly: true }
  ],
  rows: circles.map((ring, index) => [
    TICK,
    cell(`${letterOf(rings, ring.needId)}${index + 1}`, true),
    show.lengthCell(ring.xMm),
    show.lengthCell(ring.yMm),
    show.diameterCell(ring.diameterMm),
    cell(rings.needs.find(({ id }) => id === ring.needId)?.name ?? '')
  ])
})

const coreTable = (rings: RingPlan, show: Printed): TableBlock => ({
  kind: 'table',
  name: 'cores',
  heading: 'Cores first: use and keep',
  note: '',
  columns: [
    { head: '☐', align: 'left', widthMm: 9 },
    { head: 'Core', align: 'left', widthMm: 60 },
    { head: 'How many', align: 'right', widthMm: 22, exactUnit: 'pieces' },
    { head: 'Use', align: 'left', widthMm: 'rest' }
  ],
  rows: [
    ...rings.fromCores.map((use) => {
      const from = rings.needs.find(({ id }) => id === use.fromNeedId)
      const to = rings.needs.find(({ id }) => id === use.needId)
      return [
        TICK,
        cell(`of ${from?.name ?? use.fromNeedId}`),
        count(use.count),
        cell(`becomes ${to?.name ?? use.needId}${use.sameSaw ? ', no outer cut needed' : ''}`)
      ]
    }),
    ...rings.coresLeft.map((core) => [
      TICK,
      { text: show.diameter(core.diameterMm), exact: core.diameterMm },
      count(core.count),
      cell('spare: keep for plugs and smaller collars')
    ])
  ]
})

const riserTable = (plan: Plan, design: Design, show: Printed): TableBlock => ({
  kind: 'table',
  name: 'risers',
  heading: 'Risers and cup bottoms to cut',
  note: '',
  columns: [
    { head: '☐', align: 'left', widthMm: 9 },
    { head: 'Riser', align: 'left', widthMm: 'rest' },
    { head: 'From cup', align: 'left', widthMm: 50 },
    { head: 'How many', align: 'right', widthMm: 22, exactUnit: 'pieces' },
    { head: 'Cut below rim', align: 'right', widthMm: 30, exactUnit: 'mm' },
    { head: 'Bore', align: 'right', widthMm: 28, exactUnit: 'mm' }
  ],
  rows: design.parts.risers.flatMap((riser) => {
    const sites = design.channels.flatMap((channel) => channel.sites)
    const seats = new Set(
      design.seats
        .filter((seat) => seat.stack.some((item) => item.kind === 'riser' && item.partId === riser.id))
        .map((seat) => seat.id)
    )
    const needed = sites.filter((site) => seats.has(site.seatId)).length * plan.quantity
    if (needed === 0) return []
    return [
      [
        TICK,
        cell(riser.name),
        cell(riser.cup.name),
        count(needed),
        riser.opened.by === 'cut' ? show.lengthCell(riser.opened.belowRimMm) : cell(''),
        riser.opened.by === 'bore' ? show.diameterCell(riser.opened.sawDiameterMm) : cell('')
      ]
    ]
  })
})
