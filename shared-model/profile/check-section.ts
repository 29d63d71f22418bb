import type { ProfileProblem } from './codes'
import type { Section } from './profile'

/** Longest side that is taken for a section, mm. */
const MOST_MM = 100_000

/** Why a section cannot be worked with, both bounds named: a side, a wall of 0 to half the shorter side, a corner radius. */
export function checkSection(section: Section): ProfileProblem | null {
  const { widthMm, heightMm, averageWallMm, cornerRadiusMm } = section
  for (const [size, valueMm] of [
    ['width', widthMm],
    ['height', heightMm]
  ] as const) {
    if (valueMm > 0 && valueMm <= MOST_MM) continue
    return { code: 'profile-size-outside', figures: { size, valueMm: finite(valueMm), leastMm: 0, mostMm: MOST_MM } }
  }
  const mostMm = Math.min(widthMm, heightMm) / 2
  for (const [wall, valueMm] of [
    ['average', averageWallMm],
    ['least', section.leastWallMm]
  ] as const) {
    if (valueMm >= 0 && valueMm < mostMm) continue
    return { code: 'wall-outside', figures: { wall, valueMm: finite(valueMm), leastMm: 0, mostMm } }
  }
  if (cornerRadiusMm >= 0 && cornerRadiusMm <= mostMm) return null
  return { code: 'corner-radius-outside', figures: { valueMm: finite(cornerRadiusMm), leastMm: 0, mostMm } }
}

const finite = (value: number): number => (Number.isFinite(value) ? value : -1)
