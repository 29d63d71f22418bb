import type { ProblemOf } from '../outcome'

interface Bounds {
  readonly valueMm: number
  readonly leastMm: number
  readonly mostMm: number
}

export interface ProfileProblemCodes {
  readonly 'profile-size-outside': Bounds & { readonly size: 'width' | 'height' }
  readonly 'profile-not-round': Bounds
  readonly 'wall-outside': Bounds & { readonly wall: 'average' | 'least' }
  readonly 'corner-radius-outside': Bounds
  readonly 'outside-tolerance-outside': Bounds
  readonly 'hole-outside-face': Bounds
  readonly 'level-outside-bore': Bounds
  readonly 'wet-area-outside-bore': { readonly valueMm2: number; readonly leastMm2: number; readonly mostMm2: number }
}

export type ProfileProblem = ProblemOf<ProfileProblemCodes>
