import { failed, ok, type Result } from '../outcome'
import { MM_PER_INCH, type Mm } from '../units'
import type { BillProblem } from './codes'

export interface CementSize {
  /** Nominal pipe size as its maker names it. */
  readonly nominal: string
  readonly outsideMm: number
  readonly jointsPerQuart: number
}

/**
 * Average solvent-cement joints from one US quart, by nominal pipe size (laboratory estimates). Outside diameters are those of
 * ASTM D1785; the inch figure is 0.840, 1.050, 1.315, 1.900, 2.375, 3.500, 4.500, 6.625, 8.625.
 *
 * @source cement-joints
 */
export const CEMENT_JOINTS: readonly CementSize[] = (
  [
    ['1/2', 0.84, 300],
    ['3/4', 1.05, 200],
    ['1', 1.315, 125],
    ['1-1/2', 1.9, 90],
    ['2', 2.375, 60],
    ['3', 3.5, 40],
    ['4', 4.5, 30],
    ['6', 6.625, 10],
    ['8', 8.625, 5]
  ] as const
).map(([nominal, outsideIn, jointsPerQuart]) => ({ nominal, outsideMm: outsideIn * MM_PER_INCH, jointsPerQuart }))

/** Outside size of the last row, in mm. */
export const MOST_CEMENT_OUTSIDE_MM = 8.625 * MM_PER_INCH

/** A US quart is 57.75 cubic inches exactly. */
const ML_PER_QUART = 946.352946
/** A profile sold as a size may be this much over it. */
const SIZE_TOLERANCE_MM = 0.5

/**
 * Joints from one quart of cement: the row of the next listed size up, so that the tin never runs short by interpolation.
 *
 * @param outsideMm outside diameter, or the outside perimeter of a rectangle divided by pi; 1 to 219 mm, else `out-of-range`
 * @source cement-joints
 */
export function jointsPerQuart(outsideMm: Mm): Result<CementSize, BillProblem> {
  const row = CEMENT_JOINTS.find((size) => outsideMm <= size.outsideMm + SIZE_TOLERANCE_MM)
  if (row !== undefined && outsideMm >= 1) return ok(row)
  const figures = { what: 'outsideMm', value: outsideMm, least: 1, most: MOST_CEMENT_OUTSIDE_MM }
  if (!Number.isFinite(outsideMm)) return failed({ code: 'not-finite', figures: { what: 'outsideMm' } })
  return failed({ code: 'out-of-range', figures })
}

/** Cement for one joint of this size in mL; primer takes half of it (twice as many joints a quart). */
export const cementPerJointMl = (size: CementSize): number => ML_PER_QUART / size.jointsPerQuart
