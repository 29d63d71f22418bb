import type { FindingCodes, PlanFinding, PlanProblem, ProblemCodes } from '../plan'
import { CROPS_WORDS, DESIGN_WORDS, PARTS_WORDS, PROFILE_WORDS, RANGE_WORDS, UNITS_WORDS } from './document-words'
import { LAYOUT_PROBLEM_WORDS, LAYOUT_WORDS } from './layout-words'
import {
  BENCH_PROBLEM_WORDS,
  BENCH_WORDS,
  BILL_PROBLEM_WORDS,
  BILL_WORDS,
  CUTTING_PROBLEM_WORDS,
  CUTTING_WORDS,
  RINGS_PROBLEM_WORDS,
  RINGS_WORDS
} from './making-words'
import { plainOrderIn } from './plain-order'
import { PLAN_WORDS } from './plan-words'
import { PRICING_PROBLEM_WORDS, PRICING_WORDS } from './pricing-words'
import { type Say, type SayShows, sayIn } from './say'
import { SEATING_PROBLEM_WORDS, SEATING_WORDS } from './seating-words'
import { setApart } from './set-apart'
import { STRUCTURE_PROBLEM_WORDS, STRUCTURE_WORDS } from './structure-words'
import { WATER_PROBLEM_WORDS, WATER_WORDS } from './water-words'
import type { Wording, Words } from './wording'

const FINDING_WORDS: Wording<FindingCodes> = {
  ...SEATING_WORDS,
  ...LAYOUT_WORDS,
  ...WATER_WORDS,
  ...STRUCTURE_WORDS,
  ...CUTTING_WORDS,
  ...RINGS_WORDS,
  ...BENCH_WORDS,
  ...BILL_WORDS,
  ...PRICING_WORDS,
  ...PLAN_WORDS
}

const PROBLEM_WORDS: Wording<ProblemCodes> = {
  ...RANGE_WORDS,
  ...UNITS_WORDS,
  ...PROFILE_WORDS,
  ...PARTS_WORDS,
  ...CROPS_WORDS,
  ...SEATING_PROBLEM_WORDS,
  ...LAYOUT_PROBLEM_WORDS,
  ...WATER_PROBLEM_WORDS,
  ...STRUCTURE_PROBLEM_WORDS,
  ...CUTTING_PROBLEM_WORDS,
  ...RINGS_PROBLEM_WORDS,
  ...BENCH_PROBLEM_WORDS,
  ...BILL_PROBLEM_WORDS,
  ...PRICING_PROBLEM_WORDS,
  ...DESIGN_WORDS
}

/**
 * A finding or a problem in plain English: what is the matter, and what to do. What was typed, names and entries, goes in as
 * `typed` gives it: as it is for paper, set apart for a screen.
 */
export const wordsFor = (about: PlanFinding | PlanProblem, say: Say, typed = (text: string): string => text): Words => {
  const table: Readonly<Record<string, unknown>> = 'severity' in about ? FINDING_WORDS : PROBLEM_WORDS
  // Code and figures belong together by their type; a table looked up by code alone loses that.
  const wording = table[about.code] as (figures: unknown, say: Say) => Words
  const figures = Object.entries(plainOrderIn(about.figures)).map(([name, figure]: [string, unknown]) => [
    name,
    typeof figure === 'string' ? typed(figure) : figure
  ])
  return wording(Object.fromEntries(figures), say)
}

/** A finding as one text for a screen, in the shop's units; money in the currency given. */
export const findingText = (finding: PlanFinding, shows: SayShows, currency = ''): string =>
  joined(wordsFor(finding, sayIn(shows, currency), setApart))

/** A problem as one text for a screen. */
export const problemText = (problem: PlanProblem, shows: SayShows = PLAIN, currency = ''): string =>
  joined(wordsFor(problem, sayIn(shows, currency), setApart))

const PLAIN: SayShows = { units: 'mm', inchGraduation: 16, mmGraduation: 1, decimalMark: '.' }

const joined = ({ headline, todo }: Words): string => (todo === '' ? `${headline}.` : `${headline}. ${todo}`)
