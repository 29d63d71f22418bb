import type { ProblemOf } from '../outcome'

interface Bounds {
  readonly valueMm: number
  readonly leastMm: number
  readonly mostMm: number
}

export interface PartsProblemCodes {
  /** A size outside what any such part has. */
  readonly 'part-size-outside': Bounds & { readonly size: string }
  readonly 'part-share-outside': {
    readonly share: string
    readonly value: number
    readonly least: number
    readonly most: number
  }
  readonly 'part-mass-outside': { readonly valueG: number; readonly leastG: number; readonly mostG: number }
  readonly 'cup-bottom-wider-than-body': Bounds
  readonly 'cup-body-wider-than-rim': Bounds
  readonly 'cup-wall-too-thick': Bounds
  readonly 'cup-rim-higher-than-cup': Bounds
  readonly 'riser-opened-outside-cup': Bounds
  readonly 'collar-hole-outside-ring': Bounds
}

export type PartsProblem = ProblemOf<PartsProblemCodes>
