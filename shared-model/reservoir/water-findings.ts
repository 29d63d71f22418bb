import type { Channel } from '../layout'
import type { PartIndex } from '../seating'
import { type Basin, riseAt } from './basin'
import type { ChannelWater, StageWater } from './channel-water'
import type { ReservoirFinding } from './codes'
import { riseCheck } from './draw-down'
import { type FillLine, lipLevel } from './fill-line'
import { HEAD_LEAST_MM, IMMERSION_MOST_MM, TILT_TOLD_MM } from './limits'
import { STAGES } from './stage'
import type { WaterInput } from './water-input'

/** What is to be minded about one channel's water, each with its figures, limit, source and, where there is one, cure. */
export function waterFindings(
  input: WaterInput,
  worked: ChannelWater,
  basin: Basin,
  line: FillLine,
  unknownCrops: readonly string[]
): readonly ReservoirFinding[] {
  const { channel, index } = input
  return [
    ...gapFindings(input, worked),
    ...tiltFindings(channel, worked, basin),
    ...brimFindings(input, worked),
    ...openingFindings(channel, basin, line),
    ...ladderFindings(input, worked),
    ...volumeFindings(channel, worked, index),
    ...unknownCrops.map(
      (crop): ReservoirFinding => ({
        code: 'daily-use-unknown',
        severity: 'note',
        figures: { crop },
        where: { channelId: channel.id, field: 'crops' }
      })
    )
  ]
}

function gapFindings({ channel, water }: WaterInput, worked: ChannelWater): readonly ReservoirFinding[] {
  const { leastGapMm, greatestGapMm } = worked
  if (leastGapMm === null || greatestGapMm === null) return []
  const { stage } = water
  const wantedMm = water.stageGapsMm[stage]
  const field = `channels.${channel.id}.fillShare`
  const where = { channelId: channel.id, field }
  const fix = toStage(
    field,
    worked.stages.find((s) => s.stage === stage)
  )
  if (wantedMm < 0) {
    const found: ReservoirFinding[] = []
    if (greatestGapMm > 0) {
      found.push({
        code: 'cup-not-wetted',
        severity: 'warn',
        figures: { stage, gapMm: greatestGapMm, wantedMm },
        where,
        source: 'immersion-at-planting',
        ...fix
      })
    }
    if (-leastGapMm > Math.max(IMMERSION_MOST_MM, -wantedMm) + 0.05) {
      found.push({
        code: 'immersion-deep',
        severity: 'note',
        figures: { stage, immersionMm: -leastGapMm, mostMm: Math.max(IMMERSION_MOST_MM, -wantedMm) },
        where,
        source: 'immersion-at-planting',
        ...fix
      })
    }
    return found
  }
  if (leastGapMm >= wantedMm - 0.05) return []
  const headMm = worked.insideHeightMm - worked.levelMm
  return [
    {
      code: 'gap-short',
      severity: headMm < HEAD_LEAST_MM ? 'warn' : 'note',
      figures: { stage, gapMm: leastGapMm, wantedMm, headMm },
      where,
      source: headMm < HEAD_LEAST_MM ? 'head-under-face' : 'air-gap-water-culture',
      ...fix
    }
  ]
}

/** Filling to the stage's safe line clears it, where that line can be reached; downwards to a thousandth. */
function toStage(
  field: string,
  stage: StageWater | undefined
): { readonly fix?: { readonly field: string; readonly value: number } } {
  if (!stage?.reachable) return {}
  return { fix: { field, value: Math.floor(stage.safeFillShare * 1000) / 1000 } }
}

function tiltFindings(channel: Channel, worked: ChannelWater, basin: Basin): readonly ReservoirFinding[] {
  const riseMm = Math.abs(basin.slope) * basin.wetLengthMm
  if (riseMm < TILT_TOLD_MM) return []
  const found: ReservoirFinding[] = []
  const where = { channelId: channel.id, field: 'sill.fallAlongMmPerM' }
  if (worked.leastGapMm !== null && worked.greatestGapMm !== null) {
    const { leastGapMm, greatestGapMm } = worked
    found.push({
      code: 'tilt-takes-gap',
      severity: 'note',
      figures: { riseMm, leastGapMm, greatestGapMm },
      where,
      source: 'bore-volume'
    })
  }
  const overMm = worked.levelMm + riseMm / 2 - worked.insideHeightMm
  if (overMm > 0) {
    found.push({
      code: 'spills-at-low-end',
      severity: 'warn',
      figures: { overMm },
      where: { channelId: channel.id, field: `channels.${channel.id}.fillShare` },
      source: 'bore-volume'
    })
  }
  return found
}

