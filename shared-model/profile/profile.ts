import type { MaterialId } from '../materials'
import type { EvidenceByField } from '../sources'

export type ProfileShape = 'rectangle' | 'round' | 'trunking'

/**
 * A stock section. Sizes are outside sizes as sold; a rectangle's `widthMm` is the side that lies flat when the channel
 * is not turned. Volume and weight use the average wall, strength the least wall, fits the outside size with tolerance.
 */
export interface Profile {
  readonly id: string
  readonly name: string
  readonly family: string
  readonly shape: ProfileShape
  readonly widthMm: number
  /** Round: equal to the width (the outside diameter). */
  readonly heightMm: number
  readonly outsideToleranceMm: number
  readonly averageWallMm: number
  readonly leastWallMm: number
  /** Outside corner radius; 0 for square corners and round pipe. */
  readonly cornerRadiusMm: number
  readonly material: MaterialId
  readonly opaque: boolean
  /** Marked by its maker as fit for food contact; null: not known. */
  readonly foodContactMark: boolean | null
  readonly evidence: EvidenceByField
}

/** A profile as it lies in a channel: turned on its side or not, so width is across and height is up. */
export interface Section {
  readonly shape: ProfileShape
  readonly widthMm: number
  readonly heightMm: number
  readonly averageWallMm: number
  readonly leastWallMm: number
  readonly cornerRadiusMm: number
}
