/**
 * A step's time for each, from how long the step took at the bench.
 *
 * New time for each = time for each + (taken − set-up − run time planned) ÷ how many. Seconds. What a step has beside it (a
 * pilot, more for a wide saw) stays as it is, so the step planned again takes just as long as it took.
 * Valid: taken from its set-up and what stays, to 10⁶ s. Bookkeeping, no source.
 */
import { failed, ok, type Result } from '../outcome'
import type { BenchStep, OperationKind } from './bench-plan'
import type { StepTimes } from './bench-setup'
import type { BenchProblem } from './codes'

export const measuredTime = (
  step: BenchStep,
  times: StepTimes,
  takenS: number
): Result<{ readonly key: keyof StepTimes; readonly seconds: number }, BenchProblem> | null => {
  const key = TIME_OF_EACH[step.kind]
  if (key === undefined || step.count === 0) return null
  if (!Number.isFinite(takenS)) return failed({ code: 'not-finite', figures: { what: 'time taken' } })
  const plannedS = step.setUpS + step.runS
  const least = Math.max(0, plannedS - step.count * times[key])
  if (takenS < least || takenS > MOST_S)
    return failed({ code: 'out-of-range', figures: { what: 'time taken', value: takenS, least, most: MOST_S } })
  const seconds = times[key] + (takenS - plannedS) / step.count
  return ok({ key, seconds: Math.max(0, Math.round(seconds * 10) / 10) })
}

const MOST_S = 1_000_000

/** Steps that do one thing so many times; the parts of a concentric hole share a time and are left out. */
const TIME_OF_EACH: Partial<Record<OperationKind, keyof StepTimes>> = {
  mark: 'markPerPieceS',
  cut: 'cutPerPieceS',
  'mark-holes': 'markPerHoleS',
  pilot: 'pilotPerHoleS',
  saw: 'sawPerHoleS',
  deburr: 'deburrPerEndS',
  'cut-collar-blank': 'collarS',
  'bore-cup': 'boreCupS',
  'cut-riser': 'cutRiserS',
  wash: 'washPerChannelS',
  'fit-end': 'jointS',
  'fit-opening': 'jointS',
  'leak-test': 'leakTestPerChannelS',
  label: 'labelPerChannelS',
  pack: 'packPerUnitS'
}
