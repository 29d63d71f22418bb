import { compareRatio, type Ratio, ratioFromDecimal, ratioToNumber } from '../units'
import type { PricingProblem } from './codes'

/** The problem of a figure outside its bounds, both named; null when it lies within. */
export function outside(what: string, value: number, least: number, most: number): PricingProblem | null {
  if (value >= least && value <= most) return null
  const where = { field: what }
  if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what }, where }
  return { code: 'out-of-range', figures: { what, value, least, most }, where }
}

/** The same for an exact figure. */
export function outsideExact(what: string, value: Ratio, least: number, most: number): PricingProblem | null {
  const within = compareRatio(value, ratioFromDecimal(least)) >= 0 && compareRatio(value, ratioFromDecimal(most)) <= 0
  if (within) return null
  return { code: 'out-of-range', figures: { what, value: ratioToNumber(value), least, most }, where: { field: what } }
}

/** The first problem there is. */
export const firstProblem = (problems: readonly (PricingProblem | null)[]): PricingProblem | null =>
  problems.find((problem) => problem !== null) ?? null

/** Largest amount that is priced, in minor units. */
export const MOST_AMOUNT = 1e12
export const LEAST_POSITIVE = 1e-9
