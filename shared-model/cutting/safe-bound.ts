/**
 * A lower bound without rounding errors: the master's values floored to whole numbers, every way to cut a bar priced again
 * in whole numbers, and what still passes a bar's cost taken off. The figures are the certificate.
 *
 * In words: bound = Σ value × demand − Σ what may be passed × most bars + Σ what must be kept below × least bars, in whole
 * units of 1/scale of the cost; valid for any plan in the part.
 * @source gilmore-gomory-1961
 */
import type { BoundPart } from './certificate'
import type { CutInstance } from './instance'
import type { Master } from './master'

export interface SafeBound {
  readonly bound: number
  readonly part: BoundPart
}

/**
 * Whole-number scale: what flooring each piece's value loses stays below 1/10,000 of a cost unit, and products below 2⁵⁰.
 * No finer than that: where stock runs short, values are many times a bar's cost, and must be held in full to show it.
 */
export const scaleFor = (dearest: number, pieces: number): number => {
  const room = 49 - Math.ceil(Math.log2(dearest * pieces + 1))
  return 2 ** Math.max(0, Math.min(room, 14 + Math.ceil(Math.log2(pieces + 1))))
}

/** The bound that the master's present values show for its present box and the whole demand, rounded up to a cost step. */
export const safeBound = (
  master: Master,
  instance: CutInstance,
  scale: number,
  lotOfGroup: readonly (number | null)[]
): SafeBound => {
  const { grown } = master
  const dearest = Math.max(1, ...grown.stock.map((bar) => bar.cost))
  // Where stock runs short values grow without end. Scaled down alike they still hold, and still bound; sums stay exact.
  const size = sizeOf(master) * dearest * scale
  const shrunk = size > MOST_TOTAL ? (dearest * scale * MOST_TOTAL) / size : dearest * scale
  const whole = (value: number): number => Math.max(0, Math.floor(value * shrunk))
  const value = Float64Array.from(master.values.piece, whole)
  const leastValue = Array.from(master.values.least, (each, s) => ((master.least[s] ?? 0) > 0 ? whole(each) : 0))
  let over = passes(master, value, leastValue, scale)
  // A stock without limit may not be passed at all: its values shrink until it is not.
  for (let tries = 0; tries < 40; tries++) {
    let shrink = 1
    let changed = false
    grown.stock.forEach((bar, s) => {
      const gain = (over[s] ?? 0) + (leastValue[s] ?? 0)
      if (isLimited(master, s) || gain <= 0) return
      changed = true
      const taken = Math.min(gain, leastValue[s] ?? 0)
      leastValue[s] = (leastValue[s] ?? 0) - taken
      if (gain > taken) shrink = Math.min(shrink, (bar.cost * scale) / (bar.cost * scale + gain - taken))
    })
    if (!changed) break
    if (shrink === 1) continue
    const factor = tries < 3 ? shrink : shrink * (1 - 2 ** (tries - 40))
    for (let kind = 0; kind < grown.kinds; kind++) value[kind] = Math.floor((value[kind] ?? 0) * factor)
    over = passes(master, value, leastValue, scale)
  }
  const stockPart = instance.stock.map(() => ({ least: 0, most: null as number | null, mostValue: 0, leastValue: 0 }))
  instance.stock.forEach((bar, at) => {
    const part = stockPart[at]
    if (part) part.most = bar.count
  })
  grown.stock.forEach((bar, s) => {
    const part = stockPart[bar.index]
    if (!part) return
    const limited = isLimited(master, s)
    const net = Math.max(0, (over[s] ?? 0) + (leastValue[s] ?? 0))
    part.least = master.least[s] ?? 0
    part.most = limited ? (master.most[s] ?? 0) : (instance.stock[bar.index]?.count ?? null)
    part.mostValue = limited ? net : 0
    part.leastValue = leastValue[s] ?? 0
  })
  const pieceValue = instance.demand.map(() => 0)
  grown.demands.forEach((demands, kind) => {
    for (const demand of demands) pieceValue[demand] = value[kind] ?? 0
  })
  const part = {
    least: stockPart.map((each) => each.least),
    most: stockPart.map((each) => each.most),
    pieceValue,
    mostValue: stockPart.map((each) => each.mostValue),
    leastValue: stockPart.map((each) => each.leastValue),
    lotOfGroup
  }
  return { bound: partBound(instance, part, scale, grown.costStep), part }
}

const MOST_TOTAL = 2 ** 51

export const roundUp = (cost: number, step: number): number => Math.ceil(cost / step) * step

const sizeOf = ({ grown, values, least, most }: Master): number => {
  let size = 0
  for (let kind = 0; kind < grown.kinds; kind++) size += (values.piece[kind] ?? 0) * (grown.qty[kind] ?? 0)
  for (let s = 0; s < grown.stock.length; s++) {
    size += (values.least[s] ?? 0) * Math.max(1, least[s] ?? 0) + (values.most[s] ?? 0) * Math.max(1, most[s] ?? 0)
  }
  return size
}

/** What a part's figures come to, rounded up. */
export const partBound = (instance: CutInstance, part: BoundPart, scale: number, step: number): number => {
  let total = 0
  instance.demand.forEach(({ qty }, at) => {
    total += qty * (part.pieceValue[at] ?? 0)
  })
  instance.stock.forEach((_, at) => {
    total += (part.least[at] ?? 0) * (part.leastValue[at] ?? 0) - (part.most[at] ?? 0) * (part.mostValue[at] ?? 0)
  })
  return roundUp(Math.ceil(total / scale), step)
}

/** Fewer allowed than the demand could ever need. */
const isLimited = (master: Master, s: number): boolean => {
  const bar = master.grown.stock[s]
  return bar !== undefined && (bar.limited || (master.most[s] ?? 0) < bar.count)
}

/** By how much each stock's most valuable pattern passes its cost, whole; may be negative. */
const passes = (master: Master, value: Float64Array, leastValue: readonly number[], scale: number): number[] => {
  const { grown, pricer } = master
  const need = Float64Array.from(grown.stock, (bar, s) => bar.cost * scale - (leastValue[s] ?? 0))
  pricer.fill(value, grown.qty, need)
  return grown.stock.map((bar, s) => {
    const best = pricer.best(s, scale)
    return best === null ? -(leastValue[s] ?? 0) : best.value - bar.cost * scale
  })
}
