import type { Budget } from '../outcome'
import { type DrillOrder, drillOrder } from './drill-order'
import type { DrillWork } from './drill-work'

/** Orders kept: of the whole batch and of one unit, for a few designs that are worked on by turns. */
const MOST_KEPT = 8

const kept = new Map<string, DrillOrder>()

/**
 * The drilling order, kept by all that it follows from: kinds of pieces, their operations and counts, the shop's times
 * and the work allowed. Where a hole lies along its channel is no part of that, so a plan that follows the hand seeks no
 * order twice. A search that was told to stop is not kept.
 */
export const keptOrder = (work: DrillWork, budget: Budget): DrillOrder => {
  const key = JSON.stringify([work, budget.work])
  const known = kept.get(key)
  if (known !== undefined) return known
  const order = drillOrder(work, budget)
  if (budget.stop()) return order
  const oldest = kept.size < MOST_KEPT ? undefined : kept.keys().next().value
  if (oldest !== undefined) kept.delete(oldest)
  kept.set(key, order)
  return order
}
