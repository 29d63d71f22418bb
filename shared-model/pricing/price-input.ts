import type { Bill } from '../bill'
import type { PricingSetup } from './selling'

/**
 * Times of the whole batch in seconds. Only the run time is learned; waits (cure, leak test) are not worked and not here, and
 * posting belongs to its way of selling.
 */
export interface Work {
  readonly setUpS: number
  /** At the pace of the first unit. */
  readonly runS: number
}

/** A tool, and how many holes or cuts of its life the batch takes. */
export interface ToolUse {
  readonly toolId: string
  readonly name: string
  readonly priceMinor: number | null
  readonly salvageMinor: number
  readonly lifeUses: number | null
  readonly uses: number
}

/** One unit as it goes into its box, before padding. */
export interface UnitOutside {
  readonly sidesMm: readonly [number, number, number]
  readonly massG: number
}

/** All that pricing needs, as plain data. The batch is the bill's. */
export interface PriceInput {
  readonly currency: string
  readonly setup: PricingSetup
  readonly bill: Bill
  readonly work: Work
  readonly tools: readonly ToolUse[]
  /** null: not worked out. */
  readonly unit: UnitOutside | null
}
