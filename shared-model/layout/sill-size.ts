import { failed, ok, type Result } from '../outcome'
import type { SillSize } from './channel-layout'
import type { LayoutProblem } from './codes'
import type { Sill } from './layout'

/** Longest sill that is taken: longer is a slip of the decimal mark. */
const MOST_SILL_MM = 20_000

/**
 * Length and depth of the sill: of several readings of an uneven reveal the least rules (common practice, no source).
 * Fails when a side has no reading, or one outside 1 mm to 20 m.
 * @source reveal-least-reading
 */
export function sillSize(sill: Pick<Sill, 'lengthsMm' | 'depthsMm'>): Result<SillSize, LayoutProblem> {
  const length = least('sill length', 'sill.lengthsMm', sill.lengthsMm)
  if (!length.ok) return length
  const depth = least('sill depth', 'sill.depthsMm', sill.depthsMm)
  if (!depth.ok) return depth
  return ok({ lengthMm: length.value, depthMm: depth.value })
}

function least(what: string, field: string, readingsMm: readonly number[]): Result<number, LayoutProblem> {
  if (readingsMm.length === 0) return failed({ code: 'no-sill-reading', figures: { side: what }, where: { field } })
  const value = Math.min(...readingsMm)
  if (!Number.isFinite(value) || readingsMm.some((mm) => !(mm >= 1 && mm <= MOST_SILL_MM))) {
    const wrong = readingsMm.find((mm) => !(mm >= 1 && mm <= MOST_SILL_MM)) ?? value
    if (!Number.isFinite(wrong)) return failed({ code: 'not-finite', figures: { what }, where: { field } })
    return failed({
      code: 'out-of-range',
      figures: { what, value: wrong, least: 1, most: MOST_SILL_MM },
      where: { field }
    })
  }
  return ok(value)
}
