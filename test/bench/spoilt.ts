import {
  DEMOS,
  type Design,
  defaultWorkshop,
  parseDesignText,
  parseWorkshopText,
  type Workshop
} from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { spoiltDesigns, spoiltWorkshops } from '../proofs/mutated'
import { type BenchFigure, type BenchRow, measureWarm } from './measure'

const ON = '2026-05-01'
const SEED = 20_261_125
const DESIGNS = 1_500
const WORKSHOPS = 300
/** Little work for the searches, as in the proof: what bounds them is their budget, and this is about the rest. */
const BUDGET = { work: 50, stop: () => false }
/** Texts read before the first that counts: the engine compiles what runs often. */
const WARM_UP = 300
/** The slowest at first sight, each measured again by itself. */
const LOOKED_AT = 2

type Work = (text: string, workshop: Workshop) => number

/** Parser and plan of spoilt documents, those of the proofs: the median, and the worst by itself. */
export const benchSpoilt = (): readonly (BenchRow | BenchFigure)[] => {
  const design = DEMOS[0]?.design
  if (design === undefined) throw new Error('there is no demo')
  const asWorkshop: Work = (text, { times }) => {
    const parsed = parseWorkshopText(text)
    return parsed.ok ? planned(design, { ...parsed.value, times }) : parsed.problem.length
  }
  return [
    ...worstOf('spoilt designs', [...spoiltDesigns(SEED, DESIGNS)], asDesign),
    ...worstOf('spoilt workshops', [...spoiltWorkshops(SEED, WORKSHOPS)], asWorkshop)
  ]
}

const asDesign: Work = (text, workshop) => {
  const parsed = parseDesignText(text)
  return parsed.ok ? planned(parsed.value, workshop) : parsed.problem.length
}

const planned = (design: Design, workshop: Workshop): number =>
  evaluate(design, workshop, ON, { budget: BUDGET }).findings.length

/** Another time for a tool change each run, so that no drilling order is known from the run before. */
const anotherWorkshop = (run: number): Workshop => {
  const workshop = defaultWorkshop()
  return { ...workshop, times: { ...workshop.times, toolChangeS: workshop.times.toolChangeS + run / 4096 } }
}

function worstOf(name: string, texts: readonly string[], work: Work): readonly (BenchRow | BenchFigure)[] {
  for (const [run, text] of texts.slice(0, WARM_UP).entries()) work(text, anotherWorkshop(run))
  const seen = texts.map((text, run) => {
    const workshop = anotherWorkshop(run)
    const used = process.cpuUsage()
    work(text, workshop)
    const { user, system } = process.cpuUsage(used)
    return { text, ms: (user + system) / 1000 }
  })
  const slow = seen.sort((a, b) => b.ms - a.ms).slice(0, LOOKED_AT)
  const rows = slow.map(({ text }) =>
    measureWarm(`the worst of ${texts.length} ${name}`, anotherWorkshop, (workshop) => work(text, workshop))
  )
  const [worst] = rows.sort((a, b) => (b.cpu?.minMs ?? 0) - (a.cpu?.minMs ?? 0))
  const median = seen[seen.length >> 1]?.ms ?? 0
  return [
    { name: `${name}, median at first sight`, figure: `${median.toFixed(1)} ms of a processor` },
    ...(worst === undefined ? [] : [worst])
  ]
}
