import { readFile } from 'node:fs/promises'
import { packCircles } from '../../shared-model/rings'
import { type RingCase, readRingCase } from './rings-case'

interface Says {
  out(line: string): void
  err(line: string): void
}

const DEFAULT_LIMIT_S = 10
/** A work unit is some microseconds: the count alone would end a search at about this many seconds. */
const WORK_PER_SECOND = 300_000
/** Distances may be this much short and still count as kept. */
const VALID_MM = 0.01

/**
 * Packs equal circles on sheets, one JSON case a line, and prints what came of each. Exit code 0: every case valid and
 * at least as many as known; 1: some not; 2: the file cannot be used.
 */
export const runRings = async (argv: readonly string[], io: Says): Promise<number> => {
  const asked = readArguments(argv)
  if (typeof asked === 'string') {
    io.err(asked)
    return 2
  }
  const cases = await readCases(asked.file)
  if (typeof cases === 'string') {
    io.err(cases)
    return 2
  }
  let passed = 0
  for (const one of cases) {
    const line = packOne(one, asked.limitS)
    io.out(JSON.stringify(line))
    const isPossible = (one.upper === null || line.count <= one.upper) && line.upperBound >= one.known
    if (line.valid && line.count >= one.known && isPossible) passed++
  }
  io.out(`${passed} passed, ${cases.length - passed} failed`)
  return passed === cases.length ? 0 : 1
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
  return file === null ? 'a file of cases is wanted: rings -- CASES.jsonl [--limit SECONDS]' : { file, limitS }
}

const readCases = async (file: string): Promise<RingCase[] | string> => {
  let text: string
  try {
    text = await readFile(file, 'utf8')
  } catch {
    return `${file}: cannot be read`
  }
  const cases: RingCase[] = []
  for (const [at, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue
    const read = readRingCase(line)
    if (typeof read === 'string') return `${file} line ${at + 1}: ${read}`
    cases.push(read)
  }
  return cases
}

const packOne = (one: RingCase, limitS: number) => {
  const began = performance.now()
  const until = began + limitS * 950
  const budget = { work: limitS * WORK_PER_SECOND, stop: () => performance.now() >= until }
  const packed = packCircles(one, budget)
  const ms = Math.round(performance.now() - began)
  const { name } = one
  if (!packed.ok) return { name, count: 0, upperBound: 0, proven: false, ms, valid: false, centres: [] }
  const { count, upperBound, proven, centres } = packed.value
  return { name, count, upperBound, proven, ms, valid: isValid(one, centres) && count === centres.length, centres }
}

/** Checks every edge and every pair again, by code that the packing does not use. */
const isValid = (one: RingCase, centres: readonly (readonly [number, number])[]): boolean => {
  const fromEdge = one.edgeMm + one.cutDiameterMm / 2 - VALID_MM
  const apart = one.cutDiameterMm + one.webMm - VALID_MM
  return centres.every(([x, y], i) => {
    const inside = x >= fromEdge && y >= fromEdge && one.widthMm - x >= fromEdge && one.heightMm - y >= fromEdge
    return inside && centres.slice(0, i).every(([u, v]) => Math.hypot(x - u, y - v) >= apart)
  })
}
