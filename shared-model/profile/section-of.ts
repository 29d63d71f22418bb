import type { Profile, Section } from './profile'

/** A profile as it lies: turned, its width and height change places. */
export const sectionOf = (profile: Profile, turned: boolean): Section => ({
  shape: profile.shape,
  widthMm: turned ? profile.heightMm : profile.widthMm,
  heightMm: turned ? profile.widthMm : profile.heightMm,
  averageWallMm: profile.averageWallMm,
  leastWallMm: profile.leastWallMm,
  cornerRadiusMm: profile.cornerRadiusMm
})

/**
 * The bore of a section: a rectangle with rounded corners; a round bore is one whose corner radius is half its width.
 * Trunking has the bore of a rectangle, closed by its lid.
 */
export interface Bore {
  readonly widthMm: number
  readonly heightMm: number
  readonly cornerRadiusMm: number
}

export function boreOf(section: Section, wallMm: number = section.averageWallMm): Bore {
  const widthMm = Math.max(0, section.widthMm - 2 * wallMm)
  const heightMm = Math.max(0, section.heightMm - 2 * wallMm)
  const most = Math.min(widthMm, heightMm) / 2
  const inner = section.shape === 'round' ? most : Math.max(0, section.cornerRadiusMm - wallMm)
  return { widthMm, heightMm, cornerRadiusMm: Math.min(inner, most) }
}
