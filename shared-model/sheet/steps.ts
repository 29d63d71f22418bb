import type { BenchStep, OperationKind } from '../bench'
import type { Caution } from '../cautions'
import type { Plan } from '../plan'
import { cell, type Printed, TICK } from './printed'
import type { Cell, SheetSection, TableBlock } from './sheet-data'

/** What each kind of step is called at the bench. */
const STEP_WORDS: Readonly<Record<OperationKind, string>> = {
  mark: 'Mark the bars',
  cut: 'Cut to length',
  deburr: 'Deburr the ends',
  'mark-holes': 'Mark hole centres',
  pilot: 'Drill pilots',
  saw: 'Saw holes',
  score: 'Score with the larger saw, not through',
  'saw-inner': 'Saw through with the smaller saw',
  'saw-through': 'Finish with the larger saw',
  'cut-collar-blank': 'Cut blanks from sheet',
  'bore-cup': 'Bore cup bottoms',
  'cut-riser': 'Cut risers',
  wash: 'Wash',
  'fit-end': 'Fit and seal the ends',
  'fit-opening': 'Fit the openings',
  cure: 'Leave to cure',
  'leak-test': 'Leak test',
  label: 'Label',
  pack: 'Pack'
}

/** The order of work: tick, what, with which tool, how fast, how long, and the caution that belongs to it. */
export const stepPages = (plan: Plan, show: Printed): SheetSection => ({
  part: 'steps',
  number: '6',
  heading: 'Steps in order',
  startsPage: true,
  blocks: [
    {
      kind: 'facts',
      heading: '',
      columns: 4,
      facts: [
        { name: 'Worked time', value: show.duration(plan.bench.workedS) },
        { name: 'With waits', value: show.duration(plan.bench.elapsedS) },
        { name: 'Tool changes', value: `${plan.bench.toolChanges}` },
        {
          name: 'Fewest possible',
          value: plan.bench.proven
            ? `${plan.bench.leastToolChanges} (proven)`
            : `at least ${plan.bench.leastToolChanges}`
        }
      ]
    },
    stepTable(plan, show)
  ]
})

const stepTable = (plan: Plan, show: Printed): TableBlock => {
  const printedCautions = new Set<string>()
  return {
    kind: 'table',
    name: 'steps',
    heading: '',
    note: 'A speed is a ceiling: slow, and slower as the saw grows. Where no published speed exists for a plastic it is common practice.',
    columns: [
      { head: '☐', align: 'left', widthMm: 9 },
      { head: 'No.', align: 'right', widthMm: 9 },
      { head: 'Step', align: 'left', widthMm: 50 },
      { head: 'Tool', align: 'left', widthMm: 28 },
      { head: 'Speed', align: 'right', widthMm: 19 },
      { head: 'Time', align: 'right', widthMm: 17 },
      { head: 'Mind', align: 'left', widthMm: 'rest' }
    ],
    rows: plan.bench.steps.map((step, index) => [
      TICK,
      cell(`${index + 1}`),
      { text: STEP_WORDS[step.kind], under: detail(step, plan, show) },
      cell(step.toolName === '' ? handWords(step) : step.toolName),
      cell(step.rpmCeiling === null ? '' : `≤ ${Math.round(step.rpmCeiling)} rpm`),
      timeCell(step, show),
      cell(cautionWords(step, plan.cautions, printedCautions))
    ])
  }
}

const handWords = (step: BenchStep): string => (step.machine === 'wait' ? 'wait' : 'by hand')

/** What the step is done to: a piece count and the marks of the pieces it serves, or their number when there are many. */
const detail = (step: BenchStep, plan: Plan, show: Printed): string => {
  const marks = step.serves.map(
    (id) =>
      plan.pieces.find((piece) => piece.id === id)?.mark ??
      plan.channels.find((one) => one.channelId === id)?.mark ??
      ''
  )
  const named = [...new Set(marks.filter((mark) => mark !== ''))]
  const onWhat = named.length === 0 || named.length > 8 ? '' : `on ${named.join(', ')}`
  const times = step.count > 1 ? `${step.count} ×` : ''
  return [times, figureWords(step, show), onWhat].filter((part) => part !== '').join(' ')
}

/** A length or diameter among the step's figures, by the unit in its name. */
const figureWords = (step: BenchStep, show: Printed): string =>
  Object.entries(step.figures)
    .flatMap(([name, value]) => {
      if (typeof value === 'string') return /name|mark/i.test(name) ? [value] : []
      if (/diameterMm$/i.test(name)) return [show.diameter(value)]
      if (/belowRimMm$/i.test(name)) return [`${show.length(value)} below the rim`]
      return /(lengthMm|stopMm)$/i.test(name) ? [show.length(value)] : []
    })
    .join(', ')

const timeCell = (step: BenchStep, show: Printed): Cell => {
  const worked = step.setUpS + step.runS
  if (step.waitS > 0 && worked === 0) return cell(show.duration(step.waitS))
  return step.waitS > 0
    ? { text: show.duration(worked), under: `+ ${show.duration(step.waitS)}` }
    : cell(show.duration(worked))
}

/** The step's cautions: in full where each first comes up, later by its signal word only where it is a grave one. */
const cautionWords = (step: BenchStep, cautions: readonly Caution[], printedCautions: Set<string>): string =>
  step.cautionIds
    .flatMap((id) => {
      const caution = cautions.find((one) => one.id === id)
      if (caution === undefined || printedCautions.has(id)) return []
      printedCautions.add(id)
      return [`${caution.signalWord}: ${caution.text}`]
    })
    .join('\n')
