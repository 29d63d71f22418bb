import { multiplyRatio, type Ratio, ratio, roundRatio, subtractRatio } from '../units'

/** The endings a price may have: `endsWithMinor` after each whole `everyMinor` (every 100 ending on 95: 0.95, 1.95 and so on). */
export interface PriceEnding {
  readonly everyMinor: number
  readonly endsWithMinor: number
}

/**
 * The least price on this ending that is not below an exact amount: rounded up, never down.
 *
 * price = every * k + end for the least whole k with price >= amount, and price >= 0.
 *
 * @param amount exact minor units, 0 or more
 * @source practice
 */
export function priceOnEnding(amount: Ratio, ending: PriceEnding): number {
  const end = ending.endsWithMinor % ending.everyMinor
  const above = multiplyRatio(subtractRatio(amount, ratio(end)), ratio(1, ending.everyMinor))
  const steps = above.num <= 0n ? 0 : roundRatio(above, 'up')
  return steps * ending.everyMinor + end
}
