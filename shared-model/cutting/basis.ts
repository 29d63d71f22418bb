/**
 * The basis of the master problem: which columns are basic, at what levels, the duals, and the inverse, kept dense by
 * columns and made anew from time to time against rounding.
 */
import type { ColumnStore } from './column-store'

export interface Basis {
  /** Column that is basic in each row's place. */
  readonly basis: Int32Array
  readonly level: Float64Array
  readonly duals: Float64Array
  /** What `directionOf` worked out: how the levels fall as a column enters. */
  readonly step: Float64Array
  /** Starts on slacks and stand-ins. */
  readonly firstBasis: () => void
  /** Levels and duals anew, after right-hand sides or costs have changed. */
  readonly recompute: () => void
  readonly refresh: () => void
  readonly isFresh: () => boolean
  readonly directionOf: (column: number) => void
  /** Writes a row of the inverse. */
  readonly rowOfInverse: (row: number, to: Float64Array) => void
  readonly reducedCost: (column: number) => number
  /** The column whose direction was worked out last takes a row's place. */
  readonly enter: (column: number, pivotRow: number, reduced: number) => void
}

export const PIVOT_EPS = 1e-7
const REFRESH_AFTER = 300
const RECOMPUTE_AFTER = 50

/** Slacks are the columns 0 … rows − 1, stand-ins rows … 2 rows − 1. */
export const createBasis = (columns: ColumnStore, senses: readonly (1 | -1)[], rhs: Float64Array): Basis => {
  const rows = senses.length
  const basis = new Int32Array(rows)
  const level = new Float64Array(rows)
  const duals = new Float64Array(rows)
  const inverse = new Float64Array(rows * rows)
  const step = new Float64Array(rows)
  let sinceRefresh = 0

  const firstBasis = (): void => {
    const place = columns.place()
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
    const cost = columns.cost()
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
      for (let i = 0; i < rows; i++) sum += (cost[basis[i] as number] as number) * (inverse[at + i] as number)
      duals[c] = sum
    }
  }

  /** Makes the inverse anew from the basis; a column that has become dependent gives way to a stand-in. */
  const refresh = (): void => {
    const start = columns.start()
    const place = columns.place()
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
    const start = columns.start()
    const rowOf = columns.rowOf()
    const entryOf = columns.entryOf()
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
    const start = columns.start()
    const rowOf = columns.rowOf()
    const entryOf = columns.entryOf()
    let rest = columns.cost()[column] as number
    for (let e = start[column] as number; e < (start[column + 1] as number); e++) {
      rest -= (duals[rowOf[e] as number] as number) * (entryOf[e] as number)
    }
    return rest
  }

  const enter = (column: number, pivotRow: number, reduced: number): void => {
    const place = columns.place()
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

  return {
    basis,
    level,
    duals,
    step,
    firstBasis,
    recompute,
    refresh,
    isFresh: () => sinceRefresh === 0,
    directionOf,
    rowOfInverse: (row, to) => {
      for (let c = 0; c < rows; c++) to[c] = inverse[c * rows + row] as number
    },
    reducedCost,
    enter
  }
}
