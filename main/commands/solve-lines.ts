import { readDocument } from '../files/read-document'

export interface Says {
  out(line: string): void
  err(line: string): void
}

/** A command that solves a file of cases, one JSON object a line. */
export interface LineJob<Case, Answer> {
  readonly usage: string
  readonly defaultLimitS: number
  /** A case of one line, or in words why it is none. */
  readonly read: (line: string) => Case | string
  readonly solve: (one: Case, limitS: number) => Answer
  readonly passes: (one: Case, answer: Answer) => boolean
}

/** Prints an answer a line and `N passed, N failed`. Exit code 0: all passed; 1: some not; 2: the file cannot be used. */
export const solveLines = async <Case, Answer>(
  argv: readonly string[],
  io: Says,
  job: LineJob<Case, Answer>
): Promise<number> => {
  const asked = readArguments(argv, job.usage, job.defaultLimitS)
  const cases = typeof asked === 'string' ? asked : await readCases(asked.file, job.read)
  if (typeof asked === 'string' || typeof cases === 'string') {
    io.err(typeof asked === 'string' ? asked : String(cases))
    return 2
  }
  let passed = 0
  for (const one of cases) {
    const answer = job.solve(one, asked.limitS)
    io.out(JSON.stringify(answer))
    if (job.passes(one, answer)) passed++
  }
  io.out(`${passed} passed, ${cases.length - passed} failed`)
  return passed === cases.length ? 0 : 1
}

const readArguments = (
  argv: readonly string[],
  usage: string,
  defaultLimitS: number
): { file: string; limitS: number } | string => {
  let file: string | null = null
  let limitS = defaultLimitS
  for (let at = 0; at < argv.length; at++) {
    const word = argv[at] ?? ''
    if (word === '--limit') {
      limitS = Number(argv[++at])
      if (!Number.isFinite(limitS) || limitS <= 0) return `--limit: seconds above 0 are wanted, not "${argv[at] ?? ''}"`
    } else if (word.startsWith('--')) return `${word}: there is no such option`
    else if (file === null) file = word
    else return `${word}: one file is wanted`
  }
  return file === null || file === '' ? usage : { file, limitS }
}

const readCases = async <Case>(file: string, read: (line: string) => Case | string): Promise<Case[] | string> => {
  const document = await readDocument(file)
  if (!document.ok) return `${file}: cannot be read: ${document.problem.code.replaceAll('-', ' ')}`
  const { text } = document.value
  const cases: Case[] = []
  // A byte order mark in front is no part of the first line.
  for (const [at, line] of text
    .replace(/^\uFEFF/, '')
    .split('\n')
    .entries()) {
    if (line.trim() === '') continue
    const one = read(line)
    if (typeof one === 'string') return `${file} line ${at + 1}: ${one}`
    cases.push(one)
  }
  return cases
}
