/**
 * The instance as the solver sees it: every piece and every bar grown by a kerf, all divided by the grown pieces' common
 * divisor, equal pieces merged, longest first. After this a bar holds pieces exactly when their sizes add up to no more
 * than its capacity.
 */
import { type CutInstance, type KeepRule, worthLeft } from './instance'

export interface Grown {
  /** Number of different sizes. */
  readonly kinds: number
  readonly size: Float64Array
  readonly qty: Float64Array
  /** One-lot group of a size, −1: free. */
  readonly lotGroup: Int32Array
  /** Sizes that may be cut from a lot's stock, by lot class; null: all of them. */
  readonly allowed: readonly (Uint8Array | null)[]
  /** The instance's demands of each size, in order. */
  readonly demands: readonly (readonly number[])[]
  readonly stock: readonly GrownStock[]
  /** Instance units in one unit of size. */
  readonly unit: number
  /** Every possible total is a multiple of this. */
  readonly costStep: number
}

export interface GrownStock {
  /** Place in the instance. */
  readonly index: number
  readonly capacity: number
  readonly cost: number
  /** Most that can be used: the count, or what the demand can ever need. */
  readonly count: number
  readonly limited: boolean
  /** Place in `allowed`. */
  readonly lotClass: number
  readonly keep: KeepRule | null
  /** Usable length in instance units. */
  readonly usable: number
}

/** `lotOfGroup` names the lot that each one-lot group is cut from; null: any, even mixed. */
export const grow = (instance: CutInstance, lotOfGroup: readonly (number | null)[] = []): Grown => {
  const { kerf } = instance
  const merged = new Map<string, { size: number; group: number; demands: number[] }>()
  instance.demand.forEach((piece, index) => {
    if (piece.qty <= 0) return
    const size = piece.length + kerf
    const group = piece.lotGroup ?? -1
    const key = `${size} ${group}`
    const found = merged.get(key)
    if (found) found.demands.push(index)
    else merged.set(key, { size, group, demands: [index] })
  })
  const kinds = [...merged.values()].sort((a, b) => b.size - a.size || a.group - b.group)
  const unit = kinds.reduce((common, kind) => commonDivisor(common, kind.size), 0) || 1
  const qty = kinds.map((kind) => kind.demands.reduce((sum, d) => sum + (instance.demand[d]?.qty ?? 0), 0))
  const all = qty.reduce((sum, n) => sum + n, 0)
  const grouped = kinds.some((kind) => kind.group >= 0)
  const lots = grouped ? [...new Set(instance.stock.map((bar) => bar.lot))] : []
  const stock = instance.stock.map((bar, index): GrownStock => {
    const usable = bar.length - bar.trim
    return {
      index,
      capacity: Math.max(0, Math.floor((usable + kerf) / unit)),
      cost: bar.cost,
      count: Math.min(bar.count ?? all, all),
      limited: bar.count !== null && bar.count < all,
      lotClass: grouped ? lots.indexOf(bar.lot) : 0,
      keep: bar.keep,
      usable
    }
  })
  return {
    kinds: kinds.length,
    size: Float64Array.from(kinds, (kind) => kind.size / unit),
    qty: Float64Array.from(qty),
    lotGroup: Int32Array.from(kinds, (kind) => kind.group),
    allowed: grouped
      ? lots.map((lot) =>
          Uint8Array.from(kinds, ({ group }) => (group < 0 || (lotOfGroup[group] ?? lot) === lot ? 1 : 0))
        )
      : [null],
    demands: kinds.map((kind) => kind.demands),
    stock: stock.filter((bar) => bar.capacity >= (kinds.at(-1)?.size ?? 0) / unit && bar.count > 0),
    unit,
    costStep: stock.some((bar) => bar.keep !== null && bar.keep.worth > 0)
      ? 1
      : stock.reduce((common, bar) => commonDivisor(common, bar.cost), 0) || 1
  }
}

/** Worth of what is left of a bar that is filled to `fill`. */
export const worthAt = (grown: Grown, stock: GrownStock, fill: number): number =>
  stock.keep === null ? 0 : worthLeft(stock.keep, Math.max(0, stock.usable - fill * grown.unit))

export const commonDivisor = (a: number, b: number): number => {
  let [high, low] = [Math.abs(a), Math.abs(b)]
  while (low > 0) [high, low] = [low, high % low]
  return high
}
