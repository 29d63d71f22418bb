import type { StructureFindingCodes, StructureProblemCodes } from '../structure'
import { put, type Wording } from './wording'

export const STRUCTURE_WORDS: Wording<StructureFindingCodes> = {
  'sag-over-limit': ({ sagMm, limitMm, spanMm, spacingNeededMm }, say) =>
    put(
      'Sags between its supports',
      `${say.fine(sagMm)} over ${say.length(spanMm)} in the long run; the limit is ${say.fine(limitMm)}. Put supports ${say.length(spacingNeededMm)} apart or nearer.`
    ),
  'sag-takes-gap': ({ sagMm, gapMm, wantedMm }, say) =>
    put(
      'Sag takes from the air gap',
      `${say.fine(sagMm)} of sag leaves ${say.fine(gapMm)} of air; ${say.fine(wantedMm)} is wanted. Put a support in the middle.`
    ),
  'support-off-channel': ({ atMm, lengthMm }, say) =>
    put(
      'A support is not under the channel',
      `It stands at ${say.length(atMm)}; the channel is ${say.length(lengthMm)} long.`
    ),
  'tips-over': ({ state, outsideMm }, say) =>
    put(
      `Tips over when ${state}`,
      `Its weight is ${say.fine(outsideMm)} outside its support. Move it onto the sill or fasten it.`
    ),
  'tips-easily': ({ state, tipDeg, leastDeg }, say) =>
    put(
      `Tips easily when ${state}`,
      `At ${say.degrees(tipDeg)}; keep at least ${say.degrees(leastDeg)}. Add a lip, a strap or wider feet.`
    ),
  'round-rolls': ({ diameterMm }, say) =>
    put('A round pipe rolls', `Set this pipe of ${say.length(diameterMm)} in saddles or between battens.`),
  'grows-past-clearance': ({ growthMm, roomMm }, say) =>
    put(
      'Grows with heat more than there is room for',
      `${say.fine(growthMm)} in the sun; ${say.fine(roomMm)} is free. Cut it shorter.`
    ),
  'over-sill-limit': ({ loadKg, limitKg }, say) =>
    put(
      'Heavier than the sill carries by your figure',
      `${say.mass(loadKg * 1000)} grown; your limit is ${say.mass(limitKg * 1000)}. Take fewer or smaller channels, or put a bracket under the sill.`
    ),
  'no-sill-limit': ({ loadKg }, say) =>
    put(
      `Check that the sill carries ${say.mass(loadKg * 1000)}`,
      'No published sill load exists. If you do not know, put a bracket or a stand under it.'
    ),
  'fill-in-place': ({ filledG, recommendedG, lengthMm }, say) =>
    put(
      'Place it empty and fill it in place',
      `Filled it weighs ${say.mass(filledG)} at ${say.length(lengthMm)}; over a sill ${say.mass(recommendedG)} is the most to lift.`
    ),
  'not-by-one-person': ({ filledG, mostG }, say) =>
    put(
      'Never lift it filled alone',
      `Filled it weighs ${say.mass(filledG)}; ${say.mass(mostG)} is the most for one person at best. Fill it in place.`
    )
}

export const STRUCTURE_PROBLEM_WORDS: Wording<Omit<StructureProblemCodes, 'out-of-range' | 'not-finite'>> = {
  'load-part-missing': ({ kind, partId }) => put(`The ${kind} ${partId} is not in the design`, 'Choose another.')
}
