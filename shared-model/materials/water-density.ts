/**
 * Density of air-free water at atmospheric pressure.
 *
 *     density = a5 * (1 - (t + a1)^2 (t + a2) / (a3 (t + a4)))
 *
 * Symbols: t in degrees Celsius; density in kg/m3, given back in kg/L. Valid from 0 to 40 C, standard uncertainty under 1e-6.
 *
 * @source water-density-cipm
 */
import { failed, ok, type ProblemOf, type RangeProblemCodes, type Result } from '../outcome'
import type { Celsius, Grams, Litres } from '../units'
import { grams } from '../units'

const [A1, A2, A3, A4, A5] = [-3.983035, 301.797, 522528.9, 69.34881, 999.97495]

export const WATER_LEAST_C = 0
export const WATER_MOST_C = 40

/** kg/L; a temperature outside 0 to 40 C is a problem with both bounds. */
export function waterDensity(temperature: Celsius): Result<number, ProblemOf<RangeProblemCodes>> {
  if (!(temperature >= WATER_LEAST_C && temperature <= WATER_MOST_C)) {
    const value = Number.isFinite(temperature) ? temperature : 0
    const figures = { what: 'water temperature', value, least: WATER_LEAST_C, most: WATER_MOST_C }
    return Number.isFinite(temperature)
      ? failed({ code: 'out-of-range', figures })
      : failed({ code: 'not-finite', figures: { what: 'water temperature' } })
  }
  const t = temperature
  return ok((A5 * (1 - ((t + A1) ** 2 * (t + A2)) / (A3 * (t + A4)))) / 1000)
}

/** Mass of a volume of water at a temperature. Dissolved salts add about 0.2 %. */
export function waterMass(volume: Litres, temperature: Celsius): Result<Grams, ProblemOf<RangeProblemCodes>> {
  const density = waterDensity(temperature)
  return density.ok ? ok(grams(volume * density.value * 1000)) : density
}
