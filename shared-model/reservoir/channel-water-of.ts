import type { Channel } from '../layout'
import { failed, ok, type Result } from '../outcome'
import type { Cup } from '../parts'
import type { PartIndex, SeatFit } from '../seating'
import { MM3_PER_LITRE } from '../units'
import { type CupAt, cupsAt, gapRange, siteWaters } from './air-gap'
import { type Basin, basinOf } from './basin'
import type { ChannelWater, DrawDown, Rung } from './channel-water'
import { checkWaterPlan } from './check-water-plan'
import type { ReservoirFinding, ReservoirProblem } from './codes'
import { dailyUse } from './daily-use'
import { drawDown } from './draw-down'
import { fillLine, overflowLevel } from './fill-line'
import { boreVolume, levelOfVolume, volumeMm3 } from './level-and-volume'
import { riserLadder } from './riser-ladder'
import { shims } from './shims'
import { stageWaters } from './stage-water'
import { waterFindings } from './water-findings'
import type { WaterInput } from './water-input'

export interface WateredChannel {
  readonly water: ChannelWater
  readonly findings: readonly ReservoirFinding[]
}

/**
 * Levels, litres, gaps, stages, riser ladder, draw-down and shims of one channel, and what is to be minded about them.
 * Fails when the fill share is not 0 to 1, or a figure of the water plan is out of its range.
 */
export function channelWater(input: WaterInput): Result<WateredChannel, ReservoirProblem> {
  const { channel, layout, fits, index, sill, water } = input
  const wrong = checkWaterPlan(water) ?? checkShare(channel)
  if (wrong) return failed(wrong)
  const basin = basinOf(channel, layout, fits, sill)
  const cups = cupsAt(basin, channel.sites, fits)
  const line = fillLine(channel, basin)
  const litres = volumeMm3(basin, line.levelMm) / MM3_PER_LITRE
  const fullLitres = volumeMm3(basin, basin.insideHeightMm) / MM3_PER_LITRE
  const range = gapRange(cups, line.levelMm)
  const use = dailyUse(channel.sites, index)
  const plants = channel.sites.filter((site) => site.cropId !== null).length
  const worked: ChannelWater = {
    channelId: channel.id,
    insideHeightMm: basin.insideHeightMm,
    levelMm: line.levelMm,
    fromTopMm: layout.section.averageWallMm + basin.insideHeightMm - line.levelMm,
    fillShare: basin.insideHeightMm > 0 ? line.levelMm / basin.insideHeightMm : 0,
    volumeShare: fullLitres > 0 ? litres / fullLitres : 0,
    litres,
    fullLitres,
    displacedLitres: boreVolume(basin, line.levelMm) / MM3_PER_LITRE - litres,
    cappedByOverflow: line.cappedByOverflow,
    sites: siteWaters(cups, line.levelMm),
    leastGapMm: range?.leastMm ?? null,
    greatestGapMm: range?.greatestMm ?? null,
    litresPerPlant: plants > 0 ? litres / plants : null,
    endLevelMm: levelOfVolume(basin, water.endShare * litres * MM3_PER_LITRE, line.levelMm),
    stages: stageWaters(basin, cups, water.stageGapsMm, overflowLevel(channel, basin)),
    ladder: ladderOf(input, basin, cups, line.levelMm),
    drawDown: drawDownOf(basin, cups, line.levelMm, litres, use.dailyMl, water.endShare),
    shims: shims(channel, layout, basin)
  }
  return ok({ water: worked, findings: waterFindings(input, worked, basin, line, use.unknownCrops) })
}

function checkShare(channel: Channel): ReservoirProblem | undefined {
  const value = channel.fillShare
  const where = { channelId: channel.id, field: `channels.${channel.id}.fillShare` }
  if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what: 'fill share' }, where }
  if (value < 0 || value > 1)
    return { code: 'out-of-range', figures: { what: 'fill share', value, least: 0, most: 1 }, where }
  return undefined
}

function drawDownOf(
  basin: Basin,
  cups: readonly CupAt[],
  levelMm: number,
  litres: number,
  dailyMl: number | null,
  endShare: number
): DrawDown | null {
  if (dailyMl === null || dailyMl <= 0 || litres <= 0) return null
  return drawDown(basin, cups, { levelMm, litres, dailyMl, endShare })
}

/** The ladder goes by the lowest site's cup, hung straight in the face, in the hole that site has. */
function ladderOf(
  { layout, fits, index, water, cupsOnHand, sawsOnHand }: WaterInput,
  basin: Basin,
  cups: readonly CupAt[],
  levelMm: number
): readonly Rung[] {
  let lowest: { readonly at: number; readonly hungMm: number; readonly cup: Cup } | undefined
  fits.forEach((fit, at) => {
    const cup = plantCup(fit, index)
    if (!cup) return
    const faceMm = fit.interfaces[0]?.openingAtMm ?? basin.insideHeightMm
    const hungMm = faceMm + cup.rimThicknessMm - cup.heightMm + (cups[at]?.riseMm ?? 0)
    if (!lowest || hungMm < lowest.hungMm) lowest = { at, hungMm, cup }
  })
  const fit = lowest && fits[lowest.at]
  if (!lowest || !fit) return []
  return riserLadder({
    levelMm,
    gaps: water.stageGapsMm,
    hungMm: lowest.hungMm,
    plantCup: lowest.cup,
    holeMm: fit.holeMm,
    cups: cupsOnHand,
    saws: sawsOnHand,
    widestHoleMm: layout.section.widthMm - 2 * layout.section.cornerRadiusMm
  })
}

function plantCup(fit: SeatFit, index: PartIndex): Cup | undefined {
  const id = fit.interfaces.findLast((part) => part.kind === 'cup')?.partId
  return id === undefined ? undefined : index.cups.get(id)
}
