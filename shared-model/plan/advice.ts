import type { Section } from '../profile'
import { faceOf, type SawAdvice, type Seat, sawAdvice } from '../seating'
import type { Shared } from './shared'

const keptByShared = new WeakMap<Shared, Map<string, SawAdvice>>()

/** What the saws owned would do for a seat in a section; kept as long as what the channels share is the same object. */
export const adviceFor = (seat: Seat, section: Section, shared: Shared): SawAdvice => {
  const kept = keptByShared.get(shared) ?? new Map<string, SawAdvice>()
  keptByShared.set(shared, kept)
  const { shape, widthMm, heightMm, averageWallMm, leastWallMm, cornerRadiusMm } = section
  const key = [seat.id, shape, widthMm, heightMm, averageWallMm, leastWallMm, cornerRadiusMm].join(' ')
  const found = kept.get(key)
  if (found !== undefined) return found
  const advice = sawAdvice(seat, faceOf(section), shared.index, shared.saws)
  kept.set(key, advice)
  return advice
}
