import { addRatio, divideRatio, multiplyRatio, type Ratio, ratio, ratioFromDecimal, roundRatio } from '../units'
import type { BuyingTax } from './bill-input'

/**
 * What a stated price costs the maker: with the tax on it where he bears it, without where he gets it back.
 * In whole minor units, half up. Without a rate the price counts as it stands.
 */
export function pricePaid(priceMinor: number, taxInside: boolean, tax: BuyingTax | undefined): number {
  if (tax === undefined || taxInside !== tax.reclaimed) return priceMinor
  const factor: Ratio = addRatio(ratio(1), divideRatio(ratioFromDecimal(tax.percent), ratio(100)))
  const price = ratioFromDecimal(priceMinor)
  return roundRatio(taxInside ? divideRatio(price, factor) : multiplyRatio(price, factor), 'half-up')
}
