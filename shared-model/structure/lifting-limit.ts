/**
 * Recommended weight limit for lifting by hand, by the revised lifting equation.
 *
 * RWL = LC × HM × VM × DM × AM × FM × CM, with LC 51 lb, HM = 10 ÷ H, VM = 1 − 0.0075 |V − 30|, DM = 0.82 + 1.8 ÷ D,
 * AM = 1 − 0.0032 A. Each multiplier is held to its range: H under 10 in counts as 10 and over 25 in nothing may be lifted;
 * V 0 to 70 in; D under 10 in counts as 10, over 70 in nothing; A 0 to 135°; no multiplier is over 1 or under 0.
 *
 * Symbols: H horizontal reach, V height of the hands at the start, D vertical travel, in mm here; A twist in degrees; FM
 * frequency and CM grip factors 0 to 1. Answer in g.
 * @source niosh-lifting
 */
import { failed, ok, type Result } from '../outcome'
import { type Grams, grams, gramsFromPounds, inchesFromMm, mm } from '../units'
import type { StructureProblem } from './codes'
import { LIFT_CONSTANT_LB } from './limits'
import { within } from './within'

export interface Lift {
  readonly horizontalMm: number
  readonly verticalMm: number
  readonly travelMm: number
  readonly asymmetryDeg: number
  readonly frequencyFactor: number
  readonly gripFactor: number
}

/** Reaching over a sill: H 20 in, V 36 in, D 10 in, no twist, now and then, poor grip. */
export const OVER_SILL: Lift = {
  horizontalMm: 508,
  verticalMm: 914.4,
  travelMm: 254,
  asymmetryDeg: 0,
  frequencyFactor: 1,
  gripFactor: 0.9
}

export function liftingLimit(lift: Lift): Result<Grams, StructureProblem> {
  const wrong =
    within('reach', lift.horizontalMm, 0, 10_000) ??
    within('height of the hands', lift.verticalMm, -10_000, 10_000) ??
    within('travel', lift.travelMm, 0, 10_000) ??
    within('twist', lift.asymmetryDeg, 0, 360) ??
    within('frequency factor', lift.frequencyFactor, 0, 1) ??
    within('grip factor', lift.gripFactor, 0, 1)
  if (wrong) return failed(wrong)
  const h = inchesFromMm(mm(lift.horizontalMm))
  const v = inchesFromMm(mm(lift.verticalMm))
  const d = inchesFromMm(mm(lift.travelMm))
  const hm = h > 25 ? 0 : 10 / Math.max(10, h)
  const vm = v < 0 || v > 70 ? 0 : 1 - 0.0075 * Math.abs(v - 30)
  const dm = d > 70 ? 0 : Math.min(1, 0.82 + 1.8 / Math.max(10, d))
  const am = lift.asymmetryDeg > 135 ? 0 : 1 - 0.0032 * lift.asymmetryDeg
  return ok(grams(gramsFromPounds(LIFT_CONSTANT_LB) * hm * vm * dm * am * lift.frequencyFactor * lift.gripFactor))
}
