import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'

/** What weights, sag and tipping have to say, with their figures: mm, g, degrees. */
export interface StructureFindingCodes {
  readonly 'sag-over-limit': {
    readonly sagMm: number
    readonly limitMm: number
    readonly spanMm: number
    readonly spacingNeededMm: number
  }
  readonly 'sag-takes-gap': { readonly sagMm: number; readonly gapMm: number; readonly wantedMm: number }
  readonly 'support-off-channel': { readonly atMm: number; readonly lengthMm: number }
  readonly 'tips-over': { readonly state: string; readonly outsideMm: number }
  readonly 'tips-easily': { readonly state: string; readonly tipDeg: number; readonly leastDeg: number }
  readonly 'round-rolls': { readonly diameterMm: number }
  readonly 'grows-past-clearance': { readonly growthMm: number; readonly roomMm: number }
  readonly 'over-sill-limit': { readonly loadKg: number; readonly limitKg: number }
  /** No sill limit was given; no published one exists. */
  readonly 'no-sill-limit': { readonly loadKg: number }
  readonly 'fill-in-place': { readonly filledG: number; readonly recommendedG: number; readonly lengthMm: number }
  readonly 'not-by-one-person': { readonly filledG: number; readonly mostG: number }
}

export interface StructureProblemCodes extends RangeProblemCodes {
  readonly 'load-part-missing': { readonly kind: string; readonly partId: string }
}

export type StructureFinding = FindingOf<StructureFindingCodes>
export type StructureProblem = ProblemOf<StructureProblemCodes>
