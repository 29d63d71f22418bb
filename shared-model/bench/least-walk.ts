import type { Budget } from '../outcome'
import { alongWalk, carriers, staysBeyond } from './along-walk'
import type { DrillCell, DrillWork } from './drill-work'
import type { FamilyStays } from './family-stays'
import { familyWalks } from './family-walks'
import { handlingOf } from './handling'
import type { PieceKind } from './piece-kinds'
import { isInTurn, pieceKinds } from './piece-kinds'
import { type SetFamilies, setFamilies } from './set-families'
import { toolNeeds } from './tool-needs'

export interface LeastWalk {
  /** null: none better than what was known. */
  readonly cells: readonly DrillCell[] | null
  readonly lowerBound: number
}

/** Sets of tools up to which walks over them are searched. */
const MOST_SETS = 84
/** Families of sets that may be looked at: at first, with hardly any budget, at most. */
const FIRST_FAMILIES = 8_000
const FAMILY_LEAST = 200
const FAMILY_WORK = 100_000
/** Sets that may be put to walks: with hardly any budget, at most. */
const WALK_LEAST = 30
const WALK_WORK = 8_000
/** Sets put to walks over one family, unless there are few. */
const MOST_STEPS = 400
/** Walks over one family that are worked out. */
const MOST_TRIED = 24
/** In seconds: what is less than that, as what decides ties is, does not count. */
const EPSILON = 5e-4

/**
 * Answers: which walk over sets of fitted tools takes least time, and what does every walk take at least?
 *
 * A walk with k changes has k + 1 sets (the first fitted free). A piece is clamped in as few of its stages as do all its
 * operations; at each change one piece may stay clamped. So clampings ≥ pieces, and
 * clampings ≥ Σ over kinds (count · fewest stages of the kind) − changes at which a piece can stay.
 * The families of sets that a walk may go through are bounded first, then walked from the most promising on, with as few
 * changes as can be and then with more, until none is left that could take less.
 * Every change is followed at once by work with the tool fitted: fitting it sooner never helps.
 * Not searched where a clamping takes longer than a change: walks then grow too long.
 */
export const leastWalk = (work: DrillWork, fewestChanges: number, known: number, budget: Budget): LeastWalk => {
  const used = [
    ...new Set(work.pieces.flatMap(({ count, operations }) => (count > 0 ? operations.map((o) => o.tool) : [])))
  ]
  const sets = subsets(
    used.sort((a, b) => a - b),
    Math.min(work.drills, used.length)
  )
  const kinds = sets.length <= MOST_SETS ? pieceKinds(work, sets) : null
  if (!kinds || used.length === 0 || work.changeS < work.mountS - EPSILON) return { cells: null, lowerBound: 0 }
  const needs = toolNeeds(work, kinds, sets)
  const pieces = kinds.reduce((sum, { count }) => sum + count, 0)
  const trial = trialOf(work, kinds, sets)
  const walkWork = Math.min(WALK_WORK, WALK_LEAST + 20 * budget.work)
  const familyWork = Math.min(FAMILY_WORK, FAMILY_LEAST + 40 * budget.work)
  let least = known
  let cells: readonly DrillCell[] | null = null
  /** The least bound of a walk that has not been found to take more. */
  let unreached = Number.POSITIVE_INFINITY
  const walkAll = ({ families, boundOf }: SetFamilies, steps: number) => {
    const perFamily = Math.max(MOST_STEPS, steps / families.length)
    const walks = familyWalks(work, kinds, sets, needs, { work: steps, stop: budget.stop }, perFamily)
    const open = families.map((family) => ({ family, changes: family.changes, bound: family.bound }))
    for (let item = open.shift(); item; item = open.shift()) {
      const { family, changes, bound } = item
      if (bound >= least - EPSILON) break
      let tried = 0
      const end = walks(
        family.sets,
        changes,
        () => least - EPSILON,
        (walk, visits, missed, stays) => {
          const one = trial(walk, visits, missed, stays, least)
          if (one.cost < least) {
            least = one.cost
            cells = one.cells
          }
          if (one.cost > one.bound + EPSILON) unreached = Math.min(unreached, one.bound)
          tried += 1
          return least <= bound + EPSILON || tried >= MOST_TRIED
        }
      )
      if (end !== 'all-seen') unreached = Math.min(unreached, bound)
      if (end === 'out-of-work') break
      const next = { family, changes: changes + 1, bound: boundOf(family, changes + 1) }
      if (next.bound >= least - EPSILON) continue
      const at = open.findIndex((other) => other.bound > next.bound)
      open.splice(at < 0 ? open.length : at, 0, next)
    }
  }
  const familiesIn = (some: number) =>
    setFamilies(work, needs, pieces, fewestChanges, least, { work: some, stop: budget.stop })
  // A few families first: what is found on them leaves fewer of all to be looked at.
  let found = familiesIn(Math.min(FIRST_FAMILIES, familyWork))
  walkAll(found, walkWork >> 2)
  if (found.isAll && least <= unreached + EPSILON) return { cells, lowerBound: least }
  if (!found.isAll) found = familiesIn(familyWork)
  unreached = Number.POSITIVE_INFINITY
  walkAll(found, walkWork)
  return { cells, lowerBound: found.isAll ? Math.min(least, unreached) : 0 }
}

