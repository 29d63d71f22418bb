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
const PIVOT_EPS = 1e-7
const TIE = 1e-12
const FEASIBLE = 1e-9
/** A level that the nudges alone may make. */
const LEAST_LEVEL = 2e-5
const REFRESH_AFTER = 300
const RECOMPUTE_AFTER = 50
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
  let start = new Int32Array(1024)
  let cost = new Float64Array(1024)
  let price = new Float64Array(1024)
  let shutFlag = new Uint8Array(1024)
  let place = new Int32Array(1024).fill(-1)
  let rowOf = new Int32Array(8192)
  let entryOf = new Float64Array(8192)
  let columns = 0
  let entries = 0
  const rhs = new Float64Array(rows)
  const nudge = Float64Array.from(senses, (_, r) => NUDGE * (1 + ((r * 7919) % 1009) / 1009))
  const basis = new Int32Array(rows)
  const level = new Float64Array(rows)
  const duals = new Float64Array(rows)
  const inverse = new Float64Array(rows * rows)
  const step = new Float64Array(rows)
  const ratioRow = new Float64Array(rows)
  let reduced = new Float64Array(0)
  let weight = new Float64Array(0)
  let sinceRefresh = 0
  let moved = false
  let standIn = standInCost

  const add = (at: readonly number[], values: readonly number[], given: number): number => {
    if (columns + 2 > start.length) {
      start = grown(start, Int32Array)
      cost = grown(cost, Float64Array)
      price = grown(price, Float64Array)
      shutFlag = grown(shutFlag, Uint8Array)
      const more = new Int32Array(place.length * 2).fill(-1)
      more.set(place)
      place = more
    }
    if (entries + at.length > rowOf.length) {
      rowOf = grown(rowOf, Int32Array)
      entryOf = grown(entryOf, Float64Array)
    }
    for (let j = 0; j < at.length; j++) {
      rowOf[entries] = at[j] as number
      entryOf[entries] = values[j] as number
      entries++
    }
    cost[columns] = given
    price[columns] = given
    columns++
    start[columns] = entries
    return columns - 1
  }

  // Slacks take the numbers 0 … rows − 1, stand-ins rows … 2 rows − 1.
  for (let r = 0; r < rows; r++) add([r], [senses[r] === 1 ? -1 : 1], 0)
  for (let r = 0; r < rows; r++) add([r], [1], senses[r] === 1 ? standIn : 0)
  const firstBasis = (): void => {
    place.fill(-1)
    for (let r = 0; r < rows; r++) {
      // A `≥` row of nothing starts on its slack, so that it may begin at 0 without a stand-in.
      basis[r] = senses[r] === 1 && (rhs[r] as number) > 0 ? rows + r : r
      place[basis[r] as number] = r
    }
    inverse.fill(0)
    for (let r = 0; r < rows; r++) inverse[r * rows + r] = (basis[r] as number) < rows && senses[r] === 1 ? -1 : 1
    sinceRefresh = 0
    recompute()
  }

  const recompute = (): void => {
    level.fill(0)
    for (let c = 0; c < rows; c++) {
      const b = rhs[c] as number
      if (b === 0) continue
      const at = c * rows
      for (let i = 0; i < rows; i++) level[i] = (level[i] as number) + b * (inverse[at + i] as number)
    }
    for (let c = 0; c < rows; c++) {
      const at = c * rows
      let sum = 0
      for (let i = 0; i < rows; i++) sum += (cost[basis[i] as number] ?? 0) * (inverse[at + i] as number)
      duals[c] = sum
    }
    moved = false
  }

  /** Makes the inverse anew from the basis; a column that has become dependent gives way to a stand-in. */
  const refresh = (): void => {
    const old = Int32Array.from(basis)
    inverse.fill(0)
    place.fill(-1)
    const free = new Uint8Array(rows).fill(1)
    for (let r = 0; r < rows; r++) inverse[r * rows + r] = 1
    const ordered = [...old].sort(
      (a, b) => (start[a + 1] as number) - (start[a] as number) - ((start[b + 1] as number) - (start[b] as number))
    )
    for (const column of ordered) {
      directionOf(column)
      let best = -1
      let size = PIVOT_EPS
      for (let i = 0; i < rows; i++) {
        const here = Math.abs(step[i] as number)
        if (free[i] === 1 && here > size) {
          size = here
          best = i
        }
      }
      if (best < 0) continue
      eliminate(best)
      basis[best] = column
      place[column] = best
      free[best] = 0
    }
    for (let i = 0; i < rows; i++) {
      if (free[i] === 0) continue
      basis[i] = rows + i
      place[rows + i] = i
    }
    sinceRefresh = 0
    recompute()
  }

  const directionOf = (column: number): void => {
    step.fill(0)
    for (let e = start[column] as number; e < (start[column + 1] as number); e++) {
      const at = (rowOf[e] as number) * rows
      const v = entryOf[e] as number
      for (let i = 0; i < rows; i++) step[i] = (step[i] as number) + v * (inverse[at + i] as number)
    }
  }

  const eliminate = (pivotRow: number): void => {
    const pivot = step[pivotRow] as number
    for (let c = 0; c < rows; c++) {
      const at = c * rows
      const t = (inverse[at + pivotRow] as number) / pivot
      if (t === 0) continue
      for (let i = 0; i < rows; i++) inverse[at + i] = (inverse[at + i] as number) - (step[i] as number) * t
      inverse[at + pivotRow] = t
    }
  }

  const reducedCost = (column: number): number => {
    let rest = cost[column] as number
    for (let e = start[column] as number; e < (start[column + 1] as number); e++) {
      rest -= (duals[rowOf[e] as number] ?? 0) * (entryOf[e] as number)
    }
    return rest
  }

  const enter = (column: number, pivotRow: number, reduced: number): void => {
    const amount = (level[pivotRow] as number) / (step[pivotRow] as number)
    for (let i = 0; i < rows; i++) level[i] = (level[i] as number) - amount * (step[i] as number)
    level[pivotRow] = amount
    place[basis[pivotRow] as number] = -1
    basis[pivotRow] = column
    place[column] = pivotRow
    eliminate(pivotRow)
    for (let c = 0; c < rows; c++) {
      duals[c] = (duals[c] as number) + reduced * (inverse[c * rows + pivotRow] as number)
    }
    sinceRefresh++
    if (sinceRefresh >= REFRESH_AFTER) refresh()
    else if (sinceRefresh % RECOMPUTE_AFTER === 0) recompute()
  }

  /** Takes negative levels out; false when it gives up. */
  const repair = (limit: number): number => {
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
      for (let c = 0; c < rows; c++) ratioRow[c] = inverse[c * rows + leaving] as number
      let entering = -1
      let least = Number.POSITIVE_INFINITY
      let strongest = 0
      for (let j = 0; j < columns; j++) {
        if ((place[j] ?? -1) >= 0 || shutFlag[j] === 1) continue
        let alpha = 0
        for (let e = start[j] as number; e < (start[j + 1] as number); e++) {
          alpha += (ratioRow[rowOf[e] as number] ?? 0) * (entryOf[e] as number)
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
        if (sinceRefresh === 0) return -1
        refresh()
        continue
      }
      enter(entering, leaving, reducedCost(entering))
    }
    return -1
  }

  const weigh = (): void => {
    if (reduced.length < start.length) {
      reduced = new Float64Array(start.length)
      const more = new Float64Array(start.length).fill(1)
      more.set(weight)
      weight = more
    }
    for (let j = 0; j < columns; j++) reduced[j] = reducedCost(j)
  }

  /** Primal pivots by Devex weights: the column whose gain is greatest for how far it moves. */
  const improve = (): number => {
    let pivots = 0
    let still = 0
    weigh()
    for (;;) {
      let entering = -1
      let best = 0
      for (let j = 0; j < columns; j++) {
        const r = reduced[j] as number
        if (r > -EPS || (place[j] ?? -1) >= 0 || shutFlag[j] === 1) continue
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
        if (sinceRefresh === 0) return pivots
        refresh()
        weigh()
        continue
      }
      still = least * -exact > EPS ? 0 : still + 1
      if ((level[leaving] as number) < 0) level[leaving] = 0
      reweigh(entering, leaving, exact)
      enter(entering, leaving, exact)
      pivots++
      if (sinceRefresh === 0) weigh()
    }
  }

  /** Brings reduced costs and weights along with the pivot that is about to be made. */
  const reweigh = (entering: number, leaving: number, exact: number): void => {
    for (let c = 0; c < rows; c++) ratioRow[c] = inverse[c * rows + leaving] as number
    const pivot = step[leaving] as number
    const share = exact / pivot
    const from = (weight[entering] as number) / (pivot * pivot)
    for (let j = 0; j < columns; j++) {
      if ((place[j] ?? -1) >= 0 || shutFlag[j] === 1) continue
      let alpha = 0
      for (let e = start[j] as number; e < (start[j + 1] as number); e++) {
        alpha += (ratioRow[rowOf[e] as number] ?? 0) * (entryOf[e] as number)
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
    let pivots = repair(20 * rows + 200)
    if (pivots < 0) {
      firstBasis()
      pivots = repair(20 * rows + 200)
      if (pivots < 0) pivots = 0
    }
    return pivots + improve()
  }

  return {
    add,
    columns: () => columns,
    setRhs: (row, value) => {
      rhs[row] = value > 0 ? value + (nudge[row] as number) : value
      moved = true
    },
    shut: (column, isShut) => {
      if ((shutFlag[column] === 1) === isShut) return
      shutFlag[column] = isShut ? 1 : 0
      cost[column] = isShut ? SHUT_COST * standIn : (price[column] as number)
      moved = true
    },
    isShut: (column) => shutFlag[column] === 1,
    solve,
    objective: () => {
      let sum = 0
      for (let i = 0; i < rows; i++) sum += (cost[basis[i] as number] ?? 0) * (level[i] as number)
      return sum
    },
    duals,
    solution: () => {
      const found: { column: number; value: number }[] = []
      for (let i = 0; i < rows; i++) {
        const column = basis[i] as number
        const value = level[i] as number
        if (column >= 2 * rows && value > LEAST_LEVEL && shutFlag[column] === 0) found.push({ column, value })
      }
      return found
    },
    uncovered: () => {
      let sum = 0
      for (let i = 0; i < rows; i++) {
        const column = basis[i] as number
        const holdsUp = column < 2 * rows ? column >= rows && senses[column - rows] === 1 : shutFlag[column] === 1
        if (holdsUp) sum += Math.max(0, (level[i] as number) - LEAST_LEVEL)
      }
      return sum
    },
    setStandInCost: (given) => {
      standIn = given
      for (let r = 0; r < rows; r++) if (senses[r] === 1) cost[rows + r] = standIn
      moved = true
    },
    reducedCost
  }
}

type Grows = Int32Array | Float64Array | Uint8Array

const grown = <T extends Grows>(list: T, make: new (length: number) => T): T => {
  const more = new make(list.length * 2)
  more.set(list as unknown as ArrayLike<number>)
  return more
}
