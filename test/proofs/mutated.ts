import fc from 'fast-check'
import {
  DEMOS,
  type Design,
  type DocumentProblem,
  defaultWorkshop,
  parseDesignText,
  parseWorkshopText,
  printDesign,
  printWorkshop,
  type Workshop
} from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { anyDesign, anyWorkshop } from '../designs/arbitrary'
import { wrongInPlan } from './figures'
import { lean } from './lean'
import { spoilt } from './mutate'
import { numbersFrom, SEED } from './proving'
import { type Tally, taking } from './tally'

const ON = '2026-05-01'
/** Little work for the searches: what a search finds is proved elsewhere, here only that it ends and says figures. */
const BUDGET = { work: 50, stop: () => false }
/** One accepted plan in so many has its bars and sheets planned; the others are worked out without. */
const WHOLE_PLAN_EVERY = 10

/** The documents that are spoilt: the same for every share of the proof. */
const designs = kept(() => [
  ...DEMOS.map(({ design }) => design),
  ...fc.sample(anyDesign, { seed: SEED, numRuns: 12 }).map(lean)
])
const workshops = kept((): Workshop[] => [
  ...DEMOS.map(({ workshop }) => workshop),
  defaultWorkshop(),
  ...fc.sample(anyWorkshop, { seed: SEED, numRuns: 3 })
])

/** So many designs spoilt, each refused by name or worked out in figures that mean something; throws on the first that is not. */
export const mutatedDesigns = (seed: number, runs: number): Tally => {
  const workshop = defaultWorkshop()
  return spoiltAll(designs(), printDesign, parseDesignText, seed, runs, (design, whole) =>
    checkPlan(design, workshop, whole)
  )
}

/** Likewise of workshops, each that is accepted pricing a design. */
export const mutatedWorkshops = (seed: number, runs: number): Tally => {
  const design = designs().at(-1)
  if (design === undefined) throw new Error('there is no design to price')
  return spoiltAll(workshops(), printWorkshop, parseWorkshopText, seed, runs, (workshop, whole) =>
    checkPlan(design, workshop, whole)
  )
}

/** The texts of so many spoilt designs: the first proof's own, for a bench. */
export const spoiltDesigns = (seed: number, runs: number): Iterable<string> =>
  spoiltTexts(designs(), printDesign, seed, runs)

export const spoiltWorkshops = (seed: number, runs: number): Iterable<string> =>
  spoiltTexts(workshops(), printWorkshop, seed, runs)

function* spoiltTexts<T extends object>(
  documents: readonly T[],
  print: (document: T) => string,
  seed: number,
  runs: number
): Generator<string> {
  const next = numbersFrom(seed)
  const texts = documents.map(print)
  for (let run = 0; run < runs; run += 1) {
    const which = run % documents.length
    yield spoilt(documents[which] ?? {}, texts[which] ?? '', next)
  }
}

type Parse<T> = (
  text: string
) => { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: readonly DocumentProblem[] }

function spoiltAll<T extends object>(
  documents: readonly T[],
  print: (document: T) => string,
  parse: Parse<T>,
  seed: number,
  runs: number,
  check: (document: T, whole: boolean) => void
): Tally {
  for (const document of documents) if (!parse(print(document)).ok) throw new Error('a document to spoil is not one')
  const { count, timed, tally } = taking()
  let accepted = 0
  let run = -1
  for (const text of spoiltTexts(documents, print, seed, runs)) {
    run += 1
    try {
      timed(`seed ${seed}, document ${run}`, () => {
        const parsed = parse(text)
        if (parsed.ok) {
          accepted += 1
          count('accepted')
          check(parsed.value, accepted % WHOLE_PLAN_EVERY === 0)
        } else if (parsed.problem[0] === undefined) throw new Error('refused without a problem')
        else count(`refused for ${parsed.problem[0].code}`)
      })
    } catch (error) {
      throw new Error(`${String(error)}; seed ${seed}, document ${run}: ${text.slice(0, 200_000)}`, { cause: error })
    }
  }
  if (Reflect.get({}, 'polluted') !== undefined) throw new Error('a document reached the prototype of all objects')
  return tally()
}

function checkPlan(design: Design, workshop: Workshop, whole: boolean): void {
  const plan = evaluate(design, workshop, ON, whole ? { budget: BUDGET } : { budget: BUDGET, cuts: 'left-out' })
  const wrong = wrongInPlan(plan)
  if (wrong !== null) throw new Error(`the plan says ${wrong}`)
}

function kept<T>(make: () => T): () => T {
  let made: T | null = null
  return () => {
    made ??= make()
    return made
  }
}
