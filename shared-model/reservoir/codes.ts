import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'

/** What the water plan has to say, with its figures. Lengths mm, volumes L, conductivity mS/cm at 25 °C. */
export interface ReservoirFindingCodes {
  /** Less air under the cup than the stage wants. */
  readonly 'gap-short': {
    readonly stage: string
    readonly gapMm: number
    readonly wantedMm: number
    readonly headMm: number
  }
  readonly 'immersion-deep': { readonly stage: string; readonly immersionMm: number; readonly mostMm: number }
  readonly 'cup-not-wetted': { readonly stage: string; readonly gapMm: number; readonly wantedMm: number }
  /** The fall of the sill or of uneven supports takes this much of the gap from one end to the other. */
  readonly 'tilt-takes-gap': { readonly riseMm: number; readonly leastGapMm: number; readonly greatestGapMm: number }
  /** Filled to the line at mid-length, the low end stands above the bore. */
  readonly 'spills-at-low-end': { readonly overMm: number }
  /** The surface lies higher along the low side than the bore is: it stands against the face's holes and joints there. */
  readonly 'spills-over-low-side': { readonly side: string; readonly overMm: number }
  readonly 'seat-leaks-when-brimful': { readonly levelMm: number; readonly faceMm: number }
  readonly 'opening-below-level': { readonly opening: string; readonly lipMm: number; readonly levelMm: number }
  readonly 'overflow-caps-fill': { readonly wantedMm: number; readonly cappedMm: number }
  /** From one stage to the next the solution comes up on air roots. */
  readonly 'rise-over-roots': {
    readonly fromStage: string
    readonly toStage: string
    readonly riseMm: number
    readonly mostMm: number
  }
  readonly 'litres-per-plant-short': { readonly crop: string; readonly litres: number; readonly wantedLitres: number }
  readonly 'daily-use-unknown': { readonly crop: string }
  readonly 'no-riser-reaches': { readonly stage: string; readonly liftMm: number; readonly mostMm: number }
  readonly 'source-ec-missing': { readonly name: string }
  readonly 'ec-outside-crop': { readonly ecMsPerCm: number; readonly least: number; readonly most: number }
  readonly 'crops-disagree-on-ec': { readonly crops: string }
}

export interface ReservoirProblemCodes extends RangeProblemCodes {
  readonly 'volume-outside-bore': { readonly litres: number; readonly least: number; readonly most: number }
  /** A share of the label's dose at which conductivity no longer goes straight. */
  readonly 'dose-not-linear': { readonly share: number; readonly least: number; readonly most: number }
  readonly 'unknown-formula': { readonly formula: string }
  readonly 'unknown-oxide': { readonly oxide: string }
}

export type ReservoirFinding = FindingOf<ReservoirFindingCodes>
export type ReservoirProblem = ProblemOf<ReservoirProblemCodes>
