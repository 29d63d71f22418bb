/**
 * Answers: how many points at least 1 apart can a square hold at most, where the optimum has been proven?
 *
 * n circles of radius r fit the unit square just when n points 2r/(1 − 2r) apart fit it, so n points 1 apart want a side
 * of (1 − 2r)/(2r), r the greatest radius. The proven radii, of 2 to 33 circles and of 36, give the least side for each
 * count; a smaller square holds fewer. 34 and 35 are not proven: between 33 and 36 the bound is 35.
 *
 * Symbols: sidePerDistance, the square's side divided by the least distance between points.
 * Valid for any side ≥ 0; from the side of 36 points on it says nothing (infinite).
 * @source square-optima
 */
export const squareBound = (sidePerDistance: number): number => {
  for (const [count, radius] of RADII) {
    if (sidePerDistance < (1 - 2 * radius) / (2 * radius)) return count - 1
  }
  return Number.POSITIVE_INFINITY
}

/** Count and greatest radius in the unit square, the ninth digit rounded up: never too small a bound. */
const RADII: readonly (readonly [count: number, radius: number])[] = [
  [2, 0.292893219],
  [3, 0.254333096],
  [4, 0.25],
  [5, 0.207106782],
  [6, 0.187680602],
  [7, 0.174457631],
  [8, 0.170540689],
  [9, 0.166666667],
  [10, 0.148204323],
  [11, 0.142399238],
  [12, 0.139958845],
  [13, 0.133993514],
  [14, 0.129331794],
  [15, 0.127166548],
  [16, 0.125],
  [17, 0.117196743],
  [18, 0.115521433],
  [19, 0.112265438],
  [20, 0.111382348],
  [21, 0.106860213],
  [22, 0.105665297],
  [23, 0.102802324],
  [24, 0.101381801],
  [25, 0.1],
  [26, 0.09636234],
  [27, 0.095420002],
  [28, 0.093672834],
  [29, 0.092463145],
  [30, 0.091671058],
  [31, 0.089338334],
  [32, 0.087858158],
  [33, 0.087230015],
  [36, 0.083333334]
]
