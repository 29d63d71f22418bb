import type { DrillCell, DrillWork } from './drill-work'

export interface Handling {
  readonly changes: number
  readonly mounts: number
  readonly seconds: number
}

export const handlingOf = (work: DrillWork, cells: readonly DrillCell[]): Handling => {
  const changes = cells.reduce((sum, { fits }) => sum + fits.filter(({ free }) => !free).length, 0)
  const mounts = cells.filter((cell) => cell.mounts).length
  return { changes, mounts, seconds: changes * work.changeS + mounts * work.mountS }
}

/**
 * Answers: what must tool changes and clampings take at least?
 *
 * Every operation follows a clamping or a fitting that made it possible. With one drill each such event allows one
 * operation of the piece at hand; with d drills a clamping allows d tools on that piece and a fitting one more. So
 * d · mounts + changes ≥ n (operations; with more drills pairs of piece and tool), mounts ≥ pieces, changes ≥ least;
 * the least of changes · T + mounts · C over all whole numbers that keep the three. With one drill, going from pieces
 * and tools to others that share none with them (a part of the batch to the next) takes a clamping and a fitting for one
 * operation: each part after the first adds one to n.
 */
export const handlingBound = (
  work: DrillWork,
  leastChanges: number
): { readonly mounts: number; readonly seconds: number } => {
  const pieces = work.pieces.reduce((sum, { count, operations }) => sum + (operations.length > 0 ? count : 0), 0)
  const pairs = work.pieces.reduce((sum, piece) => sum + piece.count * pairsOf(piece.operations, work.drills), 0)
  const needed = pairs + (work.drills === 1 ? partsOf(work) - 1 : 0)
  let seconds = Number.POSITIVE_INFINITY
  const most = Math.max(pieces, needed)
  for (let mounts = pieces; mounts <= most; mounts++) {
    const changes = Math.max(leastChanges, needed - work.drills * mounts)
    seconds = Math.min(seconds, changes * work.changeS + mounts * work.mountS)
  }
  return { mounts: pieces, seconds: Number.isFinite(seconds) ? seconds : 0 }
}

const pairsOf = (operations: readonly { readonly tool: number }[], drills: number): number =>
  drills === 1 ? operations.length : new Set(operations.map(({ tool }) => tool)).size

/** Parts of the batch that share no tool with each other. */
const partsOf = (work: DrillWork): number => {
  const parts: Set<number>[] = []
  for (const { count, operations } of work.pieces) {
    if (count === 0 || operations.length === 0) continue
    const tools = new Set(operations.map(({ tool }) => tool))
    const joined = parts.filter((part) => [...tools].some((tool) => part.has(tool)))
    for (const part of joined) {
      for (const tool of part) tools.add(tool)
      parts.splice(parts.indexOf(part), 1)
    }
    parts.push(tools)
  }
  return Math.max(1, parts.length)
}
