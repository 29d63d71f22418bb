import { readFile } from 'node:fs/promises'
import loadHighs, { type Highs } from 'highs'
import { type CutInstance, checkCertificate, checkCutPlan, solveBars } from '../../shared-model/cutting'
import { type ReadInstance, readInstance } from './cutting-instance'

interface Says {
  out(line: string): void
  err(line: string): void
}

const DEFAULT_LIMIT_S = 60
/** More work than any machine does in a second: on a machine this fast or slower the clock ends a run first. */
const WORK_PER_SECOND = 3_000_000

/**
 * Solves one-dimensional cutting instances, one JSON object a line, and prints what came of each. Exit code 0: every
 * instance valid, proven within the limit and at its optimum where one is given; 1: some not; 2: the file cannot be used.
 */
export const runCutting = async (argv: readonly string[], io: Says): Promise<number> => {
  const asked = readArguments(argv)
  if (typeof asked === 'string') {
    io.err(asked)
    return 2
  }
  const instances = await readInstances(asked.file)
  if (typeof instances === 'string') {
    io.err(instances)
    return 2
  }
  const highs = await loadHighs()
  let passed = 0
  for (const instance of instances) {
    const line = solveOne(instance, asked.limitS, highs)
    io.out(JSON.stringify(line))
    const answer = instance.inBars ? line.bars : line.cost
    if (line.valid && line.proven && (instance.optimum === null || instance.optimum === answer)) passed++
  }
  io.out(`${passed} passed, ${instances.length - passed} failed`)
  return passed === instances.length ? 0 : 1
}

const readArguments = (argv: readonly string[]): { file: string; limitS: number } | string => {
  let file: string | null = null
  let limitS = DEFAULT_LIMIT_S
  for (let at = 0; at < argv.length; at++) {
    const word = argv[at] ?? ''
    if (word === '--limit') {
      limitS = Number(argv[++at])
      if (!Number.isFinite(limitS) || limitS <= 0) return `--limit: seconds above 0 are wanted, not "${argv[at] ?? ''}"`
    } else if (word.startsWith('--')) return `${word}: there is no such option`
    else if (file === null) file = word
    else return `${word}: one file is wanted`
  }
  return file === null
    ? 'a file of instances is wanted: cutting -- INSTANCES.jsonl [--limit SECONDS]'
    : { file, limitS }
}

const readInstances = async (file: string): Promise<ReadInstance[] | string> => {
  let text: string
  try {
    text = await readFile(file, 'utf8')
  } catch {
    return `${file}: cannot be read`
  }
  const instances: ReadInstance[] = []
  for (const [at, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue
    const read = readInstance(line)
    if (typeof read === 'string') return `${file} line ${at + 1}: ${read}`
    instances.push(read)
  }
  return instances
}

const solveOne = ({ name, instance }: ReadInstance, limitS: number, highs: Highs) => {
  const began = performance.now()
  const until = began + limitS * 1000
  const budget = { work: limitS * WORK_PER_SECOND, stop: () => performance.now() >= until }
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
