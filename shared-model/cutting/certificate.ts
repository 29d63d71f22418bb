/**
 * What shows that no plan costs less than a bound: a value for every demanded piece such that no way of cutting a bar is
 * worth more than the bar costs. Then any plan costs at least what its pieces are worth together.
 *
 * The search may split the plans by how many bars of each stock they use; each part then has its own values, and the bound
 * is the least over the parts. All figures are whole numbers: values are in 1/`scale` of the cost's unit.
 */
export interface BoundCertificate {
  readonly scale: number
  /** Every total is a multiple of this, so a bound is rounded up to it. */
  readonly costStep: number
  readonly parts: readonly BoundPart[]
  /** The least over the parts, rounded up: no plan costs less. */
  readonly bound: number
}

export interface BoundPart {
  /** Plans that use from `least[s]` to `most[s]` bars of each stock; null: no upper limit. */
  readonly least: readonly number[]
  readonly most: readonly (number | null)[]
  /** Worth of each demand's piece; whole, not negative. */
  readonly pieceValue: readonly number[]
  /** By how much a pattern's worth may pass its bar's cost (taken off once for each bar allowed), whole, not negative. */
  readonly mostValue: readonly number[]
  /** By how much it must stay below it (added once for each bar demanded), whole, not negative. */
  readonly leastValue: readonly number[]
  /** Lot of each one-lot group in this part; null: any. */
  readonly lotOfGroup: readonly (number | null)[]
}
