import type { EvidenceByField } from '../sources'
import type { MaterialId } from './material-id'

/** What a material weighs, how stiff it is now and after years under load, how it grows with heat. */
export interface Material {
  readonly id: MaterialId
  readonly name: string
  readonly densityGPerCm3: number
  readonly modulusShortMPa: number
  /** Share of the short-term modulus left after years under steady load; 1 where none is lost. */
  readonly creepFactor: number
  /** The larger of the published coefficients where sources differ. */
  readonly expansionPerC: number
  readonly mostServiceC: number
  readonly kind: 'plastic' | 'metal' | 'foam' | 'rubber' | 'unknown'
  readonly evidence: EvidenceByField
}
