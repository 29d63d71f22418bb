import type { Budget } from '../outcome'
import { bestFirst } from './best-first'
import type { DrillCell, DrillWork } from './drill-work'
import { allDone, doable } from './drill-work'
import { turnsOfAll } from './turns'

export interface LeastHandling {
  /** null: the budget ran out first. */
  readonly cells: readonly DrillCell[] | null
  readonly lowerBound: number
}

type Event =
  | { readonly kind: 'start' }
  | { readonly kind: 'fit'; readonly drill: number; readonly tool: number; readonly free: boolean }
  | { readonly kind: 'mount'; readonly piece: number; readonly done: number }

/** How far the batch is. Alike pieces equally far are counted, not told apart. */
interface State {
  readonly drills: readonly number[]
  /** For each kind of piece, how many lie aside with which operations done. */
  readonly aside: readonly ReadonlyMap<number, number>[]
  readonly clamped: { readonly piece: number; readonly done: number } | null
  readonly event: Event
}

/**
 * The least handling over all orders, exact: best-first search over how far each kind of piece is, what is clamped and
 * what is fitted. What the fitted tools can do on the clamped piece is done at once; that never costs more.
 * For small batches and alike pieces; larger ones run out of budget and give a lower bound.
 */
export const leastHandling = (
  work: DrillWork,
  changeCost: number,
  mountCost: number,
  budget: Budget
): LeastHandling => {
  const start: State = {
    drills: [],
    aside: work.pieces.map(({ count, operations }) => new Map(operations.length > 0 ? [[0, count]] : [])),
    clamped: null,
    event: { kind: 'start' }
  }
  const known = work.pieces.map(() => new Map<number, number>())
  const turnsLeft = (p: number, done: number): number => {
    const old = known[p]?.get(done)
    if (old !== undefined) return old
    const piece = work.pieces[p]
    const turns = piece ? turnsOfAll(piece, done) : 0
    known[p]?.set(done, turns)
    return turns
  }
  const best = bestFirst<State>(
    {
      starts: [start],
      key: keyOf,
      bound: (state) => boundOf(work, state, changeCost, mountCost, turnsLeft),
      isEnd: (state) => isDone(work, state),
      next: (state) => [...mounts(work, state, mountCost), ...fittings(work, state, changeCost)]
    },
    budget
  )
  return { cells: best.way ? cellsOf(work, best.way) : null, lowerBound: best.lowerBound }
}

const keyOf = ({ drills, aside, clamped }: State): string => {
  const tools = [...drills].sort((a, b) => a - b).join()
  const lying = aside.map((kinds) => [...kinds].sort((a, b) => a[0] - b[0]).join('.')).join(';')
  return `${tools}|${lying}|${clamped ? `${clamped.piece}:${clamped.done}` : ''}`
}

const isDone = (work: DrillWork, { aside, clamped }: State): boolean =>
  aside.every((kinds) => kinds.size === 0) &&
  (clamped === null ||
    clamped.done === allDone(work.pieces[clamped.piece] ?? { count: 0, operations: [], waitsFor: [] }))

/** Unfinished pieces with what they have done, the clamped one with `isClamped`. */
const unfinished = (work: DrillWork, { aside, clamped }: State) => {
  const lying = aside.flatMap((kinds, piece) =>
    [...kinds].map(([done, count]) => ({ piece, done, count, isClamped: false }))
  )
  const piece = clamped ? work.pieces[clamped.piece] : undefined
  return clamped && piece && clamped.done !== allDone(piece)
    ? [...lying, { ...clamped, count: 1, isClamped: true }]
    : lying
}

const boundOf = (
  work: DrillWork,
  state: State,
  changeCost: number,
  mountCost: number,
  turnsLeft: (piece: number, done: number) => number
): number => {
  let least = 0
  let pairs = 0
  const needed = new Set<number>()
  for (const { piece, done, count, isClamped } of unfinished(work, state)) {
    const left = (work.pieces[piece]?.operations ?? []).filter((_, i) => !(done & (1 << i))).map(({ tool }) => tool)
    for (const tool of left) needed.add(tool)
    pairs += count * (work.drills === 1 ? turnsLeft(piece, done) : new Set(left).size)
    if (!isClamped) least += count
  }
  const free = work.drills - state.drills.length
  const changes = Math.max(0, [...needed].filter((tool) => !state.drills.includes(tool)).length - free)
  let cost = Number.POSITIVE_INFINITY
  for (let mounted = least; mounted <= least + pairs; mounted++) {
    const changed = Math.max(changes, pairs - work.drills * mounted - free)
    cost = Math.min(cost, changed * changeCost + mounted * mountCost)
    if (changed === changes) break
  }
  return cost
}

