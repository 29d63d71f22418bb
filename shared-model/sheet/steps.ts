import type { BenchStep } from '../bench'
import type { Caution } from '../cautions'
import type { Plan } from '../plan'
import { cautionText, OPERATION_NAMES } from '../words'
import { inOrder } from './caution-pages'
import { cell, type Printed, TICK } from './printed'
import type { Cell, SheetSection, TableBlock } from './sheet-data'

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
      { head: '☐', align: 'left', widthMm: 8 },
      { head: 'No.', align: 'right', widthMm: 9 },
      { head: 'Step', align: 'left', widthMm: 36 },
      { head: 'Tool', align: 'left', widthMm: 23 },
      { head: 'Speed', align: 'right', widthMm: 22 },
      { head: 'Time', align: 'right', widthMm: 21 },
      { head: 'Mind', align: 'left', widthMm: 'rest' }
    ],
    rows: plan.bench.steps.map((step, index) => [
      TICK,
      cell(`${index + 1}`),
      { text: OPERATION_NAMES[step.kind], under: detail(step, plan, show) },
      cell(step.toolName === '' ? handWords(step) : step.toolName),
      cell(step.rpmCeiling === null ? '' : `≤\u00a0${ceilingRpm(step.rpmCeiling)} rpm`),
      timeCell(step, show),
      cell(cautionWords(step, plan.cautions, printedCautions, show))
    ])
  }
}

/** A ceiling is printed on a round figure, never above it. */
const ceilingRpm = (rpm: number): number => (rpm < 20 ? Math.floor(rpm) : Math.floor(rpm / 10) * 10)

const handWords = ({ machine }: BenchStep): string =>
  machine === 'wait' ? 'wait' : machine === 'drill' ? 'twist drill' : 'by hand'

/** What the step is done to: a piece count and the marks of the pieces it serves, or their number when there are many. */
const detail = (step: BenchStep, plan: Plan, show: Printed): string => {
  const marks = step.serves.map(
    (id) =>
      plan.pieces.find((piece) => piece.id === id)?.mark ??
      plan.channels.find((one) => one.channelId === id)?.mark ??
      ''
  )
  const order = [...plan.channels, ...plan.pieces].map(({ mark }) => mark)
  const named = [...new Set(marks.filter((mark) => mark !== ''))].sort((a, b) => order.indexOf(a) - order.indexOf(b))
  const onWhat = named.length === 0 || named.length > 8 ? '' : `on ${named.join(', ')}`
  const times = step.count > 1 ? `${step.count} ×` : ''
  const where = step.figures.about === 'sheet' ? 'on sheet' : onWhat
  return [times, figureWords(step, show), where].filter((part) => part !== '').join(' ')
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

/** A row stays on one page: so many cautions to a step, the gravest first; all stand on the caution pages. */
const MOST_BESIDE = 3

/** The step's cautions, each where it first comes up. */
const cautionWords = (
  step: BenchStep,
  cautions: readonly Caution[],
  printedCautions: Set<string>,
  show: Printed
): string =>
  inOrder(cautions)
    .filter(({ id }) => step.cautionIds.includes(id) && !printedCautions.has(id))
    .slice(0, MOST_BESIDE)
    .map((caution) => {
      printedCautions.add(caution.id)
      return `${caution.signalWord}: ${cautionText(caution, show.say)}`
    })
    .join('\n')
