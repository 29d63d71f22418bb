import type { Budget } from '../outcome'
import { byPiece } from './by-piece'
import type { Lateness } from './by-tool'
import { byTool } from './by-tool'
import type { DrillCell, DrillWork } from './drill-work'
import type { Handling } from './handling'
import { handlingBound, handlingOf } from './handling'
import { leastChanges } from './least-changes'
import { leastHandling } from './least-handling'
import { leastWalk } from './least-walk'

export interface DrillOrder extends Handling {
  readonly cells: readonly DrillCell[]
  readonly soughtBy: 'least-time' | 'fewest-changes'
  /** Proven: no order needs fewer. */
  readonly leastChanges: number
  readonly leastMounts: number
  readonly leastSeconds: number
  /** No order has fewer tool changes, or none takes less time. */
  readonly proven: boolean
  /** No order takes less time; without times: none has fewer clampings at so few changes either. */
  readonly leastProven: boolean
}

/** Orders of fitting with equally few changes that are looked through for the fewest clampings. */
const ORDERS = 24
/** With more drills one order's clampings take longer to work out, and orders differ less. */
const FEW_ORDERS = 6
/** States that the proof of fewest changes may take; a batch of eight kinds of collars takes some thousands. */
const PROOF_WORK = 20_000
const LATENESSES: readonly Lateness[] = ['early', 'late', 'mixed']
/** Kinds of pieces up to which the exact search has a chance to end. */
const SMALL = 8
/** A clamping more decides between orders of equal time, in seconds. */
const TIE_S = 1e-6
/** In seconds: what decides ties comes to less. */
const EPSILON = 5e-4

/**
 * The order of all drilling in a batch: least time where the shop has times for a change or a clamping, else fewest
 * tool changes and then fewest clampings. Tool by tool and piece by piece are worked out first; where neither meets the
 * lower bound an exact search looks for better, as far as the budget goes.
 */
export const drillOrder = (work: DrillWork, budget: Budget): DrillOrder => {
  const soughtBy = work.changeS > 0 || work.mountS > 0 ? 'least-time' : 'fewest-changes'
  const fewest = leastChanges(
    work,
    { work: Math.max(PROOF_WORK, budget.work), stop: budget.stop },
    work.drills === 1 ? ORDERS : FEW_ORDERS
  )
  const operations = work.pieces.reduce((sum, piece) => sum + piece.count * piece.operations.length, 0)
  const changeCost = soughtBy === 'least-time' ? work.changeS : operations + 1
  const mountCost = soughtBy === 'least-time' ? work.mountS + TIE_S : 1
  const weighed: DrillWork = { ...work, changeS: changeCost, mountS: mountCost }
  const costOf = (cells: readonly DrillCell[]) => handlingOf(weighed, cells).seconds
  let lowerBound = handlingBound(weighed, fewest.lowerBound).seconds
  let best: readonly DrillCell[] | null = null
  let least = Number.POSITIVE_INFINITY
  const offer = (cells: readonly DrillCell[] | null) => {
    const cost = cells ? costOf(cells) : least
    if (!(cost < least - TIE_S / 2)) return
    best = cells
    least = cost
  }
  const isLeast = () => least <= lowerBound + EPSILON
  const along = byTool(work)
  for (const stages of fewest.stages) {
    const ordered = along(stages)
    for (const lateness of LATENESSES) {
      offer(ordered(lateness))
      if (isLeast()) break
    }
    if (isLeast()) break
  }
  if (!isLeast() && changeCost < mountCost) offer(byPiece(work))
  if (!isLeast()) {
    const plain: DrillWork = { ...weighed, mountS: soughtBy === 'least-time' ? work.mountS : mountCost }
    const walked = leastWalk(plain, fewest.lowerBound, least, budget)
    lowerBound = Math.max(lowerBound, walked.lowerBound)
    offer(walked.cells)
  }
  if (!isLeast() && isSmall(work)) {
    const exact = leastHandling(work, changeCost, mountCost, budget)
    lowerBound = Math.max(lowerBound, exact.lowerBound)
    offer(exact.cells)
  }
  const cells = best ?? []
  const handling = handlingOf(work, cells)
  return {
    ...handling,
    cells,
    soughtBy,
    leastChanges: fewest.lowerBound,
    leastMounts: handlingBound(weighed, fewest.lowerBound).mounts,
    leastSeconds: leastSecondsOf(soughtBy, isLeast(), handling, lowerBound),
    proven: handling.changes === fewest.lowerBound || isLeast(),
    leastProven: isLeast()
  }
}

/** The bound in whole seconds of the shop, without what decides ties. */
const leastSecondsOf = (
  soughtBy: DrillOrder['soughtBy'],
  isLeast: boolean,
  handling: Handling,
  lowerBound: number
): number => {
  if (soughtBy === 'fewest-changes') return 0
  return isLeast ? handling.seconds : Math.max(0, lowerBound - TIE_S * handling.mounts)
}

const isSmall = (work: DrillWork): boolean => work.pieces.length <= SMALL
