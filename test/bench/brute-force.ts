import type { DrillCell, DrillWork } from '../../shared-model/bench/drill-work'

interface Cost {
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
  /** States by what they have cost so far; the cheapest are gone on from first. */
  const open = new Map<number, State[]>([[0, [start]]])
  while (open.size > 0) {
    const at = Math.min(...open.keys())
    const state = open.get(at)?.pop()
    if (state === undefined) {
      open.delete(at)
      continue
    }
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
  return Number.POSITIVE_INFINITY
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

/**
 * The fewest tool changes by going through every reachable state layer by layer: how far each piece is, which tools
 * are fitted. Clamping is free here, so a fitted tool does all it can; any tool may be fitted at any time.
 */
export const changesByForce = (work: DrillWork): number => {
  const kinds = work.pieces
  type State = { done: readonly number[]; tools: readonly number[] }
  const full = kinds.map(({ operations }) => (1 << operations.length) - 1)
  const run = ({ done, tools }: State): State => {
    const now = [...done]
    for (let grew = true; grew; ) {
      grew = false
      for (const [p, { operations, waitsFor }] of kinds.entries()) {
        if (!waitsFor.every((wait) => (now[wait.piece] ?? 0) & (1 << wait.operation))) continue
        for (const [o, { tool, after }] of operations.entries()) {
          const mask = now[p] ?? 0
          if (mask & (1 << o) || !tools.includes(tool) || !after.every((before) => mask & (1 << before))) continue
          now[p] = mask | (1 << o)
          grew = true
        }
      }
    }
    return { done: now, tools }
  }
  const free = (tools: readonly number[], from: number): readonly (readonly number[])[] =>
    tools.length === Math.min(work.drills, work.tools)
      ? [tools]
      : Array.from({ length: work.tools - from }, (_, i) => from + i).flatMap((tool) =>
          free([...tools, tool], tool + 1)
        )
  const seen = new Set<string>()
  let layer = free([], 0).map((tools) => run({ done: kinds.map(() => 0), tools }))
  for (let changes = 0; layer.length > 0; changes++) {
    if (layer.some(({ done }) => done.every((mask, p) => mask === full[p]))) return changes
    const next: State[] = []
    for (const { done, tools } of layer) {
      for (let tool = 0; tool < work.tools; tool++) {
        if (tools.includes(tool)) continue
        for (const drill of tools.keys()) {
          const state = run({ done, tools: tools.with(drill, tool).toSorted((a, b) => a - b) })
          const key = `${state.done}|${state.tools}`
          if (seen.has(key)) continue
          seen.add(key)
          next.push(state)
        }
      }
    }
    layer = next
  }
  return Number.POSITIVE_INFINITY
}
