import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'
import type { UnitsProblemCodes } from '../units'

export interface PricingFindingCodes {
  readonly 'parcel-too-long': { readonly lengthMm: number; readonly mostMm: number }
  readonly 'parcel-girth-over': { readonly lengthPlusGirthMm: number; readonly mostMm: number }
  readonly 'parcel-too-heavy': { readonly massG: number; readonly mostG: number }
  /** The carrier bills the parcel by its size, not by its weight. */
  readonly 'parcel-billed-by-size': { readonly massG: number; readonly billedG: number }
  /** No price or no life is known for a tool: its wear is not in the cost. */
  readonly 'tool-wear-unknown': { readonly toolName: string }
  /** A way of selling that loses money on each unit. */
  readonly 'sells-at-a-loss': { readonly way: string; readonly lossMinor: number }
}

export type ShareTooHigh = 'fee' | 'margin' | 'fee-and-margin' | 'postage-charged'

export interface PricingProblemCodes extends RangeProblemCodes, Pick<UnitsProblemCodes, 'currency-unknown'> {
  /** No price leaves this margin after these fees; shares are percent of the price before tax. */
  readonly 'no-price': {
    /** The way of selling; left out where none is asked for. */
    readonly way?: string
    readonly tooHigh: ShareTooHigh
    readonly feePercent: number
    readonly marginPercent: number
    /** The margin must stay below this. */
    readonly mostMarginPercent: number
  }
  /** Each unit sold brings nothing towards the fixed cost, so no number of them pays for it. */
  readonly 'contribution-not-positive': { readonly what: string; readonly contributionMinor: number }
  /** The bill is in another currency than the price. */
  readonly 'currency-differs': { readonly found: string; readonly wanted: string }
}

export type PricingFinding = FindingOf<PricingFindingCodes>
export type PricingProblem = ProblemOf<PricingProblemCodes>
