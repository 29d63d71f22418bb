import type { DrillCell, DrillWork } from '../../shared-model/bench/drill-work'

export interface Cost {
  readonly changes: number
  readonly mounts: number
}

/**
 * The cheapest way through a drilling by plain relaxation over every state of every single piece: nothing is done at
 * once, nothing is grouped, any tool may be fitted and any piece clamped at any time. Slow and simple on purpose.
 */
export const bruteForce = (work: DrillWork, changeCost: number, mountCost: number): number => {
  const pieces = work.pieces.flatMap((piece, kind) => Array.from({ length: piece.count }, () => ({ kind, piece })))
  type State = { done: number[]; drills: number[]; held: number }
  const keyOf = (s: State) => `${s.done.join()}|${[...s.drills].sort().join()}|${s.held}`
  const isDone = (s: State) => s.done.every((mask, i) => mask === (1 << (pieces[i]?.piece.operations.length ?? 0)) - 1)
  const start: State = { done: pieces.map(() => 0), drills: [], held: -1 }
  const cost = new Map<string, number>([[keyOf(start), 0]])
  const layer: { at: number; state: State }[] = [{ at: 0, state: start }]
  while (layer.length > 0) {
    layer.sort((a, b) => b.at - a.at)
    const { at, state } = layer.pop() as { at: number; state: State }
    if (at > (cost.get(keyOf(state)) ?? Number.POSITIVE_INFINITY)) continue
    if (isDone(state)) return at
    const go = (next: State, more: number) => {
      const key = keyOf(next)
      if ((cost.get(key) ?? Number.POSITIVE_INFINITY) <= at + more) return
      cost.set(key, at + more)
      const same = open.get(at + more)
      if (same) same.push(next)
      else open.set(at + more, [next])
    }
    for (let tool = 0; tool < work.tools; tool++) {
      if (state.drills.includes(tool)) continue
      if (state.drills.length < work.drills) go({ ...state, drills: [...state.drills, tool] }, 0)
      else for (const d of state.drills.keys()) go({ ...state, drills: state.drills.with(d, tool) }, changeCost)
    }
    for (const i of pieces.keys()) if (i !== state.held) go({ ...state, held: i }, mountCost)
    const held = pieces[state.held]
    if (!held) continue
    const mask = state.done[state.held] ?? 0
    for (const [o, operation] of held.piece.operations.entries()) {
      if (mask & (1 << o) || !state.drills.includes(operation.tool)) continue
      if (!operation.after.every((before) => mask & (1 << before))) continue
      const waits = held.piece.waitsFor.every((wait) =>
        pieces.every((p, i) => p.kind !== wait.piece || (state.done[i] ?? 0) & (1 << wait.operation))
      )
      if (waits) go({ ...state, done: state.done.with(state.held, mask | (1 << o)) }, 0)
    }
  }
}

/** Follows an order as a worker would; throws at the first thing that cannot be done, and counts what was handled. */
export const follow = (work: DrillWork, cells: readonly DrillCell[]): Cost => {
  const done = work.pieces.map((piece) => Array.from({ length: piece.count }, () => new Set<number>()))
  const drills: number[] = []
  let held = ''
  let changes = 0
  let mounts = 0
  for (const cell of cells) {
    for (const fit of cell.fits) {
      if (fit.free !== (drills[fit.drill] === undefined)) throw new Error('only the first tool of a drill is free')
      if (fit.drill >= work.drills) throw new Error('no such drill')
      drills[fit.drill] = fit.tool
      if (!fit.free) changes += 1
    }
    const name = `${cell.piece}/${cell.serial}`
    if (cell.mounts) mounts += 1
    else if (held !== name) throw new Error(`${name} is not clamped`)
    held = name
    const piece = work.pieces[cell.piece]
    const mine = done[cell.piece]?.[cell.serial]
    if (!piece || !mine) throw new Error('no such piece')
    for (const wait of piece.waitsFor) {
      if (!done[wait.piece]?.every((other) => other.has(wait.operation))) throw new Error('its core has not been cut')
    }
    for (const [k, o] of cell.operations.entries()) {
      const operation = piece.operations[o]
      if (!operation || mine.has(o)) throw new Error('nothing to do')
      if (drills[cell.drills[k] ?? -1] !== operation.tool) throw new Error('the drill holds another tool')
      if (!operation.after.every((before) => mine.has(before))) throw new Error('out of order')
      mine.add(o)
    }
  }
  const isDone = done.every((kind, p) => kind.every((one) => one.size === work.pieces[p]?.operations.length))
  if (!isDone) throw new Error('something is left undone')
  return { changes, mounts }
}
