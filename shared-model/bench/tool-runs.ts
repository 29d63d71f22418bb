import type { DrillWork } from './drill-work'

/**
 * Operations of a whole batch as far as tool changes care: operations of one tool that wait for the same others come
 * free together and are done together, so they are one run. Bits of `before` are runs that must be done first.
 */
export interface ToolRun {
  readonly tool: number
  readonly before: bigint
}

export const toolRuns = (work: DrillWork): readonly ToolRun[] => {
  const runs: ToolRun[] = []
  const byKey = new Map<string, number>()
  /** Run of each operation of each piece. */
  const runOf: number[][] = work.pieces.map(() => [])
  for (const [p, piece] of work.pieces.entries()) {
    const waits = piece.waitsFor.reduce(
      (mask, { piece: other, operation }) => mask | (1n << BigInt(runOf[other]?.[operation] ?? 0)),
      0n
    )
    const order = inOrder(piece.operations.map(({ after }) => after))
    for (const i of order) {
      const operation = piece.operations[i]
      if (!operation) continue
      const before = operation.after.reduce((mask, other) => mask | (1n << BigInt(runOf[p]?.[other] ?? 0)), waits)
      const only = soleRun(before)
      const merged = only !== null && runs[only]?.tool === operation.tool ? only : undefined
      const key = `${operation.tool} ${before}`
      const known = merged ?? byKey.get(key)
      const run = known ?? runs.push({ tool: operation.tool, before }) - 1
      byKey.set(key, run)
      ;(runOf[p] as number[])[i] = run
    }
  }
  return runs
}

/** The only bit of a mask that has one, else null. */
const soleRun = (mask: bigint): number | null =>
  mask !== 0n && (mask & (mask - 1n)) === 0n ? mask.toString(2).length - 1 : null

/** Indices such that each stands after those it waits for. */
const inOrder = (after: readonly (readonly number[])[]): number[] => {
  const order: number[] = []
  const placed = new Set<number>()
  while (order.length < after.length) {
    const next = after.findIndex((before, i) => !placed.has(i) && before.every((other) => placed.has(other)))
    if (next < 0) break
    placed.add(next)
    order.push(next)
  }
  return order
}
