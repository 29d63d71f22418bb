import type { Channel } from '../layout'
import type { PartIndex } from '../seating'
import type { Basin } from './basin'
import type { ChannelWater } from './channel-water'
import type { ReservoirFinding } from './codes'
import { riseCheck } from './draw-down'
import type { FillLine } from './fill-line'
import { gapFindings } from './gap-findings'
import { levelFindings } from './level-findings'
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
    ...levelFindings(input, worked, basin, line),
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
      source: 'rise-over-air-roots',
      fix: { field: `water.stageGapsMm.${toStage}`, value: water.stageGapsMm[fromStage] - rise.mostMm }
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
