import { packCircles } from '../../shared-model/rings'
import { type RingCase, readRingCase } from './rings-case'
import { type Says, solveLines } from './solve-lines'

/** A work unit is some microseconds: the count alone would end a search at about this many seconds. */
const WORK_PER_SECOND = 300_000
/** Distances may be this much short and still count as kept. */
const VALID_MM = 0.01

/**
 * Packs equal circles on sheets, one JSON case a line, and prints what came of each. Exit code 0: every case valid and
 * at least as many as known; 1: some not; 2: the file cannot be used.
 */
export const runRings = (argv: readonly string[], io: Says): Promise<number> =>
  solveLines(argv, io, {
    usage: 'a file of cases is wanted: rings -- CASES.jsonl [--limit SECONDS]',
    defaultLimitS: 10,
    read: readRingCase,
    solve: packOne,
    passes: ({ known, upper }: RingCase, { valid, count, upperBound }) =>
      valid && count >= known && (upper === null || count <= upper) && upperBound >= known
  })

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
