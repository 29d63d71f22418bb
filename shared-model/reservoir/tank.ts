import { failed, ok, type Result } from '../outcome'
import { type Litres, litres, MM3_PER_LITRE, type Mm, mm } from '../units'
import { within } from './check-water-plan'
import type { ReservoirProblem } from './codes'

/**
 * A straight-sided tank drawn down from one depth to another: what is left, used, and its plan area.
 *
 * Plan area = start volume ÷ start depth; left = start volume × end depth ÷ start depth. Litres, mm, m².
 * Valid: 0 < start litres ≤ 10⁶, 0 < start depth ≤ 10 000 mm, 0 ≤ end depth ≤ start depth.
 * @source still-trial
 */
export function tankDrawDown(
  startLitres: Litres,
  startDepthMm: Mm,
  endDepthMm: Mm
): Result<
  {
    readonly planAreaM2: number
    readonly litresPerCm: number
    readonly leftLitres: number
    readonly usedLitres: number
    readonly leftShare: number
  },
  ReservoirProblem
> {
  const wrong =
    within('start volume', startLitres, 1e-6, 1e6) ??
    within('start depth', startDepthMm, 1e-3, 10_000) ??
    within('end depth', endDepthMm, 0, startDepthMm)
  if (wrong) return failed(wrong)
  const leftShare = endDepthMm / startDepthMm
  const leftLitres = startLitres * leftShare
  return ok({
    planAreaM2: startLitres / startDepthMm,
    litresPerCm: (startLitres / startDepthMm) * 10,
    leftLitres,
    usedLitres: startLitres - leftLitres,
    leftShare
  })
}

/** Litres for each plant. Valid: up to 10⁶ L; 1 to 100 000 plants, whole. @source float-bed-volumes */
export function litresPerPlant(volume: Litres, plants: number): Result<Litres, ReservoirProblem> {
  const wrong =
    within('volume', volume, 0, 1e6) ??
    within('number of plants', Number.isInteger(plants) ? plants : Number.NaN, 1, 100_000)
  return wrong ? failed(wrong) : ok(litres(volume / plants))
}

/** Depth of a volume in a straight-sided tank, mm. Valid: sides over 0 to 100 m, up to 10⁶ L. @source float-bed-volumes */
export function fillDepth(lengthMm: Mm, widthMm: Mm, volume: Litres): Result<Mm, ReservoirProblem> {
  const wrong =
    within('tank length', lengthMm, 1e-3, 100_000) ??
    within('tank width', widthMm, 1e-3, 100_000) ??
    within('volume', volume, 0, 1e6)
  return wrong ? failed(wrong) : ok(mm((volume * MM3_PER_LITRE) / (lengthMm * widthMm)))
}

/** What plants may take until the end level, and what is left then, L. Valid: end share 0 to 1. @source end-of-crop */
export function usableSolution(
  start: Litres,
  endShare: number
): Result<{ readonly usableLitres: number; readonly leftLitres: number }, ReservoirProblem> {
  const wrong = within('start volume', start, 0, 1e6) ?? within('end share', endShare, 0, 1)
  if (wrong) return failed(wrong)
  return ok({ usableLitres: start * (1 - endShare), leftLitres: start * endShare })
}
