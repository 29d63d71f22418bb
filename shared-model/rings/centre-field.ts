import type { Result } from '../outcome'
import { failed, ok } from '../outcome'
import type { RingsProblem } from './codes'

/** Equal circles on a sheet: cut diameter (outer saw), webs between circles, margin to the sheet's edges. */
export interface CircleSheet {
  readonly widthMm: number
  readonly heightMm: number
  readonly cutDiameterMm: number
  readonly webMm: number
  readonly edgeMm: number
}

/**
 * Where circle centres may lie: a rectangle `acrossMm` × `upMm` whose lower left corner is `marginMm` from the sheet's
 * datum corner both ways, centres at least `apartMm` from each other. Negative sizes: not one circle fits.
 */
export interface CentreField {
  readonly acrossMm: number
  readonly upMm: number
  readonly apartMm: number
  readonly marginMm: number
}

export type Point = readonly [xMm: number, yMm: number]

/** Distances this much too short still count as kept: far below what a saw can show, far above rounding. */
export const FIELD_TOLERANCE_MM = 1e-5

/** Longest sheet side and widest circle that a bench meets; beyond it the counts grow out of bounds. */
const LONGEST_MM = 100_000

export const centreField = (sheet: CircleSheet): Result<CentreField, RingsProblem> => {
  const limits = [
    ['widthMm', sheet.widthMm, 0, LONGEST_MM],
    ['heightMm', sheet.heightMm, 0, LONGEST_MM],
    ['cutDiameterMm', sheet.cutDiameterMm, 1, LONGEST_MM],
    ['webMm', sheet.webMm, 0, LONGEST_MM],
    ['edgeMm', sheet.edgeMm, 0, LONGEST_MM]
  ] as const
  for (const [what, value, least, most] of limits) {
    if (!Number.isFinite(value)) return failed({ code: 'not-finite', figures: { what }, where: { field: what } })
    if (value < least || value > most) {
      return failed({ code: 'out-of-range', figures: { what, value, least, most }, where: { field: what } })
    }
  }
  const marginMm = sheet.edgeMm + sheet.cutDiameterMm / 2
  return ok({
    acrossMm: sheet.widthMm - 2 * marginMm,
    upMm: sheet.heightMm - 2 * marginMm,
    apartMm: sheet.cutDiameterMm + sheet.webMm,
    marginMm
  })
}
