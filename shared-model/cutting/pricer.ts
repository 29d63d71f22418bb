/** Finds the most valuable way to fill each stock's bar, given a value for every size. */
export interface Pricer {
  /**
   * Works the fillings out for these values and these most numbers of each size. A filling whose value does not pass
   * `atLeast[stock]` need not be found.
   */
  readonly fill: (value: Float64Array, qty: Float64Array, atLeast: Float64Array) => void
  /** Best value of pieces plus `leftScale` × worth of what is left, with the pieces; null when none passes `atLeast`. */
  readonly best: (stock: number, leftScale: number) => Filling | null
}

export interface Filling {
  readonly value: number
  readonly kinds: readonly number[]
  readonly counts: readonly number[]
}
