import { jointHolds } from '../materials'
import type { EndClosure } from '../parts'
import type { Profile } from '../profile'

/** Sizes this close to the end of a tolerance still count as within it, mm. */
const SIZE_SLACK_MM = 1e-6

export type ClosureReason = 'holds' | 'other-size' | 'other-material' | 'joint-fails'

/**
 * Whether an end closure holds on a profile: its size within its tolerance and the profile's own, either way up; its
 * material; and its joint method between the two materials.
 * @source closure-fit
 */
export function closureHolds(closure: EndClosure, profile: Profile): ClosureReason {
  if (!sizeHolds(closure, profile)) return 'other-size'
  if (!closure.holdsOn.materials.includes(profile.material)) return 'other-material'
  return jointHolds(closure.joint, profile.material, closure.material).holds ? 'holds' : 'joint-fails'
}

function sizeHolds({ holdsOn }: EndClosure, profile: Profile): boolean {
  if ((holdsOn.shape === 'round') !== (profile.shape === 'round')) return false
  const slackMm = holdsOn.toleranceMm + profile.outsideToleranceMm + SIZE_SLACK_MM
  const near = (madeForMm: number | null, sideMm: number): boolean =>
    madeForMm === null || Math.abs(madeForMm - sideMm) <= slackMm
  const { widthMm, heightMm } = holdsOn
  return (
    (near(widthMm, profile.widthMm) && near(heightMm, profile.heightMm)) ||
    (near(widthMm, profile.heightMm) && near(heightMm, profile.widthMm))
  )
}
