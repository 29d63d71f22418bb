/**
 * Sag of a channel between and beyond its supports under an even load.
 *
 * Simple span: 5 w L⁴ ÷ (384 E I). Overhang past a support, loaded alone, next to a span L: w a³ (4 L + 3 a) ÷ (24 E I) at
 * its end. Both sides of a single support: w a⁴ ÷ (8 E I). A span that runs on past its supports sags less: the simple
 * span is the careful answer.
 *
 * Symbols: w load in N/mm, L span and a overhang in mm, E modulus in MPa (N/mm²), I second moment in mm⁴; sag in mm.
 * Valid: L and a 0 to 20 m, w 0 to 100 N/mm, E 1 to 10⁶ MPa, I 1 to 10¹² mm⁴ (outside: a problem naming both bounds).
 * @source beam-formulas
 */
import { failed, ok, type Result } from '../outcome'
import { type Megapascals, type Mm, type Mm4, mm, STANDARD_GRAVITY } from '../units'
import type { StructureProblem } from './codes'
import { within } from './within'

export interface Beam {
  readonly loadNPerMm: number
  readonly modulusMPa: Megapascals
  readonly secondMomentMm4: Mm4
}

export function simpleSpanSag(beam: Beam, spanMm: Mm): Result<Mm, StructureProblem> {
  const wrong = wrongBeam(beam) ?? within('span', spanMm, 0, 20_000)
  if (wrong) return failed(wrong)
  return ok(mm((5 * beam.loadNPerMm * spanMm ** 4) / (384 * beam.modulusMPa * beam.secondMomentMm4)))
}

/** Sag at the end of an overhang; `spanMm` is the span beside it, null on a single support. */
export function overhangSag(beam: Beam, overhangMm: Mm, spanMm: Mm | null): Result<Mm, StructureProblem> {
  const wrong = wrongBeam(beam) ?? within('overhang', overhangMm, 0, 20_000) ?? within('span', spanMm ?? 0, 0, 20_000)
  if (wrong) return failed(wrong)
  const stiffness = beam.modulusMPa * beam.secondMomentMm4
  const a = overhangMm
  return ok(
    mm(
      spanMm === null
        ? (beam.loadNPerMm * a ** 4) / (8 * stiffness)
        : (beam.loadNPerMm * a ** 3 * (4 * spanMm + 3 * a)) / (24 * stiffness)
    )
  )
}

/** Longest simple span whose sag keeps to a share of the span and to a figure in mm. */
export function longestSpan(beam: Beam, shareOfSpan: number, mostSagMm: Mm): Mm {
  if (!(beam.loadNPerMm > 0)) return mm(20_000)
  const stiffness = (384 * beam.modulusMPa * beam.secondMomentMm4) / (5 * beam.loadNPerMm)
  return mm(Math.min(20_000, Math.cbrt(stiffness / shareOfSpan), (stiffness * mostSagMm) ** 0.25))
}

/** Load along a length from a mass along it. */
export const newtonsPerMm = (gramsPerMm: number): number => (gramsPerMm / 1000) * STANDARD_GRAVITY

function wrongBeam(beam: Beam): StructureProblem | undefined {
  return (
    within('load', beam.loadNPerMm, 0, 100) ??
    within('modulus', beam.modulusMPa, 1, 1e6) ??
    within('second moment', beam.secondMomentMm4, 1, 1e12)
  )
}
