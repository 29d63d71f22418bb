import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'

export interface BillFindingCodes {
  /** No price is known for a thing the batch needs: a stop for pricing. */
  readonly 'price-missing': { readonly need: string; readonly partId: string; readonly name: string }
  /** The shop holds no price at all. */
  readonly 'prices-none': { readonly lines: number }
  /** The oldest of the prices that are older than the set age, and how many there are. */
  readonly 'price-old': {
    readonly prices: number
    readonly name: string
    readonly supplier: string
    readonly pricedOn: string
    readonly ageDays: number
    readonly mostDays: number
  }
  readonly 'price-undated': { readonly name: string; readonly supplier: string; readonly prices: number }
  /** The published list of joints per quart ends below this size; its last row was used. */
  readonly 'cement-size-unlisted': { readonly outsideMm: number; readonly mostMm: number }
}

export interface BillProblemCodes extends RangeProblemCodes {
  /** An offer's price is in another currency than the shop's. */
  readonly 'currency-mixed': {
    readonly field: string
    readonly name: string
    readonly found: string
    readonly wanted: string
  }
  /** Pack sizes so fine beside the need that the cheapest packs cannot be searched out. */
  readonly 'packs-too-fine': { readonly name: string; readonly steps: number; readonly most: number }
}

export type BillFinding = FindingOf<BillFindingCodes>
export type BillProblem = ProblemOf<BillProblemCodes>
