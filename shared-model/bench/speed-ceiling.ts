import type { MaterialId } from '../materials'
import { MM_PER_FOOT, mm } from '../units'
import { cutterSpeed } from './cutter-speed'

export interface SpeedCeiling {
  readonly rpm: number
  readonly grade: 'published' | 'common-practice'
}

/**
 * Surface speeds in ft/min as printed. Aluminium: worked back from a published table of hole-saw speeds. Steel: the
 * lower figure of a trade article; zinc-coated sheet is treated as steel (common practice).
 * @source speed-table
 * @source speed-article
 */
const ALUMINIUM = 135
const STEEL = 80

/**
 * Answers: how fast may a saw or bit turn at most in this material?
 *
 * Metals by their surface speed. No neutral publication gives one for plastics and foam in a hand-held drill: the
 * ceiling is the aluminium column (common practice, no source): slow, and slower as the saw grows.
 * Other or unknown materials take the steel figure, also common practice. Cutters outside 0.5–300 mm have none.
 * @source speed-plastics
 */
export const speedCeiling = (material: MaterialId, diameterMm: number): SpeedCeiling | null => {
  const { feetPerMin, grade } = surfaceOf(material)
  const speed = cutterSpeed(feetPerMin * MM_PER_FOOT, mm(diameterMm))
  return speed.ok ? { rpm: speed.value.rpm, grade } : null
}

const surfaceOf = (material: MaterialId): { readonly feetPerMin: number; readonly grade: SpeedCeiling['grade'] } => {
  switch (material) {
    case 'aluminium':
      return { feetPerMin: ALUMINIUM, grade: 'published' }
    case 'galvanised-steel':
    case 'zinc':
    case 'copper':
    case 'unknown':
      return { feetPerMin: STEEL, grade: 'common-practice' }
    default:
      return { feetPerMin: ALUMINIUM, grade: 'common-practice' }
  }
}
