/**
 * Sag of a section filled with water over one simple span: its own mass and that of its full bore as an even load.
 *
 * Load = (mass along the pipe + bore area × density) × gravity; sag by `simpleSpanSag` with the whole section's second moment.
 * Symbols: mass in g/mm, density in kg/L (g/cm³), modulus in MPa, span in mm. Valid as the beam formula is.
 * @source pvc-support-spacing
 */
import type { Result } from '../outcome'
import { boreArea, grossStrength, type Section } from '../profile'
import { type Megapascals, type Mm, mm4 } from '../units'
import { newtonsPerMm, simpleSpanSag } from './beam'
import type { StructureProblem } from './codes'

export function fullPipeSag(
  section: Section,
  pipe: { readonly gramsPerMm: number; readonly densityKgPerL: number; readonly modulusMPa: Megapascals },
  spanMm: Mm
): Result<Mm, StructureProblem> {
  const waterGPerMm = (boreArea(section) * pipe.densityKgPerL) / 1000
  return simpleSpanSag(
    {
      loadNPerMm: newtonsPerMm(pipe.gramsPerMm + waterGPerMm),
      modulusMPa: pipe.modulusMPa,
      secondMomentMm4: mm4(grossStrength(section).secondMomentMm4)
    },
    spanMm
  )
}
