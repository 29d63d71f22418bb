import { createBasis, PIVOT_EPS } from './basis'
import { createColumnStore } from './column-store'

/**
 * A small revised simplex for the master problem of cutting: least cost of patterns that cover the demand.
 *
 * It is this problem's own because the master is solved again hundreds of times with a few more columns, or with a
 * little less demand: it stays warm through both, which costs a few pivots each time. The basis inverse is kept dense, by
 * columns, and made anew from time to time against rounding. Nothing that is proven rests on it: its duals are turned
 * into whole numbers and checked (`safe-bound.ts`).
 *
 * Rows are `Σ ≥ rhs` (sense 1) or `Σ ≤ rhs` (sense −1); every row has its slack, and a row `≥` an expensive stand-in that
 * keeps the problem solvable.
 */
export interface Simplex {
  /** Adds a column at 0 and says its number. */
  readonly add: (rows: readonly number[], values: readonly number[], cost: number) => number
  readonly columns: () => number
  readonly setRhs: (row: number, rhs: number) => void
  /** A shut column stays at 0. */
  readonly shut: (column: number, isShut: boolean) => void
  readonly isShut: (column: number) => boolean
  /** Makes the basis fit the changed right-hand sides and costs, and improves it; says how many pivots it took. */
  readonly solve: () => number
  readonly objective: () => number
  readonly duals: Float64Array
  /** Basic columns above 0. */
  readonly solution: () => { readonly column: number; readonly value: number }[]
  /** What the stand-ins hold up: 0 when the demand is covered. */
  readonly uncovered: () => number
  readonly setStandInCost: (cost: number) => void
  readonly reducedCost: (column: number) => number
}

const EPS = 1e-9
const TIE = 1e-12
const FEASIBLE = 1e-9
/** A level that the nudges alone may make. */
const LEAST_LEVEL = 2e-5
const MOST_WEIGHT = 1e7
/**
 * Right-hand sides above 0 are nudged up by different trifles: demands of one piece each would else tie everywhere, and
 * pivots go round without gain.
 */
const NUDGE = 4e-6
/** A shut column that is still in the basis is made dear, in stand-ins. */
const SHUT_COST = 4

