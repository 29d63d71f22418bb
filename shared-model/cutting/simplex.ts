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
  readonly setCost: (column: number, cost: number) => void
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
const FEASIBLE = 1e-9
const REFRESH_AFTER = 120
/** A shut column that is still in the basis is made dear, in stand-ins. */
const SHUT_COST = 4

export const createSimplex = (senses: readonly (1 | -1)[], standInCost: number): Simplex => {
  const rows = senses.length
  let start = new Int32Array(1024)
  let cost = new Float64Array(1024)
  let shutFlag = new Uint8Array(1024)
  let place = new Int32Array(1024).fill(-1)
  let rowOf = new Int32Array(8192)
  let entryOf = new Float64Array(8192)
  let columns = 0
  let entries = 0
  const rhs = new Float64Array(rows)
  const basis = new Int32Array(rows)
  const level = new Float64Array(rows)
  const duals = new Float64Array(rows)
  const inverse = new Float64Array(rows * rows)
  const step = new Float64Array(rows)
  const ratioRow = new Float64Array(rows)
  let sinceRefresh = 0
  let moved = false
  let standIn = standInCost

  const add = (at: readonly number[], values: readonly number[], price: number): number => {
    if (columns + 2 > start.length) {
      start = grown(start, Int32Array)
      cost = grown(cost, Float64Array)
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
      rowOf[entries] = at[j] ?? 0
      entryOf[entries] = values[j] ?? 0
      entries++
    }
    cost[columns] = price
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
      basis[r] = senses[r] === 1 && (rhs[r] ?? 0) > 0 ? rows + r : r
      place[basis[r] ?? 0] = r
    }
    inverse.fill(0)
    for (let r = 0; r < rows; r++) inverse[r * rows + r] = (basis[r] ?? 0) < rows && senses[r] === 1 ? -1 : 1
    sinceRefresh = 0
    recompute()
  }

  const recompute = (): void => {
    level.fill(0)
    for (let c = 0; c < rows; c++) {
      const b = rhs[c] ?? 0
      if (b === 0) continue
      const at = c * rows
      for (let i = 0; i < rows; i++) level[i] = (level[i] ?? 0) + b * (inverse[at + i] ?? 0)
    }
    for (let c = 0; c < rows; c++) {
      const at = c * rows
      let sum = 0
      for (let i = 0; i < rows; i++) sum += (cost[basis[i] ?? 0] ?? 0) * (inverse[at + i] ?? 0)
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
      (a, b) => (start[a + 1] ?? 0) - (start[a] ?? 0) - ((start[b + 1] ?? 0) - (start[b] ?? 0))
    )
    for (const column of ordered) {
      directionOf(column)
      let best = -1
      let size = PIVOT_EPS
      for (let i = 0; i < rows; i++) {
        const here = Math.abs(step[i] ?? 0)
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
    for (let e = start[column] ?? 0; e < (start[column + 1] ?? 0); e++) {
      const at = (rowOf[e] ?? 0) * rows
      const v = entryOf[e] ?? 0
      for (let i = 0; i < rows; i++) step[i] = (step[i] ?? 0) + v * (inverse[at + i] ?? 0)
    }
  }

  const eliminate = (pivotRow: number): void => {
    const pivot = step[pivotRow] ?? 1
    const touched: number[] = []
    for (let i = 0; i < rows; i++) if (i !== pivotRow && step[i] !== 0) touched.push(i)
    for (let c = 0; c < rows; c++) {
      const at = c * rows
      const t = (inverse[at + pivotRow] ?? 0) / pivot
      if (t === 0) continue
      inverse[at + pivotRow] = t
      for (let k = 0; k < touched.length; k++) {
        const i = touched[k] ?? 0
        inverse[at + i] = (inverse[at + i] ?? 0) - (step[i] ?? 0) * t
      }
    }
  }

  const reducedCost = (column: number): number => {
    let rest = cost[column] ?? 0
    for (let e = start[column] ?? 0; e < (start[column + 1] ?? 0); e++) {
      rest -= (duals[rowOf[e] ?? 0] ?? 0) * (entryOf[e] ?? 0)
    }
    return rest
  }

  const enter = (column: number, pivotRow: number, reduced: number): void => {
    const amount = (level[pivotRow] ?? 0) / (step[pivotRow] ?? 1)
    for (let i = 0; i < rows; i++) level[i] = (level[i] ?? 0) - amount * (step[i] ?? 0)
    level[pivotRow] = amount
    place[basis[pivotRow] ?? 0] = -1
    basis[pivotRow] = column
    place[column] = pivotRow
    eliminate(pivotRow)
    for (let c = 0; c < rows; c++) {
      duals[c] = (duals[c] ?? 0) + reduced * (inverse[c * rows + pivotRow] ?? 0)
    }
    if (++sinceRefresh >= REFRESH_AFTER) refresh()
  }

  /** Takes negative levels out; false when it gives up. */
  const repair = (limit: number): number => {
    for (let pivots = 0; pivots < limit; pivots++) {
      let leaving = -1
      let worst = -FEASIBLE
      for (let i = 0; i < rows; i++) {
        if ((level[i] ?? 0) < worst) {
          worst = level[i] ?? 0
          leaving = i
        }
      }
      if (leaving < 0) return pivots
      for (let c = 0; c < rows; c++) ratioRow[c] = inverse[c * rows + leaving] ?? 0
      let entering = -1
      let least = Number.POSITIVE_INFINITY
      let strongest = 0
      for (let j = 0; j < columns; j++) {
        if ((place[j] ?? -1) >= 0 || shutFlag[j] === 1) continue
        let alpha = 0
        for (let e = start[j] ?? 0; e < (start[j + 1] ?? 0); e++) {
          alpha += (ratioRow[rowOf[e] ?? 0] ?? 0) * (entryOf[e] ?? 0)
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
      if (Math.abs(step[leaving] ?? 0) < PIVOT_EPS) {
        if (sinceRefresh === 0) return -1
        refresh()
        continue
      }
      enter(entering, leaving, reducedCost(entering))
    }
    return -1
  }

  const improve = (): number => {
    let pivots = 0
    let still = 0
    for (;;) {
      let entering = -1
      let best = -EPS
      for (let j = 0; j < columns; j++) {
        if ((place[j] ?? -1) >= 0 || shutFlag[j] === 1) continue
        const reduced = reducedCost(j)
        if (reduced < best) {
          best = reduced
          entering = j
          // After long standing still: first improving column, so that it cannot go round in circles.
          if (still > 2 * rows + 50) break
        }
      }
      if (entering < 0 || pivots > 50 * rows + 1000) return pivots
      directionOf(entering)
      let leaving = -1
      let least = Number.POSITIVE_INFINITY
      for (let i = 0; i < rows; i++) {
        const slope = step[i] ?? 0
        if (slope < PIVOT_EPS) continue
        const ratio = Math.max(0, level[i] ?? 0) / slope
        if (ratio < least - EPS || (ratio < least + EPS && slope > (step[leaving] ?? 0))) {
          if (ratio < least) least = ratio
          leaving = i
        }
      }
      if (leaving < 0) {
        if (sinceRefresh === 0) return pivots
        refresh()
        continue
      }
      still = least * -best > EPS ? 0 : still + 1
      if ((level[leaving] ?? 0) < 0) level[leaving] = 0
      enter(entering, leaving, best)
      pivots++
    }
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
    setCost: (column, price) => {
      cost[column] = price
      moved = true
    },
    setRhs: (row, value) => {
      rhs[row] = value
      moved = true
    },
    shut: (column, isShut) => {
      if ((shutFlag[column] === 1) === isShut) return
      shutFlag[column] = isShut ? 1 : 0
      cost[column] = (cost[column] ?? 0) + (isShut ? SHUT_COST : -SHUT_COST) * standIn
      moved = true
    },
    isShut: (column) => shutFlag[column] === 1,
    solve,
    objective: () => {
      let sum = 0
      for (let i = 0; i < rows; i++) sum += (cost[basis[i] ?? 0] ?? 0) * (level[i] ?? 0)
      return sum
    },
    duals,
    solution: () => {
      const found: { column: number; value: number }[] = []
      for (let i = 0; i < rows; i++) {
        const column = basis[i] ?? 0
        const value = level[i] ?? 0
        if (column >= 2 * rows && value > 1e-7 && shutFlag[column] === 0) found.push({ column, value })
      }
      return found
    },
    uncovered: () => {
      let sum = 0
      for (let i = 0; i < rows; i++) {
        const column = basis[i] ?? 0
        const holdsUp = column < 2 * rows ? column >= rows && senses[column - rows] === 1 : shutFlag[column] === 1
        if (holdsUp) sum += Math.max(0, level[i] ?? 0)
      }
      return sum
    },
    setStandInCost: (price) => {
      standIn = price
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
