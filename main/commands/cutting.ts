import loadHighs, { type Highs } from 'highs'
import { type CutInstance, checkCertificate, checkCutPlan, solveBars } from '../../shared-model/cutting'
import { type ReadInstance, readInstance } from './cutting-instance'
import { type Says, solveLines } from './solve-lines'

/** More work than any machine does in a second: on a machine this fast or slower the clock ends a run first. */
const WORK_PER_SECOND = 3_000_000

/**
 * Solves one-dimensional cutting instances, one JSON object a line, and prints what came of each. Exit code 0: every
 * instance valid, proven within the limit and at its optimum where one is given; 1: some not; 2: the file cannot be used.
 */
export const runCutting = async (argv: readonly string[], io: Says): Promise<number> => {
  const highs = await loadHighs()
  return solveLines(argv, io, {
    usage: 'a file of instances is wanted: cutting -- INSTANCES.jsonl [--limit SECONDS]',
    defaultLimitS: 60,
    read: readInstance,
    solve: (one: ReadInstance, limitS) => solveOne(one, limitS, highs),
    passes: ({ inBars, optimum }, line) =>
      line.valid && line.proven && (optimum === null || optimum === (inBars ? line.bars : line.cost))
  })
}

const solveOne = ({ name, instance }: ReadInstance, limitS: number, highs: Highs) => {
  const began = performance.now()
  // The little that is kept back is for checking the certificate of a bound found at the last moment.
  const until = began + Math.max(limitS * 900, limitS * 1000 - 300)
  const secondsLeft = () => (until - performance.now()) / 1000
  const budget = { work: limitS * WORK_PER_SECOND, stop: () => secondsLeft() <= 0, secondsLeft }
  const solved = solveBars(instance, { budget, highs })
  const ms = Math.round(performance.now() - began)
  const check = checkCutPlan(instance, solved.patterns)
  const shown = solved.shownBy === 'search' || boundIsShown(instance, solved)
  return {
    name,
    bars: check.bars,
    cost: check.cost,
    lowerBound: solved.lowerBound,
    proven: solved.proven && shown && ms <= limitS * 1000,
    ms,
    valid: check.valid && check.cost === solved.cost
  }
}

const boundIsShown = (instance: CutInstance, { certificate, lowerBound }: ReturnType<typeof solveBars>): boolean =>
  certificate === null ? lowerBound <= 0 : checkCertificate(instance, certificate).valid
