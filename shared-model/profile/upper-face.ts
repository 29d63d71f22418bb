/**
 * How much of the upper face is flat: where a rim or a riser can bear.
 *
 *     flat = width - 2 * corner radius       (none on a round pipe)
 *
 * Symbols: outside width and outside corner radius in mm. Geometry; no published value to check against.
 *
 * @source geometry
 */
import { type Mm, mm } from '../units'
import type { Section } from './profile'

export const flatWidth = (section: Section): Mm =>
  mm(section.shape === 'round' ? 0 : Math.max(0, section.widthMm - 2 * section.cornerRadiusMm))
