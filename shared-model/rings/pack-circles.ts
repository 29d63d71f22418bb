import type { Budget, Result } from '../outcome'
import { failed, ok } from '../outcome'
import type { CentreField, CircleSheet, Point } from './centre-field'
import { centreField } from './centre-field'
import { circleBound } from './circle-bound'
import type { RingsProblem } from './codes'
import { freeSearch } from './free-search'
import { bestLattice } from './lattice'

export interface CirclePacking {
  readonly count: number
  /** Proven: no layout holds more. */
  readonly upperBound: number
  readonly proven: boolean
  /** Centres from the sheet's lower left corner. */
  readonly centres: readonly Point[]
  readonly foundBy: 'lattice' | 'free-search'
  /** Work spent, in thousands of pair distances. */
  readonly work: number
}

/**
 * As many circles of one size as fit a sheet: row lattices first, then a free search for one more and one more until
 * the bound is met or the budget is spent. With a budget of no work it gives the lattice at once.
 */
export const packCircles = (sheet: CircleSheet, budget: Budget): Result<CirclePacking, RingsProblem> => {
  const field = centreField(sheet)
  if (!field.ok) return failed(field.problem)
  const packed = packField(field.value, budget)
  const { marginMm } = field.value
  return ok({ ...packed, centres: packed.centres.map(([x, y]) => [x + marginMm, y + marginMm] as const) })
}

/** The same in the field of centres; for callers that have one. */
export const packField = (field: CentreField, budget: Budget): CirclePacking => {
  const upperBound = circleBound(field)
  let centres = bestLattice(field)
  let foundBy: CirclePacking['foundBy'] = 'lattice'
  let work = 0
  while (centres.length < upperBound && centres.length < MOST_SEARCHED && work < budget.work && !budget.stop()) {
    const found = freeSearch(field, centres.length + 1, { ...budget, work: budget.work - work })
    work += found.work
    if (!found.centres) break
    centres = found.centres
    foundBy = 'free-search'
  }
  return { count: centres.length, upperBound, proven: centres.length === upperBound, centres, foundBy, work }
}

/** With more circles than this a relaxation takes longer than it gains. */
const MOST_SEARCHED = 400
