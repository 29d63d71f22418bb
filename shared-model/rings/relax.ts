import type { Crowding } from './crowding'

/**
 * Pushes overlapping circles apart: makes the crowding (see `crowding`) least by a limited-memory quasi-Newton method
 * (Nocedal and Wright, Numerical Optimization, algorithm 7.4, from memory). `at` holds x then y of every centre and is
 * moved in place.
 */
export interface Relaxer {
  /** Returns the crowding left, in mm². Spends at most `steps` steps and stops early once below `enough`. */
  readonly relax: (at: Float64Array, steps: number, enough: number) => number
}

const MEMORY = 7

export const relaxer = (count: number, { slope: energy }: Crowding): Relaxer => {
  const size = 2 * count
  const slope = new Float64Array(size)
  const nextSlope = new Float64Array(size)
  const nextAt = new Float64Array(size)
  const way = new Float64Array(size)
  const moves = Array.from({ length: MEMORY }, () => new Float64Array(size))
  const turns = Array.from({ length: MEMORY }, () => new Float64Array(size))
  const curvature = new Float64Array(MEMORY)
  const weights = new Float64Array(MEMORY)

  const relax = (at: Float64Array, steps: number, enough: number): number => {
    let value = energy(at, slope)
    let stored = 0
    let newest = -1
    for (let step = 0; step < steps && value > enough; step++) {
      direction(way, slope, moves, turns, curvature, weights, stored, newest)
      let descent = dot(way, slope)
      if (!(descent < 0)) {
        for (let k = 0; k < size; k++) way[k] = -(slope[k] as number)
        descent = -dot(slope, slope)
        stored = 0
      }
      if (descent > -1e-24) break
      let stride = stored === 0 ? 0.25 : 1
      let reached = Number.POSITIVE_INFINITY
      for (let tries = 0; tries < 12; tries++) {
        for (let k = 0; k < size; k++) nextAt[k] = (at[k] as number) + stride * (way[k] as number)
        reached = energy(nextAt, nextSlope)
        if (reached <= value + 1e-4 * stride * descent) break
        stride /= 2
      }
      if (!(reached < value)) {
        if (stored === 0) break
        stored = 0
        continue
      }
      newest = (newest + 1) % MEMORY
      const move = moves[newest] as Float64Array
      const turn = turns[newest] as Float64Array
      for (let k = 0; k < size; k++) {
        move[k] = (nextAt[k] as number) - (at[k] as number)
        turn[k] = (nextSlope[k] as number) - (slope[k] as number)
        at[k] = nextAt[k] as number
        slope[k] = nextSlope[k] as number
      }
      const bend = dot(move, turn)
      const gained = value - reached
      value = reached
      if (bend > 1e-18) {
        curvature[newest] = 1 / bend
        stored = Math.min(MEMORY, stored + 1)
      } else {
        stored = 0
      }
      if (gained < 1e-7 * value) break
    }
    return value
  }

  return { relax }
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0
  for (let k = 0; k < a.length; k++) sum += (a[k] as number) * (b[k] as number)
  return sum
}

/** The two-loop recursion: `way` = −(inverse curvature so far) · slope. */
const direction = (
  way: Float64Array,
  slope: Float64Array,
  moves: readonly Float64Array[],
  turns: readonly Float64Array[],
  curvature: Float64Array,
  weights: Float64Array,
  stored: number,
  newest: number
): void => {
  for (let k = 0; k < way.length; k++) way[k] = -(slope[k] as number)
  for (let back = 0; back < stored; back++) {
    const at = (newest - back + MEMORY) % MEMORY
    const weight = (curvature[at] as number) * dot(moves[at] as Float64Array, way)
    weights[at] = weight
    add(way, turns[at] as Float64Array, -weight)
  }
  if (stored > 0) {
    const turn = turns[newest] as Float64Array
    const scale = 1 / ((curvature[newest] as number) * dot(turn, turn))
    for (let k = 0; k < way.length; k++) way[k] = (way[k] as number) * scale
  }
  for (let back = stored - 1; back >= 0; back--) {
    const at = (newest - back + MEMORY) % MEMORY
    const weight = (curvature[at] as number) * dot(turns[at] as Float64Array, way)
    add(way, moves[at] as Float64Array, (weights[at] as number) - weight)
  }
}

const add = (into: Float64Array, other: Float64Array, factor: number): void => {
  for (let k = 0; k < into.length; k++) into[k] = (into[k] as number) + factor * (other[k] as number)
}
