import type { Design } from '../design'
import type { Plan } from '../plan'
import type { ChannelWater, DrawDown } from '../reservoir'
import { STAGE_NAMES } from '../words'
import type { Built } from './named'
import { cell, type Printed } from './printed'
import type { Block, SheetSection, TableBlock } from './sheet-data'

/** What to fill, how strong, to which line, at which stage, and when it will have been drawn down. */
export const firstFillCard = (plan: Plan, design: Design, built: readonly Built[], show: Printed): SheetSection => ({
  part: 'first-fill',
  number: '9',
  heading: 'First fill',
  startsPage: false,
  blocks: [
    { kind: 'facts', heading: '', columns: 3, facts: fillFacts(plan, design, show) },
    ...feedBlocks(plan, show),
    fillTable(built, show),
    stageTable(built, show),
    ...drawDownBlocks(plan, built, show)
  ]
})

const fillFacts = (plan: Plan, design: Design, show: Printed): { name: string; value: string }[] => {
  const { firstFill } = plan
  const { ec } = firstFill
  return [
    { name: 'Solution for one unit', value: show.volume(firstFill.litres) },
    { name: 'Temperature reckoned with', value: show.temperature(design.water.celsius) },
    {
      name: 'EC wanted',
      value:
        ec === null
          ? 'not known: ask for your crop'
          : `${show.decimal(ec.least, 2)} to ${show.decimal(ec.most, 2)} mS/cm`
    },
    ...(firstFill.expectedEcMsPerCm === null
      ? []
      : [{ name: 'EC to expect', value: `${show.decimal(firstFill.expectedEcMsPerCm, 2)} mS/cm` }]),
    ...(firstFill.concentrateMl === null
      ? []
      : [{ name: 'Concentrate', value: show.volume(firstFill.concentrateMl / 1000) }])
  ]
}

const feedBlocks = (plan: Plan, show: Printed): Block[] => {
  const { salts, ecConflicts } = plan.firstFill
  return [
    ...(ecConflicts.length === 0
      ? []
      : [
          {
            kind: 'text',
            heading: '',
            strong: false,
            paragraphs: ecConflicts.map((words) => `Published ranges differ: ${words}`)
          } as const
        ]),
    ...(salts.length === 0
      ? []
      : [
          {
            kind: 'table',
            name: 'salts',
            heading: 'Salts to weigh in',
            note: '',
            columns: [
              { head: 'Salt', align: 'left', widthMm: 'rest' },
              { head: 'Weigh', align: 'right', widthMm: 40, exactUnit: 'g' }
            ],
            rows: salts.map((salt) => [
              cell(salt.name),
              { text: `${show.decimal(salt.grams, 1)} g`, exact: salt.grams, strong: true }
            ])
          } as const
        ])
  ]
}

const fillTable = (built: readonly Built[], show: Printed): TableBlock => ({
  kind: 'table',
  name: 'fill-lines',
  heading: 'Fill lines',
  note: 'Mark each line on the outside, measured down from the top face.',
  columns: [
    { head: 'Channel', align: 'left', widthMm: 20 },
    { head: 'Down from top', align: 'right', widthMm: 32, exactUnit: 'mm' },
    { head: 'Solution', align: 'right', widthMm: 28, exactUnit: 'L' },
    { head: 'Of height', align: 'right', widthMm: 22 },
    { head: 'Of volume', align: 'right', widthMm: 22 },
    { head: 'Air gap', align: 'right', widthMm: 30, exactUnit: 'mm' },
    { head: 'Filled weight', align: 'right', widthMm: 'rest', exactUnit: 'g' }
  ],
  rows: built.map(({ plan }) => [
    cell(plan.mark, true),
    show.lengthCell(plan.water.fromTopMm, true),
    { text: show.volume(plan.water.litres), exact: plan.water.litres, strong: true },
    cell(show.percent(plan.water.fillShare)),
    cell(show.percent(plan.water.volumeShare)),
    plan.water.leastGapMm === null ? cell('') : show.lengthCell(plan.water.leastGapMm),
    { text: show.mass(plan.load.filledG), exact: plan.load.filledG }
  ])
})

