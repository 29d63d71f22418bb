import type { Outline } from '../layout'
import type { PinnedSpan } from './pinned-span'

/** How far outside the sill, and outside what it measures, a dimension line may still stand: common practice, no source. */
const REACH_MM = 250

/**
 * The least and the most that a pinned dimension's line may stand off what it measures, in mm as in `offMm` (towards the room,
 * or to the right where it lies across the sill), so that the line stays in sight of the sill, drawn and printed.
 */
export function standOffBounds(
  { from, to, upright }: Pick<PinnedSpan, 'from' | 'to' | 'upright'>,
  sill: Pick<Outline, 'lengthMm' | 'depthMm'>
): { readonly leastMm: number; readonly mostMm: number } {
  const [here, there, sideMm] = upright ? [from.xMm, to.xMm, sill.lengthMm] : [from.yMm, to.yMm, sill.depthMm]
  const lowMm = Math.min(0, here, there) - REACH_MM
  const highMm = Math.max(sideMm, here, there) + REACH_MM
  return upright ? { leastMm: lowMm - here, mostMm: highMm - here } : { leastMm: here - highMm, mostMm: here - lowMm }
}

/** A stand-off as wanted, within its bounds. */
export function standOffWithin(
  span: Pick<PinnedSpan, 'from' | 'to' | 'upright'>,
  sill: Pick<Outline, 'lengthMm' | 'depthMm'>,
  offMm: number
): number {
  const { leastMm, mostMm } = standOffBounds(span, sill)
  return Math.min(mostMm, Math.max(leastMm, offMm))
}
