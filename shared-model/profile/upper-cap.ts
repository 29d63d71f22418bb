/**
 * The strip of the upper face that a hole takes away: area, first and second moment about the section's mid height.
 *
 *     rectangle:  area = d t,  first = area (h/2 - t/2),  second = d t^3 / 12 + area (h/2 - t/2)^2
 *     round:      integrals over |x| < d/2 of (yo - yi), (yo^2 - yi^2)/2, (yo^3 - yi^3)/3  with y = sqrt(R^2 - x^2)
 *
 * Symbols: d the hole's diameter, t least wall, h outside height, yo and yi the outer and inner arc, all in mm.
 *
 * @source beam-sections
 */
import type { Section } from './profile'

export interface Cap {
  readonly areaMm2: number
  readonly firstMm3: number
  readonly secondMm4: number
}

export function upperFace(section: Section, holeMm: number): Cap {
  const t = section.leastWallMm
  if (holeMm <= 0) return { areaMm2: 0, firstMm3: 0, secondMm4: 0 }
  if (section.shape !== 'round') {
    const [areaMm2, arm] = [holeMm * t, (section.heightMm - t) / 2]
    return { areaMm2, firstMm3: areaMm2 * arm, secondMm4: (holeMm * t ** 3) / 12 + areaMm2 * arm * arm }
  }
  const outer = section.widthMm / 2
  const inner = outer - t
  const half = Math.min(holeMm / 2, inner)
  return {
    areaMm2: 2 * (firstPower(outer, half) - firstPower(inner, half)),
    firstMm3: (outer * outer - inner * inner) * half,
    secondMm4: (2 / 3) * (thirdPower(outer, half) - thirdPower(inner, half))
  }
}

/** Integral of sqrt(R^2 - x^2) from 0 to x. */
const firstPower = (r: number, x: number): number => (x * root(r, x) + r * r * Math.asin(Math.min(1, x / r))) / 2

/** Integral of (R^2 - x^2)^(3/2) from 0 to x. */
const thirdPower = (r: number, x: number): number =>
  (x * (5 * r * r - 2 * x * x) * root(r, x) + 3 * r ** 4 * Math.asin(Math.min(1, x / r))) / 8

const root = (r: number, x: number): number => Math.sqrt(Math.max(0, r * r - x * x))
