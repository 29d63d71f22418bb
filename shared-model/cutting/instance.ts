/**
 * A cutting problem in whole numbers: every length in one unit (the planner uses nanometres, a file any unit it likes),
 * every cost in one unit. Nothing here is rounded again, so no floating point decides whether a piece fits.
 */
export interface CutInstance {
  /** Lost at every cut. */
  readonly kerf: number
  readonly stock: readonly InstanceStock[]
  readonly demand: readonly InstanceDemand[]
}

export interface InstanceStock {
  readonly length: number
  /** Cost of taking one; whole, not negative. */
  readonly cost: number
  /** How many there are; null: no limit. */
  readonly count: number | null
  /** Lost once from the raw end, its own cut included; 0 for an offcut. */
  readonly trim: number
  /** What is left over may be worth something. */
  readonly keep: KeepRule | null
  /** Bars with one lot number were bought together; pieces of a one-lot group come from one lot. */
  readonly lot: number
}

/** A leftover of at least `from` is worth `floor(leftover × worth ÷ per)`; a shorter one nothing. */
export interface KeepRule {
  readonly from: number
  readonly worth: number
  readonly per: number
}

export interface InstanceDemand {
  /** Finished length; a group cut from one bar is one demand: its pieces and the kerfs between them. */
  readonly length: number
  readonly qty: number
  /** Number of the one-lot group it belongs to; null: free. */
  readonly lotGroup: number | null
}

/** One way to cut a bar, and how many bars are cut so. */
export interface CutPattern {
  readonly stock: number
  readonly times: number
  /** Pieces of each demand, by the demand's place in the instance. */
  readonly pieces: readonly { readonly demand: number; readonly qty: number }[]
}

/** Worth of what is left of a bar under its stock's rule. */
export const worthLeft = (keep: KeepRule | null, leftover: number): number =>
  keep === null || leftover < keep.from ? 0 : Math.floor((leftover * keep.worth) / keep.per)
