import type { ProfileProblem } from './codes'
import type { Profile } from './profile'

/** Smallest and largest outside size, and the thinnest wall, of anything that a channel is made of. */
const LEAST_SIZE_MM = 10
const MOST_SIZE_MM = 1000
const LEAST_WALL_MM = 0.1

/** Everything about a profile that cannot be: each with its field and both bounds. Empty where it can be worked with. */
export function checkProfile(profile: Profile): readonly ProfileProblem[] {
  const shortMm = Math.min(profile.widthMm, profile.heightMm)
  const sizes = [size(profile, 'width'), size(profile, 'height'), notRound(profile)].filter(
    (problem) => problem !== null
  )
  if (sizes.length > 0) return sizes
  return [
    wall(profile, 'average', profile.averageWallMm, shortMm / 2),
    wall(profile, 'least', profile.leastWallMm, Math.min(shortMm / 2, profile.averageWallMm)),
    bounded(profile, 'corner-radius-outside', 'cornerRadiusMm', profile.cornerRadiusMm, 0, shortMm / 2),
    bounded(profile, 'outside-tolerance-outside', 'outsideToleranceMm', profile.outsideToleranceMm, 0, shortMm / 4)
  ].filter((problem) => problem !== null)
}

const outside = (value: number, least: number, most: number): boolean => !(value >= least && value <= most)
const finite = (value: number): number => (Number.isFinite(value) ? value : -1)

function size(profile: Profile, which: 'width' | 'height'): ProfileProblem | null {
  const value = which === 'width' ? profile.widthMm : profile.heightMm
  if (!outside(value, LEAST_SIZE_MM, MOST_SIZE_MM)) return null
  return {
    code: 'profile-size-outside',
    figures: { size: which, valueMm: finite(value), leastMm: LEAST_SIZE_MM, mostMm: MOST_SIZE_MM },
    where: { partId: profile.id, field: `${which}Mm` }
  }
}

function notRound(profile: Profile): ProfileProblem | null {
  if (profile.shape !== 'round' || Math.abs(profile.heightMm - profile.widthMm) <= 1e-6) return null
  const { widthMm, heightMm } = profile
  return {
    code: 'profile-not-round',
    figures: { valueMm: finite(heightMm), leastMm: finite(widthMm), mostMm: finite(widthMm) },
    where: { partId: profile.id, field: 'heightMm' }
  }
}

function wall(profile: Profile, which: 'average' | 'least', value: number, mostMm: number): ProfileProblem | null {
  const thinEnough = which === 'average' ? value < mostMm : value <= mostMm
  if (value >= LEAST_WALL_MM && thinEnough) return null
  return {
    code: 'wall-outside',
    figures: { wall: which, valueMm: finite(value), leastMm: LEAST_WALL_MM, mostMm: finite(mostMm) },
    where: { partId: profile.id, field: `${which}WallMm` }
  }
}

function bounded(
  profile: Profile,
  code: 'corner-radius-outside' | 'outside-tolerance-outside',
  field: string,
  value: number,
  leastMm: number,
  mostMm: number
): ProfileProblem | null {
  if (!outside(value, leastMm, mostMm)) return null
  return { code, figures: { valueMm: finite(value), leastMm, mostMm }, where: { partId: profile.id, field } }
}
