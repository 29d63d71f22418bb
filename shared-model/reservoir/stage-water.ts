import { MM3_PER_LITRE } from '../units'
import { type CupAt, gapRange, lowestCup } from './air-gap'
import type { Basin } from './basin'
import type { StageWater } from './channel-water'
import { volumeMm3 } from './level-and-volume'
import { STAGES, type StageGaps } from './stage'

/**
 * For each stage the highest safe fill line: the level that leaves the wanted gap under the lowest cup (or stands that deep
 * up it), no higher than an overflow or the bore allows; with litres, the least gap, and whether every cup's bottom is wet.
 * `reachable`: there is solution at that level, and where the stage wants immersion every cup gets some, else every cup its
 * gap (one that hangs below the floor has none at any level).
 */
export function stageWaters(
  basin: Basin,
  cups: readonly CupAt[],
  gaps: StageGaps,
  capMm: number
): readonly StageWater[] {
  const lowestMm = lowestCup(cups)
  if (lowestMm === null) return []
  return STAGES.map((stage): StageWater => {
    const wantedGapMm = gaps[stage]
    const targetMm = lowestMm - wantedGapMm
    const safeLevelMm = Math.min(Math.max(0, targetMm), capMm)
    const range = gapRange(cups, safeLevelMm)
    const wetted = range !== null && range.greatestMm <= 0
    return {
      stage,
      wantedGapMm,
      safeLevelMm,
      safeFillShare: basin.insideHeightMm > 0 ? safeLevelMm / basin.insideHeightMm : 0,
      litres: volumeMm3(basin, safeLevelMm) / MM3_PER_LITRE,
      gapMm: range?.leastMm ?? 0,
      wetted,
      reachable: targetMm > 0 && (wantedGapMm < 0 ? wetted : range !== null && range.leastMm >= wantedGapMm - 0.05)
    }
  })
}
