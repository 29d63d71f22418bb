import type { Channel } from '../layout'
import { failed, ok, type Result } from '../outcome'
import type { Cup } from '../parts'
import type { PartIndex, SeatFit } from '../seating'
import { MM3_PER_LITRE } from '../units'
import { type CupAt, cupsAt, gapRange, siteWaters } from './air-gap'
import { type Basin, basinOf, edgeDrop } from './basin'
import type { ChannelWater, DrawDown } from './channel-water'
import { checkWaterPlan } from './check-water-plan'
import type { ReservoirFinding, ReservoirProblem } from './codes'
import { dailyUse } from './daily-use'
import { drawDown } from './draw-down'
import { fillLine, overflowLevel } from './fill-line'
import { keepAlike } from './keep-alike'
import { boreVolume, levelOfVolume, volumeMm3 } from './level-and-volume'
import { type LadderWanted, riserLadder } from './riser-ladder'
import { shims } from './shims'
import { stageWaters } from './stage-water'
import { waterFindings } from './water-findings'
import type { WaterInput } from './water-input'

export interface WateredChannel {
  readonly water: ChannelWater
  readonly findings: readonly ReservoirFinding[]
  /** The water body, for what else goes by it. */
  readonly basin: Basin
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
  const use = dailyUse(channel.sites, index)
  const { litres, fullLitres, range, ...held } = heldIn(input, basin, cups, line.levelMm, use.dailyMl)
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
    cappedByOverflow: line.cappedByOverflow,
    sites: siteWaters(cups, line.levelMm, basin),
    leastGapMm: range?.leastMm ?? null,
    greatestGapMm: range?.greatestMm ?? null,
    litresPerPlant: plants > 0 ? litres / plants : null,
    ...held,
    shims: shims(channel, layout, basin)
  }
  return ok({ water: worked, findings: waterFindings(input, worked, basin, line, use.unknownCrops), basin })
}

type Held = Pick<
  ChannelWater,
  'litres' | 'fullLitres' | 'displacedLitres' | 'endLevelMm' | 'stages' | 'ladder' | 'drawDown'
> & { readonly range: ReturnType<typeof gapRange> }

const alike = keepAlike<Held>()

/** What the basin holds, and how it sinks: the same wherever the channel stands and whatever it is called. */
function heldIn(
  input: WaterInput,
  basin: Basin,
  cups: readonly CupAt[],
  levelMm: number,
  dailyMl: number | null
): Held {
  const { channel, index, water, cupsOnHand, sawsOnHand } = input
  const capMm = overflowLevel(channel, basin)
  const wanted = ladderWanted(input, basin, cups, levelMm)
  const heights = cups.map(({ undersideMm, riseMm }) => [undersideMm, riseMm])
  const figures = [basin, heights, levelMm, capMm, dailyMl, wanted?.hungMm, wanted?.holeMm, wanted?.plantCup.id]
  return alike(figures, [index, water, cupsOnHand, sawsOnHand], () => {
    const litres = volumeMm3(basin, levelMm) / MM3_PER_LITRE
    return {
      litres,
      fullLitres: volumeMm3(basin, basin.insideHeightMm) / MM3_PER_LITRE,
      range: gapRange(cups, levelMm),
      displacedLitres: boreVolume(basin, levelMm) / MM3_PER_LITRE - litres,
      endLevelMm: levelOfVolume(basin, water.endShare * litres * MM3_PER_LITRE, levelMm),
      stages: stageWaters(basin, cups, water.stageGapsMm, capMm),
      ladder: wanted === null ? [] : riserLadder(wanted),
      drawDown: drawDownOf(basin, cups, levelMm, litres, dailyMl, water.endShare)
    }
  })
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

/** The ladder goes by the lowest site's cup, hung straight in the face, in the hole that site has; null: no site has a cup. */
function ladderWanted(
  { layout, fits, index, water, cupsOnHand, sawsOnHand }: WaterInput,
  basin: Basin,
  cups: readonly CupAt[],
  levelMm: number
): LadderWanted | null {
  let lowest: Pick<LadderWanted, 'hungMm' | 'plantCup' | 'holeMm'> | null = null
  for (const [at, fit] of fits.entries()) {
    const cup = plantCup(fit, index)
    if (!cup) continue
    const faceMm = fit.interfaces[0]?.openingAtMm ?? basin.insideHeightMm
    const hungMm = faceMm + cup.rimThicknessMm - cup.heightMm + (cups[at]?.riseMm ?? 0) - edgeDrop(basin, cup.bottomMm)
    if (lowest === null || hungMm < lowest.hungMm) lowest = { hungMm, plantCup: cup, holeMm: fit.holeMm }
  }
  return (
    lowest && {
      ...lowest,
      levelMm,
      gaps: water.stageGapsMm,
      cups: cupsOnHand,
      saws: sawsOnHand,
      widestHoleMm: layout.section.widthMm - 2 * layout.section.cornerRadiusMm
    }
  )
}

function plantCup(fit: SeatFit, index: PartIndex): Cup | undefined {
  const id = fit.interfaces.findLast((part) => part.kind === 'cup')?.partId
  return id === undefined ? undefined : index.cups.get(id)
}
