import { failed, ok, type Result } from '../outcome'
import {
  addRatio,
  compareRatio,
  divideRatio,
  multiplyRatio,
  type Ratio,
  ratioToNumber,
  roundRatio,
  subtractRatio
} from '../units'
import { firstProblem, MOST_AMOUNT, outsideExact } from './bounds'
import type { PricingProblem, ShareTooHigh } from './codes'
import { ONE, ZERO } from './percent'
import { type PriceEnding, priceOnEnding } from './price-ending'

/** Amounts are exact minor units before tax, shares exact. */
export interface PriceAsked {
  /** What one sale costs the maker, posting included. */
  readonly cost: Ratio
  readonly fixedFee: Ratio
  readonly feeShare: Ratio
  readonly marginOnPrice: Ratio
  /** Rate of the tax that the fee is also taken on; zero where it is not. */
  readonly feeTaxShare: Ratio
  readonly postageCharged: Ratio
  readonly feeOnPostage: boolean
  /** Rate of the tax that the shown price holds; zero where none does. */
  readonly taxInsideShare: Ratio
}

export interface PriceReached {
  /** Before tax and rounding. */
  readonly exact: Ratio
  /** What the buyer sees, on the ending. */
  readonly shownMinor: number
  /** Before tax, from what the buyer sees. */
  readonly priceMinor: number
}

/**
 * The price that leaves a margin after fees, rounded up to an ending on what the buyer sees.
 *
 * P = (C + F - S (1 - s phi)) / (1 - phi - m), phi = f (1 + t): C cost of one sale with what posting costs, F fixed fee, S postage
 * charged, s 1 where the fee is taken on it else 0, f fee share, t tax rate where the fee is taken on tax else 0, m margin on P.
 * Holds for phi + m < 1 and a numerator above 0; else `no-price` says which share is too high. Without postage and tax it is
 * P = (C + F) / (1 - f - m).
 *
 * @source price-after-fees
 */
export function priceAfterFees(asked: PriceAsked, ending: PriceEnding): Result<PriceReached, PricingProblem> {
  const problem = badAsked(asked)
  if (problem !== null) return failed(problem)
  const fee = feeOnPrice(asked)
  const keep = subtractRatio(subtractRatio(ONE, fee), asked.marginOnPrice)
  const onPostage = subtractRatio(ONE, asked.feeOnPostage ? fee : ZERO)
  const toCover = subtractRatio(addRatio(asked.cost, asked.fixedFee), multiplyRatio(asked.postageCharged, onPostage))
  const tooHigh = whichTooHigh(fee, asked.marginOnPrice, keep, toCover)
  if (tooHigh !== null) return failed(noPrice(tooHigh, fee, asked.marginOnPrice))
  const exact = divideRatio(toCover, keep)
  const taxFactor = addRatio(ONE, asked.taxInsideShare)
  const beyond = outsideExact('price', multiplyRatio(exact, taxFactor), 0, MOST_AMOUNT)
  if (beyond !== null) return failed(beyond)
  const shownMinor = priceOnEnding(multiplyRatio(exact, taxFactor), ending)
  const priceMinor = roundRatio(divideRatio({ num: BigInt(shownMinor), den: 1n }, taxFactor), 'half-up')
  return ok({ exact, shownMinor, priceMinor })
}

/** Fee as a share of the price before tax: the fee share, and the same on the tax where the place of sale takes it. */
export const feeOnPrice = (asked: Pick<PriceAsked, 'feeShare' | 'feeTaxShare'>): Ratio =>
  multiplyRatio(asked.feeShare, addRatio(ONE, asked.feeTaxShare))

function whichTooHigh(fee: Ratio, margin: Ratio, keep: Ratio, toCover: Ratio): ShareTooHigh | null {
  if (compareRatio(fee, ONE) >= 0) return 'fee'
  if (compareRatio(margin, ONE) >= 0) return 'margin'
  if (compareRatio(keep, ZERO) <= 0) return 'fee-and-margin'
  return compareRatio(toCover, ZERO) <= 0 ? 'postage-charged' : null
}

const noPrice = (tooHigh: ShareTooHigh, fee: Ratio, margin: Ratio): PricingProblem => ({
  code: 'no-price',
  figures: {
    tooHigh,
    feePercent: percentOf(fee),
    marginPercent: percentOf(margin),
    mostMarginPercent: Math.max(0, 100 - percentOf(fee))
  },
  where: { field: FIELD_OF[tooHigh] }
})

const FIELD_OF: Readonly<Record<ShareTooHigh, string>> = {
  fee: 'feePercent',
  margin: 'marginPercent',
  'fee-and-margin': 'marginPercent',
  'postage-charged': 'postageChargedMinor'
}

const percentOf = (share: Ratio): number => ratioToNumber(multiplyRatio(share, { num: 100n, den: 1n }))

const badAsked = (asked: PriceAsked): PricingProblem | null =>
  firstProblem([
    outsideExact('cost', asked.cost, 0, MOST_AMOUNT),
    outsideExact('fixedFee', asked.fixedFee, 0, MOST_AMOUNT),
    outsideExact('postageCharged', asked.postageCharged, 0, MOST_AMOUNT),
    outsideExact('feeShare', asked.feeShare, 0, 1),
    outsideExact('marginOnPrice', asked.marginOnPrice, 0, 1),
    outsideExact('feeTaxShare', asked.feeTaxShare, 0, 1),
    outsideExact('taxInsideShare', asked.taxInsideShare, 0, 1)
  ])