/** A level as a distance down from the top of the upper face, as the fill line is marked. */
export const belowTop = (water: ChannelWater, levelMm: number): number => water.fromTopMm + water.levelMm - levelMm

/** The lines of each stage; channels of which the same holds stand together. */
const stageTable = (built: readonly Built[], show: Printed): TableBlock => {
  const kinds = new Map<string, { readonly marks: string[]; readonly one: Built }>()
  for (const one of built) {
    const { water } = one.plan
    const key = JSON.stringify([water.fromTopMm, water.stages])
    const kind = kinds.get(key) ?? { marks: [], one }
    kind.marks.push(one.plan.mark)
    kinds.set(key, kind)
  }
  return {
    kind: 'table',
    name: 'stages',
    heading: 'Levels by stage',
    note: 'The line keeps the gap wanted; a minus before a gap: the cup stands that deep in the solution.',
    columns: [
      { head: 'Channel', align: 'left', widthMm: 24 },
      { head: 'Stage', align: 'left', widthMm: 24 },
      { head: 'Gap wanted', align: 'right', widthMm: 25, exactUnit: 'mm' },
      { head: 'Gap', align: 'right', widthMm: 22, exactUnit: 'mm' },
      { head: 'Line below top', align: 'right', widthMm: 28, exactUnit: 'mm' },
      { head: 'Solution', align: 'right', widthMm: 24, exactUnit: 'L' },
      { head: 'Can be set', align: 'left', widthMm: 'rest' }
    ],
    rows: [...kinds.values()].flatMap(({ marks, one: { plan } }) =>
      plan.water.stages.map((stage) => [
        cell(marks.join(', '), true),
        cell(STAGE_NAMES[stage.stage]),
        show.lengthCell(stage.wantedGapMm),
        show.lengthCell(stage.gapMm),
        show.lengthCell(belowTop(plan.water, stage.safeLevelMm), true),
        { text: show.volume(stage.litres), exact: stage.litres },
        cell(stage.reachable ? 'yes' : 'not with these cups')
      ])
    )
  }
}

const drawDownBlocks = (plan: Plan, built: readonly Built[], show: Printed): Block[] => {
  const drawn = built.flatMap(({ plan: channel }) =>
    channel.water.drawDown === null ? [] : [{ mark: channel.mark, down: channel.water.drawDown }]
  )
  if (drawn.length === 0) return []
  return [
    {
      kind: 'table',
      name: 'draw-down',
      heading: 'Draw-down',
      note: `Dates hold if filled on ${plan.on}. Reckoned from daily use; look at the level rather than at the calendar.`,
      columns: [
        { head: 'Channel', align: 'left', widthMm: 22 },
        { head: 'Daily use', align: 'right', widthMm: 32, exactUnit: 'mL' },
        { head: 'Refill by', align: 'left', widthMm: 'rest' },
        { head: 'End level by', align: 'left', widthMm: 60 }
      ],
      rows: drawn.map(({ mark, down }) => [
        cell(mark, true),
        { text: show.volume(down.dailyMl / 1000), exact: down.dailyMl },
        cell(dayWords(down, down.refillDay, plan.on)),
        cell(dayWords(down, down.endDay, plan.on))
      ])
    }
  ]
}

const dayWords = (down: DrawDown, day: number | null, on: string): string =>
  day === null ? `not within ${down.days.length} days` : `day ${day}: ${dateAfter(on, day)}`

/** An ISO date so many days after another. */
const dateAfter = (on: string, days: number): string => {
  const start = Date.parse(`${on}T00:00:00Z`)
  return Number.isNaN(start) ? on : new Date(start + days * 86_400_000).toISOString().slice(0, 10)
}
