/**
 * How much longer a channel gets as it warms.
 *
 *     growth = coefficient * length * rise
 *
 * Symbols: length in mm, rise in degrees Celsius (negative: it shrinks), coefficient per degree Celsius, growth in mm.
 * Valid where the material stays below its service temperature.
 *
 * @source trunking-page
 */
import { type Mm, mm } from '../units'

export const thermalGrowth = (length: Mm, riseC: number, coefficientPerC: number): Mm =>
  mm(coefficientPerC * length * riseC)
