import { failed, ok, type Result } from '../outcome'
import { firstProblem, outside } from './bounds'
import type { PricingFinding, PricingProblem } from './codes'
import type { UnitOutside } from './price-input'
import type { ParcelSize } from './price-plan'
import type { ParcelSetup } from './selling'

export type Sides = readonly [number, number, number]

/**
 * Length plus girth of a parcel: the longest side, and twice the sum of the other two. The answer is in the unit of the sides.
 *
 * @source length-plus-girth
 */
export function lengthPlusGirth(sides: Sides): Result<number, PricingProblem> {
  const problem = badSides(sides)
  if (problem !== null) return failed(problem)
  const longest = Math.max(...sides)
  const all = sides[0] + sides[1] + sides[2]
  return ok(longest + 2 * (all - longest))
}

/** Lengths, weights and their divisor in any units that belong together. */
export interface ParcelRules {
  /** Volume over this counts for dimensional weight. */
  readonly threshold: number
  /** Volume to one unit of weight; null: the carrier bills by weight alone. */
  readonly divisor: number | null
  /** Sides are rounded to this step before their volume is taken; 0: not. */
  readonly sideStep: number
  readonly sideRounding: 'nearest' | 'up' | 'down'
  /** Weights are rounded up to this step; 0: not. */
  readonly weightStep: number
}

/**
 * The weight a carrier bills: the larger of the actual and the dimensional weight, rounded up.
 *
 * dimensional = product of the rounded sides / divisor, where that product is over the threshold.
 *
 * @source billed-parcel-weight
 */
export function billedParcelWeight(sides: Sides, actual: number, rules: ParcelRules): Result<number, PricingProblem> {
  const problem = firstProblem([
    badSides(sides),
    outside('weight', actual, 0, MOST),
    outside('threshold', rules.threshold, 0, MOST ** 2),
    outside('divisor', rules.divisor ?? 1, 1e-9, MOST),
    outside('sideStep', rules.sideStep, 0, MOST),
    outside('weightStep', rules.weightStep, 0, MOST)
  ])
  if (problem !== null) return failed(problem)
  const volume = sides.reduce((product, side) => product * onStep(side, rules.sideStep, rules.sideRounding), 1)
  const bySize = rules.divisor !== null && volume > rules.threshold ? volume / rules.divisor : 0
  return ok(onStep(Math.max(actual, bySize), rules.weightStep, 'up'))
}

/** The parcel of one unit, padding and packing included, and what its carrier's limits say. */
export function parcelOf(
  unit: UnitOutside,
  setup: ParcelSetup
): Result<{ readonly parcel: ParcelSize; readonly findings: readonly PricingFinding[] }, PricingProblem> {
  const padded = (side: number) => side + 2 * setup.paddingMm
  const sidesMm: Sides = [padded(unit.sidesMm[0]), padded(unit.sidesMm[1]), padded(unit.sidesMm[2])]
  const massG = unit.massG + setup.packingMassG
  const length = lengthPlusGirth(sidesMm)
  if (!length.ok) return length
  const billed = billedParcelWeight(sidesMm, massG, {
    threshold: setup.dimensionalAboveMm3,
    divisor: setup.divisorMm3PerG,
    sideStep: setup.sideRoundingMm,
    sideRounding: setup.sideRounding ?? 'nearest',
    weightStep: setup.weightRoundingG
  })
  if (!billed.ok) return billed
  const parcel = { sidesMm, massG, billedG: billed.value, lengthPlusGirthMm: length.value }
  return ok({ parcel, findings: limitFindings(parcel, setup) })
}

function limitFindings(parcel: ParcelSize, setup: ParcelSetup): readonly PricingFinding[] {
  const findings: PricingFinding[] = []
  const [lengthMm, lengthPlusGirthMm, massG] = [Math.max(...parcel.sidesMm), parcel.lengthPlusGirthMm, parcel.massG]
  const at = (field: string) => ({ severity: 'warn', where: { field: `pricing.parcel.${field}` } }) as const
  const [mostLength, mostGirth, mostMass] = [setup.lengthLimitMm, setup.lengthPlusGirthLimitMm, setup.weightLimitG]
  if (mostLength !== null && lengthMm > mostLength) {
    findings.push({ code: 'parcel-too-long', figures: { lengthMm, mostMm: mostLength }, ...at('lengthLimitMm') })
  }
  if (mostGirth !== null && lengthPlusGirthMm > mostGirth) {
    const figures = { lengthPlusGirthMm, mostMm: mostGirth }
    findings.push({ code: 'parcel-girth-over', figures, ...at('lengthPlusGirthLimitMm') })
  }
  if (mostMass !== null && massG > mostMass) {
    findings.push({ code: 'parcel-too-heavy', figures: { massG, mostG: mostMass }, ...at('weightLimitG') })
  }
  const byWeight = onStep(massG, setup.weightRoundingG, 'up')
  if (parcel.billedG > byWeight) {
    const where = { field: 'pricing.parcel.divisorMm3PerG' }
    const figures = { massG, billedG: parcel.billedG }
    findings.push({ code: 'parcel-billed-by-size', severity: 'note', figures, where })
  }
  return findings
}

/** Steps are counted with a slack for the binary noise of converted sides; midpoints go up. Finer than a number tells: none. */
function onStep(value: number, step: number, rounding: ParcelRules['sideRounding']): number {
  const steps = value / step
  if (step === 0 || steps > Number.MAX_SAFE_INTEGER) return value
  const slack = 1e-9 * Math.max(1, steps)
  if (rounding === 'nearest') return Math.floor(steps + 0.5 + slack) * step
  return (rounding === 'up' ? Math.ceil(steps - slack) : Math.floor(steps + slack)) * step
}

const MOST = 1e9
const badSides = (sides: Sides): PricingProblem | null =>
  firstProblem(sides.map((side, index) => outside(`sides.${index + 1}`, side, 1e-6, MOST)))