export const createSimplex = (senses: readonly (1 | -1)[], standInCost: number): Simplex => {
  const rows = senses.length
  const columns = createColumnStore()
  const rhs = new Float64Array(rows)
  const nudge = Float64Array.from(senses, (_, r) => NUDGE * (1 + ((r * 7919) % 1009) / 1009))
  const ratioRow = new Float64Array(rows)
  let reduced = new Float64Array(0)
  let weight = new Float64Array(0)
  let moved = false
  let standIn = standInCost
  for (let r = 0; r < rows; r++) columns.add([r], [senses[r] === 1 ? -1 : 1], 0)
  for (let r = 0; r < rows; r++) columns.add([r], [1], senses[r] === 1 ? standIn : 0)
  const { basis, level, duals, step, ...on } = createBasis(columns, senses, rhs)
  const { firstBasis, recompute, refresh, isFresh, directionOf, rowOfInverse, reducedCost, enter } = on

  /** Takes negative levels out; false when it gives up. */
  const repair = (limit: number): number => {
    const start = columns.start()
    const rowOf = columns.rowOf()
    const entryOf = columns.entryOf()
    const place = columns.place()
    const shut = columns.shut()
    const count = columns.count()
    for (let pivots = 0; pivots < limit; pivots++) {
      let leaving = -1
      let worst = -FEASIBLE
      for (let i = 0; i < rows; i++) {
        if ((level[i] as number) < worst) {
          worst = level[i] as number
          leaving = i
        }
      }
      if (leaving < 0) return pivots
      rowOfInverse(leaving, ratioRow)
      let entering = -1
      let least = Number.POSITIVE_INFINITY
      let strongest = 0
      for (let j = 0; j < count; j++) {
        if ((place[j] as number) >= 0 || shut[j] === 1) continue
        let alpha = 0
        for (let e = start[j] as number; e < (start[j + 1] as number); e++) {
          alpha += (ratioRow[rowOf[e] as number] as number) * (entryOf[e] as number)
        }
        if (alpha > -PIVOT_EPS) continue
        const ratio = Math.max(0, reducedCost(j)) / -alpha
        if (ratio < least - EPS || (ratio < least + EPS && -alpha > strongest)) {
          least = ratio
          entering = j
          strongest = -alpha
        }
      }
      if (entering < 0) return -1
      directionOf(entering)
      if (Math.abs(step[leaving] as number) < PIVOT_EPS) {
        if (isFresh()) return -1
        refresh()
        continue
      }
      enter(entering, leaving, reducedCost(entering))
    }
    return -1
  }

  const weigh = (): void => {
    const room = columns.start().length
    if (reduced.length < room) {
      reduced = new Float64Array(room)
      const more = new Float64Array(room).fill(1)
      more.set(weight)
      weight = more
    }
    const count = columns.count()
    for (let j = 0; j < count; j++) reduced[j] = reducedCost(j)
  }

  /** Primal pivots by Devex weights: the column whose gain is greatest for how far it moves. */
  const improve = (): number => {
    const place = columns.place()
    const shut = columns.shut()
    const count = columns.count()
    let pivots = 0
    let still = 0
    weigh()
    for (;;) {
      let entering = -1
      let best = 0
      for (let j = 0; j < count; j++) {
        const r = reduced[j] as number
        if (r > -EPS || (place[j] as number) >= 0 || shut[j] === 1) continue
        const gain = (r * r) / (weight[j] as number)
        if (gain > best) {
          best = gain
          entering = j
          // After long standing still: the first improving column, so that it cannot go round in circles.
          if (still > 2 * rows + 50) break
        }
      }
      if (entering < 0 || pivots > 20 * rows + 1000) return pivots
      const exact = reducedCost(entering)
      reduced[entering] = exact
      if (exact > -EPS) continue
      directionOf(entering)
      let leaving = -1
      let least = Number.POSITIVE_INFINITY
      for (let i = 0; i < rows; i++) {
        const slope = step[i] as number
        if (slope < PIVOT_EPS) continue
        const ratio = Math.max(0, level[i] as number) / slope
        if (ratio < least - TIE || (ratio < least + TIE && slope > (step[leaving] as number))) {
          if (ratio < least) least = ratio
          leaving = i
        }
      }
      if (leaving < 0) {
        if (isFresh()) return pivots
        refresh()
        weigh()
        continue
      }
      still = least * -exact > EPS ? 0 : still + 1
      if ((level[leaving] as number) < 0) level[leaving] = 0
      reweigh(entering, leaving, exact)
      enter(entering, leaving, exact)
      pivots++
      if (isFresh()) weigh()
    }
  }

  /** Brings reduced costs and weights along with the pivot that is about to be made. */
  const reweigh = (entering: number, leaving: number, exact: number): void => {
    const start = columns.start()
    const rowOf = columns.rowOf()
    const entryOf = columns.entryOf()
    const place = columns.place()
    const shut = columns.shut()
    const count = columns.count()
    rowOfInverse(leaving, ratioRow)
    const pivot = step[leaving] as number
    const share = exact / pivot
    const from = (weight[entering] as number) / (pivot * pivot)
    for (let j = 0; j < count; j++) {
      if ((place[j] as number) >= 0 || shut[j] === 1) continue
      let alpha = 0
      for (let e = start[j] as number; e < (start[j + 1] as number); e++) {
        alpha += (ratioRow[rowOf[e] as number] as number) * (entryOf[e] as number)
      }
      if (alpha === 0) continue
      reduced[j] = (reduced[j] as number) - share * alpha
      const heavier = alpha * alpha * from
      if (heavier > (weight[j] as number)) weight[j] = heavier
    }
    const out = basis[leaving] as number
    reduced[out] = -share
    weight[out] = Math.max(from, 1)
    if (from > MOST_WEIGHT) weight.fill(1)
  }

  let begun = false
  const solve = (): number => {
    if (!begun) {
      firstBasis()
      begun = true
    } else if (moved) recompute()
    moved = false
    let pivots = repair(20 * rows + 200)
    if (pivots < 0) {
      firstBasis()
      pivots = repair(20 * rows + 200)
      if (pivots < 0) pivots = 0
    }
    return pivots + improve()
  }

  return {
    add: columns.add,
    columns: columns.count,
    setRhs: (row, value) => {
      rhs[row] = value > 0 ? value + (nudge[row] as number) : value
      moved = true
    },
    shut: (column, isShut) => {
      if ((columns.shut()[column] === 1) === isShut) return
      columns.shut()[column] = isShut ? 1 : 0
      columns.cost()[column] = isShut ? SHUT_COST * standIn : (columns.price()[column] ?? 0)
      moved = true
    },
    isShut: (column) => columns.shut()[column] === 1,
    solve,
    objective: () => {
      let sum = 0
      for (let i = 0; i < rows; i++) sum += (columns.cost()[basis[i] as number] as number) * (level[i] as number)
      return sum
    },
    duals,
    solution: () => {
      const found: { column: number; value: number }[] = []
      for (let i = 0; i < rows; i++) {
        const column = basis[i] as number
        const value = level[i] as number
        if (column >= 2 * rows && value > LEAST_LEVEL && columns.shut()[column] === 0) found.push({ column, value })
      }
      return found
    },
    uncovered: () => {
      let sum = 0
      for (let i = 0; i < rows; i++) {
        const column = basis[i] as number
        const holdsUp = column < 2 * rows ? column >= rows && senses[column - rows] === 1 : columns.shut()[column] === 1
        if (holdsUp) sum += Math.max(0, (level[i] as number) - LEAST_LEVEL)
      }
      return sum
    },
    setStandInCost: (given) => {
      standIn = given
      for (let r = 0; r < rows; r++) if (senses[r] === 1) columns.cost()[rows + r] = standIn
      moved = true
    },
    reducedCost
  }
}