/** The others' operations that a kind of piece waits for are done on every piece of theirs. */
const mayStart = (work: DrillWork, state: State, p: number): boolean =>
  (work.pieces[p]?.waitsFor ?? []).every(({ piece, operation }) => {
    const bit = 1 << operation
    if ([...(state.aside[piece]?.keys() ?? [])].some((done) => !(done & bit))) return false
    return state.clamped?.piece !== piece || (state.clamped.done & bit) !== 0
  })

const mounts = (work: DrillWork, state: State, cost: number) =>
  state.aside.flatMap((kinds, p) => {
    const piece = work.pieces[p]
    if (!piece || kinds.size === 0 || !mayStart(work, state, p)) return []
    return [...kinds.keys()].map((done) => {
      const aside = state.aside.map((other) => new Map(other))
      put(aside, p, done, -1)
      const clamped = state.clamped
      const old = clamped ? work.pieces[clamped.piece] : undefined
      if (clamped && old && clamped.done !== allDone(old)) put(aside, clamped.piece, clamped.done, 1)
      const next: State = {
        drills: state.drills,
        aside,
        clamped: { piece: p, done: doable(piece, done, state.drills) },
        event: { kind: 'mount', piece: p, done }
      }
      return { state: next, cost }
    })
  })

const put = (aside: Map<number, number>[], piece: number, done: number, by: number): void => {
  const kinds = aside[piece]
  if (!kinds) return
  const count = (kinds.get(done) ?? 0) + by
  if (count > 0) kinds.set(done, count)
  else kinds.delete(done)
}

const fittings = (work: DrillWork, state: State, cost: number) => {
  const { clamped } = state
  const piece = clamped ? work.pieces[clamped.piece] : undefined
  const fitted = (drill: number, tool: number, free: boolean) => {
    const drills = free ? [...state.drills, tool] : state.drills.with(drill, tool)
    const next: State = {
      drills,
      aside: state.aside,
      clamped: clamped && piece ? { ...clamped, done: doable(piece, clamped.done, drills) } : clamped,
      event: { kind: 'fit', drill, tool, free }
    }
    return { state: next, cost: free ? 0 : cost }
  }
  const wanted = new Set(
    unfinished(work, state).flatMap(({ piece: p, done }) =>
      (work.pieces[p]?.operations ?? []).filter((_, i) => !(done & (1 << i))).map(({ tool }) => tool)
    )
  )
  const missing = [...wanted].filter((tool) => !state.drills.includes(tool))
  return missing.flatMap((tool) =>
    state.drills.length < work.drills
      ? [fitted(state.drills.length, tool, true)]
      : state.drills.map((_, drill) => fitted(drill, tool, false))
  )
}

/** Plays the way again with single pieces: which one is clamped, what is done on it. */
const cellsOf = (work: DrillWork, way: readonly State[]): readonly DrillCell[] => {
  const pool = work.pieces.map(({ count }) => Array.from({ length: count }, (_, serial) => ({ serial, done: 0 })))
  const cells: DrillCell[] = []
  let held: { readonly piece: number; readonly one: { readonly serial: number; done: number } } | null = null
  let fits: DrillCell['fits'][number][] = []
  let mounts = false
  for (const state of way) {
    const { event } = state
    if (event.kind === 'fit') fits.push({ drill: event.drill, tool: event.tool, free: event.free })
    if (event.kind === 'mount') {
      const one = pool[event.piece]?.find((piece) => piece.done === event.done && piece !== held?.one)
      if (one) held = { piece: event.piece, one }
      mounts = true
    }
    if (!held || !state.clamped || state.clamped.done === held.one.done) continue
    const piece = work.pieces[held.piece]
    const operations = piece ? inTurn(piece.operations, held.one.done, state.clamped.done) : []
    const drills = operations.map((o) => state.drills.indexOf(piece?.operations[o]?.tool ?? 0))
    cells.push({ piece: held.piece, serial: held.one.serial, operations, drills, mounts, fits })
    held.one.done = state.clamped.done
    fits = []
    mounts = false
  }
  return cells
}

const inTurn = (
  operations: readonly { readonly after: readonly number[] }[],
  before: number,
  after: number
): readonly number[] => {
  const order: number[] = []
  let done = before
  while (done !== after) {
    const next = operations.findIndex(
      (o, i) => after & (1 << i) && !(done & (1 << i)) && o.after.every((b) => done & (1 << b))
    )
    if (next < 0) break
    order.push(next)
    done |= 1 << next
  }
  return order
}
