import type { BoundPart } from './certificate'

/** The plans that use from `least` to `most` bars of each stock, with what is known about them. */
export interface Part {
  readonly least: Float64Array
  readonly most: Float64Array
  readonly bound: number
  readonly shown: BoundPart
  /** Bars of each stock that the master would use. */
  readonly bars: Float64Array
  /** Whole counts, rounded. */
  readonly counts: Float64Array
  readonly whole: boolean
  /** How many of `EFFORTS` were spent on it. */
  efforts: number
}

/** Whole counts: the part with just those counts, and the rest around it; else two parts at the count least near whole. */
export const split = (part: Part, weigh: (least: Float64Array, most: Float64Array) => void): void => {
  const fixed = part.counts
  const least = Float64Array.from(part.least)
  const most = Float64Array.from(part.most)
  const side = (s: number, from: number, to: number): void => {
    if (from > to) return
    const sideLeast = Float64Array.from(least)
    const sideMost = Float64Array.from(most)
    sideLeast[s] = from
    sideMost[s] = to
    weigh(sideLeast, sideMost)
  }
  if (!part.whole) {
    let at = 0
    let far = -1
    part.bars.forEach((n, s) => {
      const off = Math.abs(n - Math.round(n))
      if (off > far) {
        far = off
        at = s
      }
    })
    const under = Math.floor(part.bars[at] ?? 0)
    side(at, least[at] ?? 0, under)
    side(at, under + 1, most[at] ?? 0)
    return
  }
  for (let s = 0; s < fixed.length; s++) {
    side(s, least[s] ?? 0, (fixed[s] ?? 0) - 1)
    side(s, (fixed[s] ?? 0) + 1, most[s] ?? 0)
    least[s] = fixed[s] ?? 0
    most[s] = fixed[s] ?? 0
  }
  weigh(least, most)
}
