/** What pieces are worth to the master problem, and what limits on each stock's bars add, in bars of the dearest stock. */
import type { Grown } from './grown'

export interface DualValues {
  readonly piece: Float64Array
  /** What one bar more of a stock that is limited would save. */
  readonly most: Float64Array
  /** What one bar less of a stock that must be used would save. */
  readonly least: Float64Array
}

/** Limits on the bars of each stock, and the demand. */
export interface Limits {
  readonly qty: Float64Array
  readonly least: Float64Array
  readonly most: Float64Array
  /** Limits are rows of the master; else there is one stock without limit. */
  readonly boxed: boolean
}

export const noValues = (grown: Grown): DualValues => ({
  piece: new Float64Array(grown.kinds),
  most: new Float64Array(grown.stock.length),
  least: new Float64Array(grown.stock.length)
})

/** Values between two: they swing less than the master's own from one round to the next. */
export const mixValues = (to: DualValues, best: DualValues, own: DualValues, weight: number): void => {
  for (const part of ['piece', 'most', 'least'] as const) {
    const target = to[part]
    for (let j = 0; j < target.length; j++) {
      target[j] = weight * (best[part][j] as number) + (1 - weight) * (own[part][j] as number)
    }
  }
}

/** What a filling must be worth to pass its bar's price. */
export const pricesAt = (grown: Grown, values: DualValues, unit: number, to: Float64Array): void => {
  grown.stock.forEach((bar, s) => {
    to[s] = bar.cost * unit + (values.most[s] ?? 0) - (values.least[s] ?? 0)
  })
}

/**
 * What the values come to, less what fillings pass their price by (`over`): a lower bound on the master's objective, by
 * Farley where one stock has no limit and leftovers no worth, else by Lagrange. In bars of the dearest stock.
 * @source farley-1990
 */
export const valuesBound = (
  grown: Grown,
  values: DualValues,
  over: Float64Array,
  { qty, least, most, boxed }: Limits,
  unit: number
): number => {
  let worth = 0
  for (let kind = 0; kind < grown.kinds; kind++) worth += (values.piece[kind] as number) * (qty[kind] as number)
  if (!boxed)
    return scales(grown, boxed) ? worth * validScale(grown, over, unit) : worth - (over[0] ?? 0) * (most[0] ?? 0)
  for (let s = 0; s < grown.stock.length; s++) {
    worth -= ((values.most[s] ?? 0) + (over[s] ?? 0)) * (most[s] ?? 0)
    worth += (values.least[s] ?? 0) * (least[s] ?? 0)
  }
  return worth
}

/** Keeps the values that gave the best bound; one stock's are scaled until no filling passes its bar's price. */
export const keepValues = (
  grown: Grown,
  to: DualValues,
  from: DualValues,
  over: Float64Array,
  boxed: boolean,
  unit: number
): void => {
  const scale = scales(grown, boxed) ? validScale(grown, over, unit) : 1
  for (let kind = 0; kind < grown.kinds; kind++) to.piece[kind] = (from.piece[kind] as number) * scale
  to.most.set(from.most)
  to.least.set(from.least)
}

const scales = (grown: Grown, boxed: boolean): boolean => !boxed && grown.stock[0]?.keep === null

const validScale = (grown: Grown, over: Float64Array, unit: number): number =>
  1 / (1 + (over[0] ?? 0) / ((grown.stock[0]?.cost ?? 1) * unit || 1))
