import type { EvidenceByField } from '../sources'

export interface Span {
  readonly least: number
  readonly most: number
}

export interface Crop {
  readonly id: string
  readonly name: string
  /** Distance between plants in a row; null: not found, the grower says. */
  readonly pitchMm: Span | null
  readonly canopyMm: number
  readonly plantHeightMm: number
  readonly dailyUseMl: Span | null
  readonly ecMsPerCm: Span | null
  readonly ph: Span | null
  readonly grownMassG: number
  /** Start volume per plant below which the plan says a note; null: not found. */
  readonly startLitres: number | null
  readonly edible: boolean
  /** What published sources say against each other about this crop; shown, never settled here. */
  readonly conflicts: readonly string[]
  readonly evidence: EvidenceByField
}
