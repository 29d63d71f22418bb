import { closureHolds } from '../../shared-model/layout'
import { CATALOGUE, type EndClosure } from '../../shared-model/parts'
import type { Profile } from '../../shared-model/profile'

/** Closures that hold on a profile. */
export const fittingClosures = (closures: readonly EndClosure[], profile: Profile): readonly EndClosure[] =>
  closures.filter((closure) => closureHolds(closure, profile) === 'holds')

/**
 * The first closure that holds on a profile, one made for its size before one that is cut to any; with none, the first
 * there is, and the plan says that it does not.
 */
export const closureFor = (closures: readonly EndClosure[], profile: Profile): EndClosure | undefined => {
  const fitting = fittingClosures(closures, profile)
  return fitting.find(({ holdsOn }) => holdsOn.widthMm !== null) ?? fitting[0] ?? closures[0] ?? CATALOGUE.closures[0]
}
