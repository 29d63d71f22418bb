import type { ReservoirFindingCodes, ReservoirProblemCodes } from '../reservoir'
import { put, type Wording } from './wording'

export const WATER_WORDS: Wording<ReservoirFindingCodes> = {
  'gap-short': ({ stage, gapMm, wantedMm, headMm }, say) =>
    put(
      'Not enough air under the cup',
      `${say.fine(gapMm)} at the fill line; ${stage} plants want ${say.fine(wantedMm)}. Fill lower or put a riser in; ${say.fine(headMm)} of air is left under the face.`
    ),
  'immersion-deep': ({ stage, immersionMm, mostMm }, say) =>
    put(
      'The cup stands deep in the solution',
      `${say.fine(immersionMm)} under at the ${stage} stage; keep it to ${say.fine(mostMm)}. Fill lower.`
    ),
  'cup-not-wetted': ({ stage, gapMm, wantedMm }, say) =>
    put(
      'The cup does not reach the solution',
      `It hangs ${say.fine(gapMm)} above; at the ${stage} stage it should stand ${say.fine(Math.abs(wantedMm))} in. Fill higher.`
    ),
  'tilt-takes-gap': ({ riseMm, leastGapMm, greatestGapMm }, say) =>
    put(
      'The fall of the sill takes from the air gap',
      `${say.fine(riseMm)} from end to end: the gap goes from ${say.fine(leastGapMm)} to ${say.fine(greatestGapMm)}. Shim the low end.`
    ),
  'spills-at-low-end': ({ overMm }, say) =>
    put(
      'Spills at the low end',
      `Filled to the line it stands ${say.fine(overMm)} above the bore there. Shim it or fill lower.`
    ),
  'spills-over-low-side': ({ side, overMm }, say) =>
    put(
      `The surface lies against the face along the ${side}`,
      `The sill falls that way: filled to the line it stands ${say.fine(overMm)} above the bore there. Shim that side or fill lower.`
    ),
  'seat-leaks-when-brimful': ({ levelMm, faceMm }, say) =>
    put(
      'A seat leaks when it is filled this high',
      `The level of ${say.fine(levelMm)} reaches the underside of the face at ${say.fine(faceMm)}. Fill lower.`
    ),
  'opening-below-level': ({ opening, lipMm, levelMm }, say) =>
    put(
      `The ${opening} lies below the fill line`,
      `Its lower edge is at ${say.fine(lipMm)}, the fill line at ${say.fine(levelMm)}: it must be sealed, or the line lowered.`
    ),
  'overflow-caps-fill': ({ wantedMm, cappedMm }, say) =>
    put('The overflow holds the fill line down', `Wanted ${say.fine(wantedMm)}; it runs off at ${say.fine(cappedMm)}.`),
  'rise-over-roots': ({ fromStage, toStage, riseMm, mostMm }, say) =>
    put(
      'Solution comes up over air roots',
      `From ${fromStage} to ${toStage} it rises ${say.fine(riseMm)} against the cup; keep it to ${say.fine(mostMm)}. Fill lower then.`
    ),
  'litres-per-plant-short': ({ crop, litres, wantedLitres }, say) =>
    put(
      `Little solution for ${crop}`,
      `${say.volume(litres)} a plant to start with; ${say.volume(wantedLitres)} is wanted for a whole crop. Expect to refill.`
    ),
  'daily-use-unknown': ({ crop }) =>
    put(
      `No published daily use for ${crop}`,
      'Measure what it drinks in a week and enter it, and the draw-down is worked out.'
    ),
  'no-riser-reaches': ({ stage, liftMm, mostMm }, say) =>
    put(
      `No cup on hand lifts the plant for the ${stage} stage`,
      `${say.fine(liftMm)} is needed, ${say.fine(mostMm)} is the most. Fill lower at that stage.`
    ),
  'source-ec-missing': ({ name }) =>
    put(
      `The dose of ${name} cannot be worked out`,
      "Measure the conductivity of your own water and enter it: the feed's adds to it."
    ),
  'ec-outside-crop': ({ ecMsPerCm, least, most }, say) =>
    put(
      'The feed is not at the strength these crops want',
      `${say.number(ecMsPerCm)} mS/cm; published ${say.number(least)} to ${say.number(most)} mS/cm.`
    ),
  'crops-disagree-on-ec': ({ crops }) =>
    put(
      'These crops want feed of different strength',
      `${crops}. Give them channels of their own, or meet in the middle.`
    )
}

export const WATER_PROBLEM_WORDS: Wording<Omit<ReservoirProblemCodes, 'out-of-range' | 'not-finite'>> = {
  'volume-outside-bore': ({ litres, least, most }, say) =>
    put(
      'The channel does not hold this much',
      `${say.volume(litres)}; it holds ${say.volume(least)} to ${say.volume(most)}.`
    ),
  'dose-not-linear': ({ share, least, most }, say) =>
    put(
      "The wanted strength is too far from the label's dose",
      `It would take ${say.share(share)} of the label's dose; a straight line holds from ${say.share(least)} to ${say.share(most)}. Mix and read a meter.`
    ),
  'unknown-formula': ({ formula }) => put(`The formula ${formula} is not known`),
  'unknown-oxide': ({ oxide }) => put(`${oxide} is not known as an oxide on a label`)
}
