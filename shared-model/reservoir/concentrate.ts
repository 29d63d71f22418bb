/**
 * Stock concentrate for a target conductivity.
 *
 * Share of the label's dose = (target − water) ÷ (conductivity of the dose − water); mL = share × dose × litres. The source
 * water's own conductivity adds on. Straight only between half and double the label's dose: outside, a problem.
 * Conductivity in mS/cm at 25 °C, dose in mL/L.
 * @source concentrate-dilution
 */
import { failed, ok, type Result } from '../outcome'
import type { Litres } from '../units'
import { within } from './check-water-plan'
import type { ReservoirProblem } from './codes'
import { EC_MOST } from './limits'

const LEAST_SHARE = 0.5
const MOST_SHARE = 2

export function concentrateDose(wanted: {
  readonly targetEcMsPerCm: number
  readonly waterEcMsPerCm: number
  readonly doseEcMsPerCm: number
  readonly doseMlPerL: number
  readonly litres: Litres
}): Result<
  { readonly share: number; readonly ml: number; readonly mlPerL: number; readonly ecMsPerCm: number },
  ReservoirProblem
> {
  const { targetEcMsPerCm, waterEcMsPerCm, doseEcMsPerCm, doseMlPerL, litres } = wanted
  const wrong =
    within('source water conductivity', waterEcMsPerCm, 0, EC_MOST, 'water.sourceEcMsPerCm') ??
    within('conductivity of the dose', doseEcMsPerCm, waterEcMsPerCm + 1e-3, EC_MOST, 'water.feed.doseEcMsPerCm') ??
    within('target conductivity', targetEcMsPerCm, waterEcMsPerCm, EC_MOST, 'water.feed.targetEcMsPerCm') ??
    within('dose', doseMlPerL, 0.01, 1000, 'water.feed.doseMlPerL') ??
    within('volume', litres, 0, 1e6)
  if (wrong) return failed(wrong)
  const share = (targetEcMsPerCm - waterEcMsPerCm) / (doseEcMsPerCm - waterEcMsPerCm)
  if (share < LEAST_SHARE - 1e-9 || share > MOST_SHARE + 1e-9) {
    return failed({
      code: 'dose-not-linear',
      figures: { share, least: LEAST_SHARE, most: MOST_SHARE },
      where: { field: 'water.feed.targetEcMsPerCm' }
    })
  }
  const mlPerL = share * doseMlPerL
  return ok({
    share,
    ml: mlPerL * litres,
    mlPerL,
    ecMsPerCm: waterEcMsPerCm + share * (doseEcMsPerCm - waterEcMsPerCm)
  })
}
