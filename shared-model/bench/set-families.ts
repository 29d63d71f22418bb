import type { Budget } from '../outcome'
import type { DrillWork } from './drill-work'
import { familyVisits } from './family-visits'
import type { ToolNeeds } from './tool-needs'

/** Sets of fitted tools that a walk goes through, each at least once, with the fewest changes that this takes. */
export interface SetFamily {
  readonly sets: readonly number[]
  readonly changes: number
  /** No walk through just these sets takes less. */
  readonly bound: number
  /** Stages that all pieces need together, and over how many changes staying clamped saves one each. */
  readonly needed: number
  readonly useful: number
}

export interface SetFamilies {
  /** All that could take less than what was known, the most promising first. */
  readonly families: readonly SetFamily[]
  /** No walk through just the sets of a family with so many changes takes less. */
  readonly boundOf: (family: SetFamily, changes: number) => number
  /** false: the budget ran out; there may be others. */
  readonly isAll: boolean
}

/**
 * Answers: through which sets of fitted tools could a walk go that takes less than `least`?
 *
 * A walk with k changes through just the sets of a family F has k ≥ |F| − 1. Clampings ≥ visits(F) − saved(k), visits(F)
 * the fewest stages for all pieces whatever the order of the sets, saved(k) what staying clamped over k changes saves:
 * one each as long as a piece has tools for it, then one in two. Families are grown a set at a time. Those that grow
 * from one by r sets need no fewer visits than it does less the r greatest savings among the sets to come; a set saves a
 * piece no more than the tools beyond the first that it has for it, nor more than ideal sets would. One unit of work is
 * one family. For T > C only: then each further set must earn T − C.
 */
export const setFamilies = (
  work: DrillWork,
  needs: ToolNeeds,
  pieces: number,
  fewestChanges: number,
  least: number,
  budget: Budget
): SetFamilies => {
  const { changeS, mountS } = work
  const visits = familyVisits(needs)
  const families: SetFamily[] = []
  const chosen: number[] = []
  let worked = 0
  const costOf = (changes: number, mounts: number) => changes * changeS + mountS * Math.max(pieces, mounts)
  const boundWith = (needed: number, useful: number, changes: number) =>
    costOf(changes, needed - Math.min(changes, useful) - (Math.max(0, changes - useful) >> 1))
  /** Whether adding sets to a family of `size` may pay, where the next save no more than this, falling. */
  const mayGrow = (size: number, needed: number, each: readonly number[], small: readonly number[], large: number) => {
    let saved = 0
    let others = large
    for (let more = 1; more <= each.length; more++) {
      saved += each[more - 1] as number
      others += small[more - 1] as number
      const changes = Math.max(fewestChanges, size + more - 1)
      if (costOf(changes, needed - Math.min(saved, others) - changes) < least) return true
      if (costOf(changes, 0) >= least) return false
    }
    return false
  }
  const grow = (from: number): boolean => {
    const size = chosen.length
    const gains = visits.gains(size, from)
    const each: number[] = []
    const small: number[] = []
    for (let set = needs.setMasks.length - 1; set >= from; set--) {
      if (worked >= budget.work || budget.stop()) return false
      worked += 1
      const needed = visits.add(size, set)
      chosen.push(set)
      if (visits.isWhole(size + 1)) {
        const changes = Math.max(fewestChanges, size)
        // Without what `useful` limits, first: it takes longer to work out.
        if (costOf(changes, needed - changes) < least) {
          const useful = visits.useful(size + 1)
          const bound = boundWith(needed, useful, changes)
          if (bound < least) families.push({ sets: [...chosen], changes, bound, needed, useful })
        }
      }
      if (mayGrow(size + 1, needed, each, small, gains.large) && !grow(set + 1)) return false
      chosen.pop()
      insert(each, gains.each[set] as number)
      insert(small, gains.small[set] as number)
    }
    return true
  }
  const isAll = grow(0)
  // Stable, so equal bounds keep the order in which they were grown.
  families.sort((a, b) => a.bound - b.bound || a.sets.length - b.sets.length)
  return { families, boundOf: ({ needed, useful }, changes) => boundWith(needed, useful, changes), isAll }
}

/** Keeps a list falling. */
const insert = (falling: number[], gain: number): void => {
  let at = falling.length
  while (at > 0 && (falling[at - 1] as number) < gain) at -= 1
  falling.splice(at, 0, gain)
}
