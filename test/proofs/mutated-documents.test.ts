import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
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
import { evaluate, type Plan } from '../../shared-model/plan'
import { anyDesign } from '../designs/arbitrary'
import { spoilt } from './mutate'
import { counted, LIMIT_MS, numbersFrom, SEED } from './proving'

const DOCUMENTS = counted(200_000)
const ON = '2026-05-01'
/** Little work for the searches: what a search finds is proved elsewhere, here only that it ends and says figures. */
const BUDGET = { work: 50, stop: () => false }
/** One accepted plan in so many has its bars and sheets planned; the others are worked out without. */
const WHOLE_PLAN_EVERY = 10
/** No document holds the program up longer than this, ms, on a machine that does other things besides. */
const LONGEST_MS = 20_000

/** Fields of a plan that measure a thing: a place or a gap may lie below its zero, these may not. */
const NEVER_NEGATIVE =
  /^(lengthMm|leftoverMm|trimMm|kerfMm|diameterMm|widthMm|depthMm|heightMm|litres|massG)$|(LengthMm|Litres|MassG)$/

/** Paths of figures that are not finite, or negative where a thing is measured. */
function wrongFigures(value: unknown, key = '', path = ''): readonly string[] {
  if (typeof value === 'number') {
    const wrong = !Number.isFinite(value) || (value < 0 && NEVER_NEGATIVE.test(key))
    return wrong ? [`${path} = ${value}`] : []
  }
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, each]) => wrongFigures(each, name, `${path}.${name}`))
}

/** What was asked of a finding or problem may be negative, and is quoted as it was. */
const measured = ({ findings, problems, ...plan }: Plan): object => ({
  ...plan,
  counts: [findings.length, problems.length]
})

const stringsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : []
}

/** The design with the parts it uses and no others, so that a change falls on what counts. */
const lean = (design: Design): Design => {
  const { channels, seats } = design
  // Every id named in the design, then every id named in a part that is: collars name saws, risers name cups.
  const used = new Set(stringsIn([channels, seats]))
  const all = Object.values(design.parts).flat()
  for (const part of [...all, ...all]) if (used.has(part.id)) for (const id of stringsIn(part)) used.add(id)
  const kept = <T extends { readonly id: string }>(list: readonly T[]) => list.filter(({ id }) => used.has(id))
  const { profiles, closures, cups, risers, collars, plantCollars, saws } = design.parts
  return {
    ...design,
    crops: design.crops.slice(0, 3),
    channels: channels.map((channel) => ({
      ...channel,
      sites: channel.sites.map((site) => ({ ...site, cropId: null }))
    })),
    parts: {
      profiles: kept(profiles),
      closures: kept(closures),
      cups: kept(cups),
      risers: kept(risers),
      collars: kept(collars),
      plantCollars: kept(plantCollars),
      saws: kept(saws)
    }
  }
}

const DESIGNS = [...DEMOS.map(({ design }) => design), ...fc.sample(anyDesign, { seed: SEED, numRuns: 12 }).map(lean)]
const WORKSHOPS = [...DEMOS.map(({ workshop }) => workshop), defaultWorkshop()]

interface Tally {
  readonly codes: Map<string, number>
  accepted: number
  longestMs: number
}

function count(tally: Tally, problems: readonly DocumentProblem[]): void {
  expect(problems.length).toBeGreaterThan(0)
  for (const { code } of problems.slice(0, 1)) tally.codes.set(code, (tally.codes.get(code) ?? 0) + 1)
}

function tried(tally: Tally, text: string, go: () => void): void {
  const begun = performance.now()
  try {
    go()
  } catch (error) {
    throw new Error(`this document: ${text.slice(0, 200_000)}`, { cause: error })
  }
  tally.longestMs = Math.max(tally.longestMs, performance.now() - begun)
}

function told(what: string, runs: number, { codes, accepted, longestMs }: Tally): void {
  const refusals = [...codes].sort(([, a], [, b]) => b - a).map(([code, times]) => `${code} ${times}`)
  console.log(
    `mutated documents: seed ${SEED}, ${runs} ${what}, ${accepted} accepted and worked out, ` +
      `longest ${longestMs.toFixed(0)} ms; refused first for ${refusals.join(', ')}`
  )
}

describe('a document that was spoilt', () => {
  it(
    'as a design is refused by name, or is worked out in figures that mean something',
    () => {
      const runs = Math.ceil(DOCUMENTS * 0.8)
      const next = numbersFrom(SEED)
      const tally: Tally = { codes: new Map(), accepted: 0, longestMs: 0 }
      const texts = DESIGNS.map((design) => printDesign(design))
      const workshop = defaultWorkshop()
      expect(texts.map((text) => parseDesignText(text).ok)).not.toContain(false)
      for (let run = 0; run < runs; run += 1) {
        const which = run % DESIGNS.length
        const text = spoilt(DESIGNS[which] ?? {}, texts[which] ?? '', next)
        tried(tally, text, () => {
          const parsed = parseDesignText(text)
          if (!parsed.ok) return count(tally, parsed.problem)
          tally.accepted += 1
          const whole = tally.accepted % WHOLE_PLAN_EVERY === 0
          const plan = evaluate(
            parsed.value,
            workshop,
            ON,
            whole ? { budget: BUDGET } : { budget: BUDGET, cuts: 'left-out' }
          )
          expect(wrongFigures(measured(plan))).toEqual([])
          expect(
            wrongFigures({ findings: plan.findings, problems: plan.problems }).filter((each) =>
              /NaN|Infinity/.test(each)
            )
          ).toEqual([])
        })
      }
      expect(Reflect.get({}, 'polluted')).toBeUndefined()
      expect(tally.accepted).toBeGreaterThan(runs / 50)
      expect(tally.longestMs).toBeLessThan(LONGEST_MS)
      told('designs', runs, tally)
    },
    LIMIT_MS
  )

  it(
    'as a workshop is refused by name, or prices a design in figures that mean something',
    () => {
      const runs = Math.ceil(DOCUMENTS * 0.2)
      const next = numbersFrom(SEED + 1)
      const tally: Tally = { codes: new Map(), accepted: 0, longestMs: 0 }
      const texts = WORKSHOPS.map((workshop) => printWorkshop(workshop))
      const [design] = DESIGNS.slice(-1)
      if (design === undefined) throw new Error('there is no design to price')
      for (let run = 0; run < runs; run += 1) {
        const which = run % WORKSHOPS.length
        const text = spoilt(WORKSHOPS[which] ?? {}, texts[which] ?? '', next)
        tried(tally, text, () => {
          const parsed = parseWorkshopText(text)
          if (!parsed.ok) return count(tally, parsed.problem)
          tally.accepted += 1
          const plan = evaluateWith(design, parsed.value, tally.accepted % WHOLE_PLAN_EVERY === 0)
          expect(wrongFigures(measured(plan))).toEqual([])
        })
      }
      expect(tally.accepted).toBeGreaterThan(runs / 50)
      expect(tally.longestMs).toBeLessThan(LONGEST_MS)
      told('workshops', runs, tally)
    },
    LIMIT_MS
  )
})

const evaluateWith = (design: Design, workshop: Workshop, whole: boolean): Plan =>
  evaluate(design, workshop, ON, whole ? { budget: BUDGET } : { budget: BUDGET, cuts: 'left-out' })
