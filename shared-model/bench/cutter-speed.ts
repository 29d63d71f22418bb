import type { Result } from '../outcome'
import { failed, ok } from '../outcome'
import type { Mm } from '../units'
import type { BenchProblem } from './codes'

/** Narrowest and widest cutter, and the range of surface speeds, that a hand-held drill or a press turns. */
const LEAST_MM = 0.5
const MOST_MM = 300
const LEAST_MM_PER_MIN = 1
const MOST_MM_PER_MIN = 1e6

/**
 * Answers: how fast does a cutter turn whose teeth move at a given speed?
 *
 * rpm = v / (π D); in the trade's units rpm = 12 v / (π D) with v in ft/min and D in inches.
 * v surface speed in mm/min, D cutter diameter in mm.
 * Valid for 0.5 ≤ D ≤ 300 mm and 1 mm/min ≤ v ≤ 1000 m/min.
 * @source speed-article
 */
export const cutterSpeed = (
  surfaceMmPerMin: number,
  diameterMm: Mm
): Result<{ readonly rpm: number }, BenchProblem> => {
  const limits = [
    ['surfaceMmPerMin', surfaceMmPerMin, LEAST_MM_PER_MIN, MOST_MM_PER_MIN],
    ['diameterMm', diameterMm, LEAST_MM, MOST_MM]
  ] as const
  for (const [what, value, least, most] of limits) {
    if (!Number.isFinite(value)) return failed({ code: 'not-finite', figures: { what } })
    if (value < least || value > most) return failed({ code: 'out-of-range', figures: { what, value, least, most } })
  }
  return ok({ rpm: surfaceMmPerMin / (Math.PI * diameterMm) })
}
