import type { RangeProblemCodes } from '../outcome'
import type { PartsProblemCodes } from '../parts'
import type { SeatingFindingCodes, SeatingProblemCodes } from '../seating'
import { put, type Wording } from './wording'

export const SEATING_WORDS: Wording<SeatingFindingCodes> = {
  'part-drops-through': ({ part, openingMm, rimMm }, say) =>
    put(
      `${part} drops through`,
      `The opening of ${say.fine(openingMm)} is as wide as its rim of ${say.fine(rimMm)}. Take a smaller saw or a wider cup.`
    ),
  'part-does-not-enter': ({ part, openingMm, bottomMm, saw, leastMm }, say) =>
    put(
      `${part} does not go in`,
      `Its bottom of ${say.fine(bottomMm)} does not pass the opening of ${say.fine(openingMm)}. ${
        saw === ''
          ? `It wants a hole over ${say.fine(leastMm)}; no saw at hand cuts that in this face. Take a smaller cup.`
          : `Take the saw ${saw}.`
      }`
    ),
  'land-thin': ({ part, landMm, leastMm }, say) =>
    put(
      `${part} hangs on a narrow land`,
      `Only ${say.fine(landMm)} of rim rests on the edge; keep at least ${say.fine(leastMm)}. Take the next smaller saw.`
    ),
  'seat-not-located': ({ part, openingMm }, say) =>
    put(
      `${part} lies loose`,
      `It lies over an opening of ${say.fine(openingMm)} and nothing hangs through to keep it there.`
    ),
  'taper-slips': ({ part, halfAngleDeg, frictionDeg }, say) =>
    put(
      `${part} does not hold by its taper`,
      `Its half-angle of ${say.degrees(halfAngleDeg)} is over the friction angle of ${say.degrees(frictionDeg)}: it lifts out when pulled.`
    ),
  'reaches-floor': ({ part, shortMm }, say) =>
    put(
      `${part} stands on the channel's floor`,
      `It is ${say.fine(shortMm)} too long to come down on its seat. Take a taller profile, a shorter cup or a riser.`
    ),
  'land-past-flat': ({ part, rimMm, flatMm }, say) =>
    put(
      `${part} rests on the rounded edge`,
      `Its rim of ${say.fine(rimMm)} is wider than the flat of the face, ${say.fine(flatMm)}.`
    ),
  'rim-past-face': ({ part, rimMm, faceMm, overMm }, say) =>
    put(
      `The rim of ${part} is wider than the channel`,
      `${say.fine(rimMm)} on a face of ${say.fine(faceMm)}: it stands out ${say.fine(overMm)} on each side and catches. Take a smaller cup or a wider profile.`
    ),
  'saddle-gap': ({ gapMm, atRimMm }, say) =>
    put(
      'A flat rim on a round pipe leaves a gap',
      `${say.fine(gapMm)} at the hole's edge and ${say.fine(atRimMm)} under the rim: keep light and flies out with a foam collar.`
    ),
  'saw-too-shallow': ({ saw, needMm, depthMm }, say) =>
    put(
      `Saw ${saw} is too shallow for this pipe`,
      `The hole needs ${say.fine(needMm)} of depth, the saw has ${say.fine(depthMm)}. Take a deeper saw or a smaller hole.`
    ),
  'pipe-strip-thin': ({ stripMm, leastMm }, say) =>
    put(
      'Little pipe is left beside the hole',
      `A strip of ${say.fine(stripMm)} seen from above; keep at least ${say.fine(leastMm)}. Take a smaller saw or a wider pipe.`
    ),
  'no-saw-fits': ({ seat, leastMm, mostMm }, say) =>
    put(
      `No saw at hand suits seat ${seat}`,
      `A hole between ${say.fine(leastMm)} and ${say.fine(mostMm)} would seat it.`
    )
}

export const SEATING_PROBLEM_WORDS: Wording<
  Omit<SeatingProblemCodes, keyof RangeProblemCodes | keyof PartsProblemCodes>
> = {
  'part-missing': ({ kind, partId }) => put(`The ${kind} ${partId} is not in the design`, 'Choose another, or add it.'),
  'empty-stack': ({ seat }) => put(`Nothing sits in seat ${seat}`, 'Put a cup in it.')
}
