import type { LayoutFindingCodes, LayoutProblemCodes } from '../layout'
import type { RangeProblemCodes } from '../outcome'
import type { ProfileProblemCodes } from '../profile'
import { materialName } from './names'
import { counted, put, spaced, type Wording } from './wording'

const fitting = (fits: string): string => (fits === '' ? 'None on hand fits.' : `These fit: ${fits}.`)

export const LAYOUT_WORDS: Wording<LayoutFindingCodes> = {
  'too-long-for-sill': ({ overallMm, roomMm, cutMm }, say) =>
    put(
      'Too long for the sill',
      `With its ends it is ${say.length(overallMm)}; the sill has room for ${say.length(roomMm)}. Cut it to ${say.length(cutMm)} or less.`
    ),
  'past-sill': ({ edge, overMm }, say) =>
    put(`Passes the sill's ${edge} edge`, `It is ${say.fine(overMm)} over. Move it back.`),
  'over-front-edge': ({ overMm, share }, say) =>
    put(
      'Stands over the front edge',
      `${say.fine(overMm)} of its depth (${say.share(share)}) has no sill under it. Move it towards the glass, or put a bracket under it.`
    ),
  'clearance-short': ({ edge, clearMm, wantedMm }, say) =>
    put(
      `Tight at the ${edge} edge`,
      `${say.fine(clearMm)} is left; ${say.fine(wantedMm)} is wanted so that it goes in.`
    ),
  'stack-too-high': ({ topMm, clearMm }, say) =>
    put('Too high for the window', `The top stands at ${say.length(topMm)}; ${say.length(clearMm)} is clear.`),
  'plant-too-high': ({ crop, topMm, clearMm }, say) =>
    put(
      `${crop} grows past the clear height`,
      `Grown it reaches ${say.length(topMm)}; ${say.length(clearMm)} is clear. Cut it often, or take a lower crop.`
    ),
  'web-thin': ({ webMm, leastMm }, say) =>
    put(
      'Thin web between holes',
      `${say.fine(webMm)} is left; keep at least ${say.fine(leastMm)}. Move the hole or take a smaller saw.`
    ),
  'holes-overlap': ({ overlapMm }, say) =>
    put('Two holes run into each other', `They overlap by ${say.fine(overlapMm)}. Move one of them.`),
  'hole-in-closure': ({ overlapMm, leastEndMm }, say) =>
    put(
      'A hole runs into the end closure',
      `By ${say.fine(overlapMm)}. Keep its centre at least ${say.length(leastEndMm)} from the cut end.`
    ),
  'hole-off-channel': ({ atMm, lengthMm }, say) =>
    put(
      'A hole lies off the channel',
      `It is marked at ${say.length(atMm)} and the channel is ${say.length(lengthMm)} long.`
    ),
  'hole-wider-than-face': ({ holeMm, flatMm }, say) =>
    put(
      'The hole is wider than the face',
      `Hole ${say.fine(holeMm)}, flat of the face ${say.fine(flatMm)}. Take a smaller saw or a wider profile.`
    ),
  'edge-strip-thin': ({ stripMm, leastMm }, say) =>
    put(
      'Thin strip beside the hole',
      `${say.fine(stripMm)} of face is left on each side; keep at least ${say.fine(leastMm)}.`
    ),
  'rims-overlap': ({ pitchMm, rimMm }, say) =>
    put(
      'Rims of neighbours overlap',
      `They are ${say.fine(pitchMm)} apart and ${say.fine(rimMm)} wide. Move one of them.`
    ),
  'channels-clash': ({ other, overlapMm }, say) =>
    put(
      `Stands in the way of ${other || 'another channel'}`,
      `They overlap by ${say.fine(overlapMm)}. Move one of them.`
    ),
  'obstacle-clash': ({ obstacle, overlapMm }, say) =>
    put(
      `Stands in the way of ${obstacle || 'an obstacle'}`,
      `They overlap by ${say.fine(overlapMm)}. Move the channel.`
    ),
  'plants-crowded': ({ crop, pitchMm, leastMm }, say) =>
    put(`${crop} stands close`, `${say.length(pitchMm)} apart; published spacings begin at ${say.length(leastMm)}.`),
  'canopies-overlap': ({ pairs, overlapMm, share }, say) =>
    put(
      'Leaves of neighbours grow into each other',
      `${counted(pairs, 'pair')}, the worst by ${say.length(overlapMm)} (${say.share(share)} of their reach).`
    ),
  'closure-wrong-material': ({ closure, material, fits }) =>
    put(`${closure} does not hold on ${materialName(material)}`, fitting(fits)),
  'closure-wrong-size': ({ closure, sizeMm, profileMm, toleranceMm, fits }, say) =>
    put(
      `${closure} is for another size`,
      `It is made for ${sizeMm} mm, give or take ${say.number(toleranceMm, 1)} mm; the profile is ${profileMm} mm. ${fitting(fits)}`
    ),
  'joint-does-not-hold': ({ closure, joint, material, fits }) =>
    put(`${spaced(joint)} does not hold ${closure} on ${materialName(material)}`, fitting(fits)),
  'no-refill-opening': ({ channel }) =>
    put(
      `${channel || 'This channel'} cannot be refilled without lifting a plant`,
      'Add a fill port where you can reach it.'
    ),
  'no-level-sight': ({ channel }) =>
    put(`${channel || 'This channel'} does not show its level`, 'Add a float stick or a clear strip.')
}

export const LAYOUT_PROBLEM_WORDS: Wording<
  Omit<LayoutProblemCodes, keyof RangeProblemCodes | keyof ProfileProblemCodes>
> = {
  'no-sill-reading': ({ side }) => put(`The ${side} has not been measured`, 'Measure it at one place at least.'),
  'channel-part-missing': ({ kind, partId }) =>
    put(`The ${kind} ${partId} is not in the design`, 'Choose another for this channel.')
}
