import { inchesFromMm, mm } from '../units'
import type { Caution, SignalWord } from './caution'
import data from './caution-data.json'
import { stepsOf } from './caution-steps'
import { type Condition, holds } from './condition'
import type { CautionFacts } from './facts'

/** A caution as it is kept, with the condition under which it is printed. */
export interface CautionEntry extends Omit<Caution, 'bold' | 'figures'> {
  readonly condition: Condition
}

/** Every caution the program knows. */
export const CAUTIONS = data as readonly CautionEntry[]

const SIGNAL_WORDS: readonly SignalWord[] = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE', 'SAFETY INSTRUCTIONS']

/** Steps in the order they are done. */
const STEP_ORDER = [
  'mark',
  'cut',
  'deburr',
  'mark-holes',
  'pilot',
  'saw',
  'score',
  'saw-inner',
  'saw-through',
  'cut-collar-blank',
  'bore-cup',
  'cut-riser',
  'wash',
  'fit-end',
  'fit-opening',
  'cure',
  'leak-test',
  'label',
  'pack'
]

/** Saws from this diameter on have their caution about speed in bold: our choice, common practice, no source. */
const BOLD_FROM_MM = 31.75
const BOLD_ID = 'holesaw-slow'

const wordRank = (caution: Pick<Caution, 'signalWord'>): number => SIGNAL_WORDS.indexOf(caution.signalWord)

const stepRank = (caution: Pick<Caution, 'id' | 'category'>): number =>
  Math.min(STEP_ORDER.length, ...stepsOf(caution).map((step) => STEP_ORDER.indexOf(step)))

/** In the order in which they are printed. */
const IN_ORDER = CAUTIONS.map((entry) => ({ entry, rank: wordRank(entry) * (STEP_ORDER.length + 1) + stepRank(entry) }))
  .sort((a, b) => a.rank - b.rank)
  .map(({ entry }) => entry)

/**
 * The cautions whose condition holds for any channel of a build, by signal word, then by bench step, then in the order
 * they are kept in. `weights` are what the texts name, in g.
 */
export const cautionsFor = (
  facts: readonly CautionFacts[],
  weights: { readonly heaviestFilledG: number; readonly sillLoadG: number }
): readonly Caution[] =>
  IN_ORDER.filter(({ condition }) => facts.some((each) => holds(condition, each))).map((entry) => ({
    id: entry.id,
    category: entry.category,
    signalWord: entry.signalWord,
    text: entry.text,
    reason: entry.reason,
    iso7010: entry.iso7010,
    sources: entry.sources,
    grade: entry.grade,
    bold: entry.id === BOLD_ID && facts.some((each) => each.holeSawMaxDiaIn.some(isLarge)),
    figures: {
      ...(entry.text.includes('{filledWeight}') ? { filledWeightG: weights.heaviestFilledG } : {}),
      ...(entry.text.includes('{sillLoad}') ? { sillLoadG: weights.sillLoadG } : {})
    }
  }))

const isLarge = (inches: number | string | boolean): boolean =>
  typeof inches === 'number' && inches > inchesFromMm(mm(BOLD_FROM_MM))
