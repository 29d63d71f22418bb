import { type Mm2, mm2 } from '../units'
import type { Section } from './profile'

/** Area inside the outline of the section: a rectangle with rounded corners, a circle where the radius is half the side. */
export function outsideArea(section: Section): Mm2 {
  const r = outsideRadius(section)
  return mm2(section.widthMm * section.heightMm - (4 - Math.PI) * r * r)
}

export const outsideRadius = (section: Section): number =>
  section.shape === 'round' ? section.widthMm / 2 : section.cornerRadiusMm
