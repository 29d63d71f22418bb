import { type JointReason, jointHolds } from '../materials'
import type { Profile } from '../profile'
import type { EndClosure } from './part'

export type ClosureReason = JointReason | 'closure-other-shape' | 'closure-other-size' | 'closure-other-material'

export interface ClosureVerdict {
  readonly holds: boolean
  readonly reason: ClosureReason
}

/**
 * Whether an end closure holds on a profile: its shape, its size within its tolerance and the profile's own, its material,
 * and its joint between the two materials. Sizes are taken either way round, since a profile may lie on its side.
 *
 * @source solvent-cement-method
 */
export function closureHolds(closure: EndClosure, profile: Profile): ClosureVerdict {
  const { shape, materials, widthMm, heightMm, toleranceMm } = closure.holdsOn
  const profileShape = profile.shape === 'round' ? 'round' : 'rectangle'
  if (shape !== profileShape) return { holds: false, reason: 'closure-other-shape' }
  const slackMm = toleranceMm + profile.outsideToleranceMm
  const fits = (a: number, b: number): boolean =>
    (widthMm === null || Math.abs(widthMm - a) <= slackMm) && (heightMm === null || Math.abs(heightMm - b) <= slackMm)
  if (!fits(profile.widthMm, profile.heightMm) && !fits(profile.heightMm, profile.widthMm)) {
    return { holds: false, reason: 'closure-other-size' }
  }
  if (!materials.includes(profile.material)) return { holds: false, reason: 'closure-other-material' }
  return jointHolds(closure.joint, closure.material, profile.material)
}
