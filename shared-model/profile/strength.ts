/**
 * Area, centroid, second moment and section modulus of a section as it lies, bending up and down, by the least wall.
 *
 *     rounded rectangle about its middle:  I = b h^3 / 12 - 4 (k1 r^4 + k2 r^2 (h/2 - k3 r)^2)
 *     k1 = 1/3 - pi/16 - 1/(9 (4 - pi)),  k2 = 1 - pi/4,  k3 = (10 - 3 pi) / (3 (4 - pi))
 *     tube: outside less bore;  net section: less the upper face over the hole's width d, about the new centroid
 *     Z = I / distance to the farther edge
 *
 * Symbols: b, h outside (or bore) width and height, r its corner radius, d hole diameter, in mm; k1..k3 belong to the piece
 * between a square corner and its round. Trunking is open at the top: its lid does not stiffen it, so its upper face is
 * left out over the whole inside width. A rectangle's corners count as flat where a hole reaches into them.
 * Valid for d from 0 to the inside width.
 *
 * @source pipe-section-table
 * @source tube-section-table
 * @source beam-sections
 */
import { failed, ok, type Result } from '../outcome'
import { type Mm, mm } from '../units'
import type { ProfileProblem } from './codes'
import { outsideRadius } from './outside-area'
import type { Section } from './profile'
import { boreOf } from './section-of'
import { type Cap, upperFace } from './upper-cap'

export interface Strength {
  readonly areaMm2: number
  /** Centroid above the underside. */
  readonly centroidMm: number
  readonly secondMomentMm4: number
  /** The lesser of the two: to the upper and to the lower edge. */
  readonly sectionModulusMm3: number
}

/** Whole section between holes. */
export function grossStrength(section: Section): Strength {
  const lid = section.shape === 'trunking' ? boreOf(section, section.leastWallMm).widthMm : 0
  return withoutCap(section, upperFace(section, lid))
}

/** Net section at a hole's middle; both bounds named where the hole is not inside the bore's width. */
export function netStrength(section: Section, hole: Mm): Result<Strength, ProfileProblem> {
  const mostMm = boreOf(section, section.leastWallMm).widthMm
  if (!(hole >= 0 && hole <= mostMm)) {
    const valueMm = Number.isFinite(hole) ? hole : -1
    return failed({ code: 'hole-outside-face', figures: { valueMm, leastMm: 0, mostMm } })
  }
  const open = section.shape === 'trunking' ? mm(mostMm) : hole
  return ok(withoutCap(section, upperFace(section, open)))
}

function withoutCap(section: Section, cap: Cap): Strength {
  const tube = roundedTube(section)
  const areaMm2 = tube.areaMm2 - cap.areaMm2
  const offset = -cap.firstMm3 / areaMm2
  const secondMomentMm4 = tube.secondMm4 - cap.secondMm4 - areaMm2 * offset * offset
  const centroidMm = section.heightMm / 2 + offset
  const edgeMm = Math.max(centroidMm, section.heightMm - centroidMm)
  return { areaMm2, centroidMm, secondMomentMm4, sectionModulusMm3: secondMomentMm4 / edgeMm }
}

function roundedTube(section: Section): { readonly areaMm2: number; readonly secondMm4: number } {
  const bore = boreOf(section, section.leastWallMm)
  const outer = rounded(section.widthMm, section.heightMm, outsideRadius(section))
  const inner = rounded(bore.widthMm, bore.heightMm, bore.cornerRadiusMm)
  return { areaMm2: outer.areaMm2 - inner.areaMm2, secondMm4: outer.secondMm4 - inner.secondMm4 }
}

const K1 = 1 / 3 - Math.PI / 16 - 1 / (9 * (4 - Math.PI))
const K2 = 1 - Math.PI / 4
const K3 = (10 - 3 * Math.PI) / (3 * (4 - Math.PI))

function rounded(b: number, h: number, r: number): { readonly areaMm2: number; readonly secondMm4: number } {
  const corner = K1 * r ** 4 + K2 * r * r * (h / 2 - K3 * r) ** 2
  return { areaMm2: b * h - 4 * K2 * r * r, secondMm4: (b * h ** 3) / 12 - 4 * corner }
}
