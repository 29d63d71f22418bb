import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'
import type { PartsProblemCodes } from '../parts'

/** What seating finds out about a seat, with its figures. Diameters and heights in mm. */
export interface SeatingFindingCodes {
  /** The opening is as wide as the part's rim or wider: it falls through. */
  readonly 'part-drops-through': { readonly part: string; readonly openingMm: number; readonly rimMm: number }
  /** A closed bottom as wide as the opening or wider. */
  readonly 'part-does-not-enter': {
    readonly part: string
    readonly openingMm: number
    readonly bottomMm: number
    /** The smallest saw at hand that would do; an empty name when none would. */
    readonly saw: string
    readonly leastMm: number
  }
  readonly 'land-thin': { readonly part: string; readonly landMm: number; readonly leastMm: number }
  /** It lies on the face and nothing hangs through it to keep it there. */
  readonly 'seat-not-located': { readonly part: string; readonly openingMm: number }
  /** A taper too blunt to hold by friction. */
  readonly 'taper-slips': { readonly part: string; readonly halfAngleDeg: number; readonly frictionDeg: number }
  /** The lowest part would go below the channel's floor: it stands there and its rim does not come down. */
  readonly 'reaches-floor': { readonly part: string; readonly shortMm: number }
  /** A rim wider than the flat of the face: its land runs onto the corner radius. */
  readonly 'land-past-flat': { readonly part: string; readonly rimMm: number; readonly flatMm: number }
  /** A rim wider than the whole channel: it stands out past the side on both sides. */
  readonly 'rim-past-face': {
    readonly part: string
    readonly rimMm: number
    readonly faceMm: number
    readonly overMm: number
  }
  /** Gap under a flat rim beside the crown of a round pipe. */
  readonly 'saddle-gap': { readonly gapMm: number; readonly atRimMm: number }
  readonly 'saw-too-shallow': { readonly saw: string; readonly needMm: number; readonly depthMm: number }
  /** Pipe left between the hole's edge and the pipe's side, seen from above. */
  readonly 'pipe-strip-thin': { readonly stripMm: number; readonly leastMm: number }
  /** None of the saws gives this seat a rim or a taper; a diameter in this range would. */
  readonly 'no-saw-fits': { readonly seat: string; readonly leastMm: number; readonly mostMm: number }
}

export interface SeatingProblemCodes extends RangeProblemCodes, PartsProblemCodes {
  readonly 'part-missing': { readonly kind: string; readonly partId: string }
  readonly 'empty-stack': { readonly seat: string }
}

export type SeatingFinding = FindingOf<SeatingFindingCodes>
export type SeatingProblem = ProblemOf<SeatingProblemCodes>
