import { WATER_LEAST_C, WATER_MOST_C } from '../materials'
import type { ReservoirProblem } from './codes'
import { EC_MOST } from './limits'
import { STAGES, type WaterPlan } from './stage'

/** The first figure of a water plan that cannot be, with its field and both bounds; undefined when all are in range. */
export function checkWaterPlan(water: WaterPlan): ReservoirProblem | undefined {
  for (const stage of STAGES) {
    const wrong = within(`${stage} gap`, water.stageGapsMm[stage], -500, 500, `water.stageGapsMm.${stage}`)
    if (wrong) return wrong
  }
  return (
    within('water temperature', water.celsius, WATER_LEAST_C, WATER_MOST_C, 'water.celsius') ??
    within('end share', water.endShare, 0, 1, 'water.endShare') ??
    (water.sourceEcMsPerCm === null
      ? undefined
      : within('source water conductivity', water.sourceEcMsPerCm, 0, EC_MOST, 'water.sourceEcMsPerCm')) ??
    (water.mediumGPerL === undefined
      ? undefined
      : within('weight of the wet medium', water.mediumGPerL, 0, 2000, 'water.mediumGPerL')) ??
    checkFeed(water)
  )
}

function checkFeed({ feed }: WaterPlan): ReservoirProblem | undefined {
  if (feed.kind === 'concentrate') {
    return (
      within('dose', feed.doseMlPerL, 0.01, 1000, 'water.feed.doseMlPerL') ??
      within('conductivity of the dose', feed.doseEcMsPerCm, 0.01, EC_MOST, 'water.feed.doseEcMsPerCm') ??
      within('target conductivity', feed.targetEcMsPerCm, 0, EC_MOST, 'water.feed.targetEcMsPerCm')
    )
  }
  if (feed.kind !== 'salts') return undefined
  for (const [i, salt] of feed.salts.entries()) {
    const wrong = within('salt to the litre', salt.gPerL, 0, 100, `water.feed.salts.${i}.gPerL`)
    if (wrong) return wrong
    for (const [name, percent] of Object.entries(salt.percent)) {
      const share = within(`${name} on the label`, percent, 0, 100, `water.feed.salts.${i}.percent.${name}`)
      if (share) return share
    }
  }
  return undefined
}

/** A problem naming both bounds when a value is not a number within them. */
export function within(
  what: string,
  value: number,
  least: number,
  most: number,
  field?: string
): ReservoirProblem | undefined {
  const where = field === undefined ? {} : { where: { field } }
  if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what }, ...where }
  if (value < least || value > most) return { code: 'out-of-range', figures: { what, value, least, most }, ...where }
  return undefined
}
