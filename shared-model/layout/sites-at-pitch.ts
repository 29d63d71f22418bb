import { failed, ok, type Result } from '../outcome'
import type { LayoutProblem } from './codes'

/**
 * How many cup sites a channel takes at a pitch, and where their hole centres are.
 *
 * Sites = whole part of ((length − 2 × least end) ÷ pitch) + 1, and none where the length is under twice the least end.
 * Worked on whole nanometres, so 3657.6 mm at 203.2 mm counts exactly.
 *
 * Symbols: L cut length, e least distance from a cut end to a hole's centre, p pitch; all mm.
 * Valid: 0 < L ≤ 20 000, 0 < p ≤ 20 000, 0 ≤ e ≤ 20 000.
 * @source gully-sites-by-pitch
 */
export interface SitesAtPitch {
  readonly sites: number
  readonly positionsMm: readonly number[]
  /** From the datum end to the first hole's centre; 0 with no site. */
  readonly endMm: number
  /** From the last hole's centre to the far end; 0 with no site. */
  readonly farEndMm: number
}

export interface PitchWanted {
  readonly lengthMm: number
  readonly pitchMm: number
  readonly leastEndMm: number
  /** `even`: what is left over is shared by both ends. `from-datum`: the first site stands at the least end. */
  readonly spread: 'even' | 'from-datum'
}

const MOST_MM = 20_000
const NM = 1_000_000

export function sitesAtPitch(wanted: PitchWanted): Result<SitesAtPitch, LayoutProblem> {
  const wrong =
    outside('channel length', wanted.lengthMm, 0.001, MOST_MM) ??
    outside('pitch', wanted.pitchMm, 0.001, MOST_MM) ??
    outside('least end', wanted.leastEndMm, 0, MOST_MM)
  if (wrong) return failed(wrong)
  const length = Math.round(wanted.lengthMm * NM)
  const pitch = Math.round(wanted.pitchMm * NM)
  const end = Math.round(wanted.leastEndMm * NM)
  const room = length - 2 * end
  if (room < 0) return ok({ sites: 0, positionsMm: [], endMm: 0, farEndMm: 0 })
  const sites = Math.floor(room / pitch) + 1
  const run = (sites - 1) * pitch
  const first = wanted.spread === 'even' ? (length - run) / 2 : end
  const positionsMm = Array.from({ length: sites }, (_, i) => (first + i * pitch) / NM)
  return ok({ sites, positionsMm, endMm: first / NM, farEndMm: (length - run - first) / NM })
}

/**
 * The same number of sites spread as wide as they go: each has an equal share of the length, unless that would bring the
 * outer ones nearer to an end than the least end; then they run from one least end to the other.
 * Fails when the count is not a whole number from 0 to 10 000, or when more than one site has no room at all.
 */
export function sitesByCount(wanted: {
  readonly lengthMm: number
  readonly count: number
  readonly leastEndMm: number
}): Result<SitesAtPitch, LayoutProblem> {
  const { lengthMm, count, leastEndMm } = wanted
  const most = 10_000
  const wrong =
    outside('channel length', lengthMm, 0.001, MOST_MM) ??
    outside('number of sites', Number.isInteger(count) ? count : Number.NaN, 0, most) ??
    outside('least end', leastEndMm, 0, lengthMm / 2)
  if (wrong) return failed(wrong)
  if (count === 0) return ok({ sites: 0, positionsMm: [], endMm: 0, farEndMm: 0 })
  const share = lengthMm / count
  const first = count === 1 ? lengthMm / 2 : Math.max(share / 2, leastEndMm)
  const pitch = count === 1 ? 0 : (lengthMm - 2 * first) / (count - 1)
  const positionsMm = Array.from({ length: count }, (_, i) => first + i * pitch)
  return ok({ sites: count, positionsMm, endMm: first, farEndMm: first })
}

/** A problem naming both bounds when a value is not a number within them. */
export function outside(what: string, value: number, least: number, most: number): LayoutProblem | undefined {
  if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what } }
  if (value < least || value > most) return { code: 'out-of-range', figures: { what, value, least, most } }
  return undefined
}
