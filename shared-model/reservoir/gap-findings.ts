import type { ChannelWater, StageWater } from './channel-water'
import type { ReservoirFinding } from './codes'
import { HEAD_LEAST_MM, IMMERSION_MOST_MM } from './limits'
import type { WaterInput } from './water-input'

/** Whether the cups stand in the air or in the solution as the plan's stage wants it. */
export function gapFindings({ channel, water }: WaterInput, worked: ChannelWater): readonly ReservoirFinding[] {
  const { leastGapMm, greatestGapMm } = worked
  if (leastGapMm === null || greatestGapMm === null) return []
  const { stage } = water
  const wantedMm = water.stageGapsMm[stage]
  const field = `channels.${channel.id}.fillShare`
  const where = { channelId: channel.id, field }
  const safe = worked.stages.find((s) => s.stage === stage)
  const fix = toStage(field, safe)
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
    const mostMm = Math.max(IMMERSION_MOST_MM, -wantedMm)
    const isDeep = (gapMm: number): boolean => -gapMm > mostMm + 0.05
    if (isDeep(leastGapMm)) {
      found.push({
        code: 'immersion-deep',
        severity: 'note',
        figures: { stage, immersionMm: -leastGapMm, mostMm },
        where,
        source: 'immersion-at-planting',
        // A cup below a floor that has run dry is no less deep at any level.
        ...(safe !== undefined && isDeep(safe.gapMm) ? {} : fix)
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
