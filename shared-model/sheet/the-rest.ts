import type { CutPlan } from '../cutting'
import type { Plan } from '../plan'

/** The plan as it stands for what is left to do; the same plan where nothing is cut yet. */
export const theRest = (plan: Plan): Plan => {
  const { rest } = plan
  if (rest === null) return plan
  const waiting = new Set(
    plan.pieces
      .filter(({ id }) => rest.toDrill.includes(id) || rest.toCut.includes(id))
      .map(({ channelId }) => channelId)
  )
  return {
    ...plan,
    bench: rest.bench,
    cuts: plan.cuts.map(onlyOpen),
    channels: plan.channels.filter(({ channelId }) => waiting.has(channelId))
  }
}

/** Bars from which something is still to be cut. */
const onlyOpen = (cuts: CutPlan): CutPlan => {
  const bars = cuts.bars.filter(({ pieces }) => pieces.some(({ state }) => state === 'planned'))
  const lengths = bars.flatMap(({ pieces }) => pieces.filter(({ state }) => state === 'planned'))
  return {
    ...cuts,
    bars,
    stopSettingsMm: cuts.stopSettingsMm.filter((stopMm) =>
      lengths.some(({ lengthMm }) => Math.abs(lengthMm - stopMm) < SAME_LENGTH_MM)
    )
  }
}

/** Pieces are set on the graduation before they are planned, so equal ones differ by arithmetic only. */
export const SAME_LENGTH_MM = 0.001

/** What is done and what is left, in words for the top of the sheet. */
export const restWords = (plan: Plan, revision: string): string => {
  const { rest, pieces } = plan
  if (rest === null) return ''
  const cut = pieces.length - rest.toCut.length
  const drilled = pieces.length - rest.toDrill.length
  return (
    `What is left to do: ${cut} of ${pieces.length} pieces are cut, ${drilled} drilled. ` +
    `${revision === '' ? 'This sheet' : `Revision ${revision}`} stands in place of every sheet printed before.`
  )
}
