import type { DrillPiece } from './drill-work'

/** Along the longest chain of what is left: how often the tool comes up anew. */
export const turnsOf = (piece: DrillPiece, done: number, tool: number): number => {
  const known = new Map<number, number>()
  const until = (i: number): number => {
    const old = known.get(i)
    if (old !== undefined) return old
    const operation = piece.operations[i]
    let most = operation?.tool === tool ? 1 : 0
    for (const before of operation?.after ?? []) {
      if (done & (1 << before)) continue
      const again = operation?.tool === tool && piece.operations[before]?.tool !== tool ? 1 : 0
      most = Math.max(most, until(before) + again)
    }
    known.set(i, most)
    return most
  }
  return piece.operations.reduce((most, _, i) => (done & (1 << i) ? most : Math.max(most, until(i))), 0)
}

/** With one drill: how often a piece's tools must be turned to at least, whatever other pieces need. */
export const turnsOfAll = (piece: DrillPiece, done: number): number => {
  let sum = 0
  for (const tool of new Set(piece.operations.map((operation) => operation.tool))) sum += turnsOf(piece, done, tool)
  return sum
}