interface Trial {
  readonly cells: readonly DrillCell[] | null
  readonly cost: number
  /** No order along the walk takes less. */
  readonly bound: number
}

const trialOf = (work: DrillWork, kinds: readonly PieceKind[], sets: readonly (readonly number[])[]) => {
  const pieces = kinds.reduce((sum, { count }) => sum + count, 0)
  const inTurn = kinds.flatMap((kind, k) => (isInTurn(kind) ? [k] : []))
  return (
    walk: readonly number[],
    visits: readonly number[],
    missed: number,
    family: FamilyStays | null,
    least: number
  ): Trial => {
    const able = carriers(kinds, walk, visits)
    const changes = walk.length - 1
    const lacks = able.map((one) => one.length === 0)
    const lacking = lacks.filter((one) => one).length
    const visited = dot(kinds, visits)
    const boundFor = (lost: number) =>
      changes * work.changeS + work.mountS * Math.max(pieces, visited - (changes - lost))
    const onWalk = inTurn.map((k) => ({
      visits: visits[k] ?? 0,
      isOfUse: (change: number) => able[change]?.includes(k) === true
    }))
    const lost = Math.max(family?.lostOn(walk, onWalk) ?? 0, missed + (lacking > missed ? 1 : 0))
    const bound = boundFor(lost)
    if (bound >= least - EPSILON) return { cells: null, cost: bound, bound }
    const cells = alongWalk(work, kinds, sets, walk, visits, able)
    const cost = cells ? handlingOf(work, cells).seconds : Number.POSITIVE_INFINITY
    if (cost <= bound + EPSILON || lacking < 2) return { cells, cost, bound }
    // A piece may come once more than it must and stay over two changes for it; where any lacks a carrier one is lost.
    const beyond = dot(
      kinds,
      kinds.map((kind, k) => staysBeyond(kind, sets, walk, visits[k] ?? 0, lacks))
    )
    return { cells, cost, bound: boundFor(Math.max(lost, lacking - beyond)) }
  }
}

const dot = (kinds: readonly PieceKind[], each: readonly number[]): number =>
  kinds.reduce((sum, { count }, k) => sum + count * (each[k] ?? 0), 0)

const subsets = (tools: readonly number[], size: number): readonly (readonly number[])[] =>
  size === 0
    ? [[]]
    : tools.flatMap((tool, i) => subsets(tools.slice(i + 1), size - 1).map((others) => [tool, ...others]))
