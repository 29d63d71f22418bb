import type { DrillWork } from '../../shared-model/bench/drill-work'

/**
 * The least handling of a small batch by going through every state: what is done on each single piece (a bit an
 * operation), which tools are fitted, which piece is clamped. Whole costs only. What the fitted tools can do on the
 * clamped piece is done at once: it costs nothing and takes nothing away.
 */
export const everyState = (work: DrillWork): number => {
  const pieces = work.pieces.flatMap((piece, kind) => Array.from({ length: piece.count }, () => ({ kind, piece })))
  const offsets = pieces.map((_, i) => pieces.slice(0, i).reduce((sum, { piece }) => sum + piece.operations.length, 0))
  const operations = pieces.reduce((sum, { piece }) => sum + piece.operations.length, 0)
  const used = [...new Set(pieces.flatMap(({ piece }) => piece.operations.map(({ tool }) => tool)))]
  const sets = subsets(used, Math.min(work.drills, used.length))
  const near = sets.map((tools) =>
    [...sets.keys()].filter((set) => sets[set]?.filter((tool) => !tools.includes(tool)).length === 1)
  )
  const bitOf = (held: number, operation: number) => 1 << ((offsets[held] ?? 0) + operation)
  const worked = (done: number, set: number, held: number): number => {
    const one = pieces[held]
    const waits = one?.piece.waitsFor ?? []
    const isReady = waits.every((wait) =>
      pieces.every(({ kind }, i) => kind !== wait.piece || (done & bitOf(i, wait.operation)) !== 0)
    )
    if (!one || !isReady) return done
    let now = done
    for (let before = -1; before !== now; ) {
      before = now
      for (const [o, { tool, after }] of one.piece.operations.entries()) {
        if (sets[set]?.includes(tool) && after.every((other) => now & bitOf(held, other))) now |= bitOf(held, o)
      }
    }
    return now
  }
  const cost = new Map<number, number>()
  /** States by what they have cost so far. */
  const open: number[][] = []
  const put = (done: number, set: number, held: number, spent: number) => {
    const state = (done * sets.length + set) * pieces.length + held
    if ((cost.get(state) ?? Number.POSITIVE_INFINITY) <= spent) return
    cost.set(state, spent)
    const same = open[spent] ?? []
    open[spent] = same
    same.push(state)
  }
  for (const set of sets.keys()) for (const held of pieces.keys()) put(worked(0, set, held), set, held, work.mountS)
  for (let spent = 0; spent < open.length; spent++) {
    const same = open[spent] ?? []
    for (let state = same.pop(); state !== undefined; state = same.pop()) {
      if ((cost.get(state) ?? 0) < spent) continue
      const held = state % pieces.length
      const set = Math.floor(state / pieces.length) % sets.length
      const done = Math.floor(state / pieces.length / sets.length)
      if (done === 2 ** operations - 1) return spent
      for (const next of near[set] ?? []) put(worked(done, next, held), next, held, spent + work.changeS)
      for (const other of pieces.keys()) {
        if (other !== held) put(worked(done, set, other), set, other, spent + work.mountS)
      }
    }
  }
  return Number.POSITIVE_INFINITY
}

const subsets = (tools: readonly number[], size: number): readonly (readonly number[])[] =>
  size === 0
    ? [[]]
    : tools.flatMap((tool, i) => subsets(tools.slice(i + 1), size - 1).map((others) => [tool, ...others]))
