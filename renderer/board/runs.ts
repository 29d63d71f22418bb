import { direction, type Heading } from '../../shared-model/layout'
import type { Point } from './scale'

/** How far a movement goes along a channel. */
export const alongRun = (heading: Heading, by: Point): number => {
  const { dx, dy } = direction(heading)
  return by.x * dx + by.y * dy
}
