import type { DrillCell, DrillPiece, DrillWork } from './drill-work'
import { allDone, doable } from './drill-work'

/**
 * Drilling piece by piece: each is clamped once and gets all its tools. Next comes the piece that needs the fewest
 * changes from the tools at hand; its own tools are taken in the order that leaves a tool which most pieces still need.
 * A few first pieces are tried; the order with the fewest changes is kept.
 */
export const byPiece = (work: DrillWork): readonly DrillCell[] => {
  let best: readonly DrillCell[] | null = null
  let least = Number.POSITIVE_INFINITY
  const starts = Math.max(1, Math.min(work.pieces.length, MOST_STARTS))
  for (let start = 0; start < starts; start++) {
    const cells = from(work, start)
    const changes = cells.reduce((sum, { fits }) => sum + fits.filter(({ free }) => !free).length, 0)
    if (changes < least) {
      best = cells
      least = changes
    }
  }
  return best ?? []
}

const MOST_STARTS = 3

interface Way {
  readonly cells: readonly DrillCell[]
  readonly drills: readonly number[]
  readonly changes: number
}

const from = (work: DrillWork, start: number): readonly DrillCell[] => {
  const left = work.pieces.map(({ count, operations }) => (operations.length > 0 ? count : 0))
  const cells: DrillCell[] = []
  let drills: readonly number[] = []
  let first: number | null = start
  for (;;) {
    const open = work.pieces.map((_, p) => p).filter((p) => (left[p] as number) > 0 && isReady(work, left, p))
    const tried: readonly number[] = first !== null && open.includes(first) ? [first] : open
    first = null
    let best: (Way & { readonly piece: number; readonly wanted: number }) | null = null
    for (const piece of tried) {
      left[piece] = (left[piece] as number) - 1
      for (const way of waysThrough(work, piece, left[piece] as number, drills)) {
        const wanted = wantedBy(work, left, way.drills)
        if (!best || way.changes < best.changes || (way.changes === best.changes && wanted > best.wanted)) {
          best = { ...way, piece, wanted }
        }
      }
      left[piece] = (left[piece] as number) + 1
    }
    if (!best) return cells
    left[best.piece] = (left[best.piece] as number) - 1
    cells.push(...best.cells)
    drills = best.drills
  }
}

const isReady = (work: DrillWork, left: readonly number[], p: number): boolean =>
  (work.pieces[p]?.waitsFor ?? []).every(({ piece }) => left[piece] === 0)

/** How many pieces still need a tool that is in a drill, counted by tool. */
const wantedBy = (work: DrillWork, left: readonly number[], drills: readonly number[]): number =>
  work.pieces.reduce(
    (sum, piece, p) =>
      sum +
      ((left[p] as number) > 0
        ? piece.operations.filter(({ tool, after }) => after.length === 0 && drills.includes(tool)).length
        : 0),
    0
  )

/** The ways to do one clamped piece from the tools at hand that need the fewest changes, one for each set of tools left. */
const waysThrough = (work: DrillWork, p: number, serial: number, drills: readonly number[]): readonly Way[] => {
  const piece = work.pieces[p] as DrillPiece
  const all = allDone(piece)
  const cellOf = (
    before: number,
    after: number,
    tools: readonly number[],
    mounts: boolean,
    fits: DrillCell['fits']
  ): DrillCell => {
    const operations = inTurn(piece, before, after)
    return {
      piece: p,
      serial,
      operations,
      drills: operations.map((o) => tools.indexOf(piece.operations[o]?.tool ?? 0)),
      mounts,
      fits
    }
  }
  const startDone = doable(piece, 0, drills)
  const started = startDone === 0 ? [] : [cellOf(0, startDone, drills, true, [])]
  let layer = new Map([
    [`${startDone} ${drills}`, { done: startDone, way: { cells: started, drills, changes: 0 } as Way }]
  ])
  const seen = new Set<string>()
  for (;;) {
    const ended = [...layer.values()].filter(({ done }) => done === all)
    if (ended.length > 0) return ended.map(({ way }) => way)
    const next: typeof layer = new Map()
    for (const [key, { done, way }] of layer) {
      seen.add(key)
      const tools = new Set(
        piece.operations
          .filter((o, i) => !(done & (1 << i)) && o.after.every((b) => done & (1 << b)))
          .map(({ tool }) => tool)
      )
      for (const tool of tools) {
        const free = way.drills.length < work.drills
        const places = free ? [way.drills.length] : way.drills.map((_, drill) => drill)
        for (const drill of places) {
          const fitted = free ? [...way.drills, tool] : way.drills.with(drill, tool)
          const after = doable(piece, done, fitted)
          const nextKey = `${after} ${fitted}`
          if (seen.has(nextKey) || next.has(nextKey)) continue
          const cell = cellOf(done, after, fitted, way.cells.length === 0, [{ drill, tool, free }])
          const changes = way.changes + (free ? 0 : 1)
          next.set(nextKey, { done: after, way: { cells: [...way.cells, cell], drills: fitted, changes } })
        }
      }
    }
    if (next.size === 0) return []
    layer = next
  }
}

const inTurn = (piece: DrillPiece, before: number, after: number): readonly number[] => {
  const order: number[] = []
  let done = before
  while (done !== after) {
    const i = piece.operations.findIndex(
      (o, k) => after & (1 << k) && !(done & (1 << k)) && o.after.every((b) => done & (1 << b))
    )
    if (i < 0) break
    order.push(i)
    done |= 1 << i
  }
  return order
}
