import { divideRatio, type Ratio, ratio, ratioFromDecimal } from '../units'

/** Percent as typed (6.5) as an exact share. */
export const shareOf = (percent: number): Ratio => divideRatio(ratioFromDecimal(percent), ratio(100))

export const ZERO: Ratio = ratio(0)
export const ONE: Ratio = ratio(1)
