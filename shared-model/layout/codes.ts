import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'
import type { ProfileProblemCodes } from '../profile'

/** What the layout finds out, with its figures. All in mm. */
export interface LayoutFindingCodes {
  readonly 'too-long-for-sill': { readonly overallMm: number; readonly roomMm: number; readonly cutMm: number }
  /** The outline passes an end of the sill or the glass. */
  readonly 'past-sill': { readonly edge: string; readonly overMm: number }
  /** The outline passes the sill's front edge, on the room side. */
  readonly 'over-front-edge': { readonly overMm: number; readonly share: number }
  /** Less than the fit clearance is left at an edge of the sill. */
  readonly 'clearance-short': { readonly edge: string; readonly clearMm: number; readonly wantedMm: number }
  readonly 'stack-too-high': { readonly topMm: number; readonly clearMm: number }
  readonly 'plant-too-high': { readonly crop: string; readonly topMm: number; readonly clearMm: number }
  readonly 'web-thin': { readonly webMm: number; readonly leastMm: number }
  readonly 'holes-overlap': { readonly overlapMm: number }
  readonly 'hole-in-closure': { readonly overlapMm: number; readonly leastEndMm: number }
  readonly 'hole-off-channel': { readonly atMm: number; readonly lengthMm: number }
  readonly 'hole-wider-than-face': { readonly holeMm: number; readonly flatMm: number }
  readonly 'edge-strip-thin': { readonly stripMm: number; readonly leastMm: number }
  readonly 'rims-overlap': { readonly pitchMm: number; readonly rimMm: number }
  readonly 'channels-clash': { readonly other: string; readonly overlapMm: number }
  readonly 'obstacle-clash': { readonly obstacle: string; readonly overlapMm: number }
  /** Closer than the crop's published spacing. */
  readonly 'plants-crowded': { readonly crop: string; readonly pitchMm: number; readonly leastMm: number }
  readonly 'canopies-overlap': { readonly pairs: number; readonly overlapMm: number; readonly share: number }
  readonly 'closure-wrong-material': { readonly closure: string; readonly material: string; readonly fits: string }
  readonly 'closure-wrong-size': {
    readonly closure: string
    readonly sizeMm: string
    readonly profileMm: string
    readonly toleranceMm: number
    /** Names of those on hand that fit; empty when none does. */
    readonly fits: string
  }
  readonly 'joint-does-not-hold': {
    readonly closure: string
    readonly joint: string
    readonly material: string
    readonly fits: string
  }
  readonly 'no-refill-opening': { readonly channel: string }
  readonly 'no-level-sight': { readonly channel: string }
}

export interface LayoutProblemCodes extends RangeProblemCodes, ProfileProblemCodes {
  readonly 'no-sill-reading': { readonly side: string }
  readonly 'channel-part-missing': { readonly kind: string; readonly partId: string }
}

export type LayoutFinding = FindingOf<LayoutFindingCodes>
export type LayoutProblem = ProblemOf<LayoutProblemCodes>
