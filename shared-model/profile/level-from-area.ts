/**
 * The level at which the bore holds a given wet area: the inverse of `wetArea`, by halving, to 1e-9 mm.
 *
 * Symbols: area in mm2, level in mm above the inside floor. Valid from 0 to the area of the bore; outside, a problem with
 * both bounds. An area within 1e-9 of the full bore counts as full.
 *
 * @source geometry
 */
import { failed, ok, type Result } from '../outcome'
import { type Mm, type Mm2, mm } from '../units'
import { boreArea, insideHeight, wetArea } from './bore-area'
import type { ProfileProblem } from './codes'
import type { Section } from './profile'

export function levelFromArea(section: Section, area: Mm2): Result<Mm, ProfileProblem> {
  const full = boreArea(section)
  const slack = full * 1e-9
  if (!(area >= -slack && area <= full + slack)) {
    const figures = { valueMm2: Number.isFinite(area) ? area : -1, leastMm2: 0, mostMm2: full }
    return failed({ code: 'wet-area-outside-bore', figures })
  }
  let [low, high] = [0, insideHeight(section) as number]
  if (area >= full) return ok(mm(high))
  while (high - low > 1e-10) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) break
    if (wetArea(section, mm(middle)) < area) low = middle
    else high = middle
  }
  return ok(mm((low + high) / 2))
}