/** Brimful, solution stands against the seats' edges; only a seat with a full ring of contact keeps it in. */
function brimFindings({ channel, fits }: WaterInput, worked: ChannelWater): readonly ReservoirFinding[] {
  const faceMm = worked.insideHeightMm
  const leaking = worked.sites.find((site, i) => site.levelMm > faceMm - 0.5 && !fits[i]?.seals)
  if (!leaking) return []
  return [
    {
      code: 'seat-leaks-when-brimful',
      severity: 'warn',
      figures: { levelMm: leaking.levelMm, faceMm },
      where: { channelId: channel.id, siteId: leaking.siteId, field: `channels.${channel.id}.fillShare` },
      source: 'seat-geometry'
    }
  ]
}

function openingFindings(channel: Channel, basin: Basin, line: FillLine): readonly ReservoirFinding[] {
  const found: ReservoirFinding[] = []
  if (line.cappedByOverflow) {
    const field = `channels.${channel.id}.fillShare`
    found.push({
      code: 'overflow-caps-fill',
      severity: 'note',
      figures: { wantedMm: line.wantedMm, cappedMm: line.levelMm },
      where: { channelId: channel.id, field },
      fix: { field, value: Math.floor((line.levelMm / basin.insideHeightMm) * 1000) / 1000 }
    })
  }
  for (const opening of channel.openings) {
    const open = opening.closure === 'none' || opening.closure === 'screen'
    if (!open || opening.kind === 'overflow' || opening.face === 'top') continue
    const lipMm = opening.face === 'bottom' ? riseAt(basin, opening.atMm) : lipLevel(opening, channel, basin)
    if (lipMm >= line.levelMm) continue
    found.push({
      code: 'opening-below-level',
      severity: 'stop',
      figures: { opening: opening.kind, lipMm, levelMm: line.levelMm },
      where: {
        channelId: channel.id,
        openingId: opening.id,
        field: `channels.${channel.id}.openings.${opening.id}.closure`
      }
    })
  }
  return found
}

function ladderFindings({ channel, water }: WaterInput, worked: ChannelWater): readonly ReservoirFinding[] {
  const found: ReservoirFinding[] = []
  const rung = worked.ladder.find((r) => r.stage === water.stage)
  const short = worked.leastGapMm !== null && worked.leastGapMm < water.stageGapsMm[water.stage] - 0.05
  if (rung && short && rung.how.kind === 'no-cup-reaches') {
    found.push({
      code: 'no-riser-reaches',
      severity: 'note',
      figures: { stage: rung.stage, liftMm: rung.liftMm, mostMm: rung.how.mostMm },
      where: { channelId: channel.id, field: `channels.${channel.id}.fillShare` },
      source: 'riser-ladder'
    })
  }
  STAGES.forEach((fromStage, i) => {
    const toStage = STAGES[i + 1]
    if (!toStage) return
    const rise = riseCheck(water.stageGapsMm[fromStage], water.stageGapsMm[toStage])
    if (!rise.drowns) return
    found.push({
      code: 'rise-over-roots',
      severity: 'warn',
      figures: { fromStage, toStage, riseMm: rise.riseMm, mostMm: rise.mostMm },
      where: { channelId: channel.id, field: `water.stageGapsMm.${toStage}` },
      source: 'rise-over-air-roots'
    })
  })
  return found
}

function volumeFindings(channel: Channel, worked: ChannelWater, index: PartIndex): readonly ReservoirFinding[] {
  const litres = worked.litresPerPlant
  if (litres === null) return []
  const found: ReservoirFinding[] = []
  const told = new Set<string>()
  for (const { cropId } of channel.sites) {
    const crop = cropId === null ? undefined : index.crops.get(cropId)
    if (!crop || crop.startLitres === null || litres >= crop.startLitres || told.has(crop.id)) continue
    told.add(crop.id)
    found.push({
      code: 'litres-per-plant-short',
      severity: 'note',
      figures: { crop: crop.name, litres, wantedLitres: crop.startLitres },
      where: { channelId: channel.id, field: `channels.${channel.id}.sites` },
      source: crop.evidence.startLitres?.source ?? 'float-bed-volumes'
    })
  }
  return found
}
