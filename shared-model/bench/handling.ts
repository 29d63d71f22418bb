import type { DrillCell, DrillPiece, DrillWork } from './drill-work'
import { turnsOfAll } from './turns'

export interface Handling {
  readonly changes: number
  readonly mounts: number
  readonly seconds: number
}

export const handlingOf = (work: DrillWork, cells: readonly DrillCell[]): Handling => {
  let changes = 0
  let mounts = 0
  for (const cell of cells) {
    for (const { free } of cell.fits) if (!free) changes += 1
    if (cell.mounts) mounts += 1
  }
  return { changes, mounts, seconds: changes * work.changeS + mounts * work.mountS }
}

/**
 * Answers: what must tool changes and clampings take at least?
 *
 * Every operation follows a clamping or a fitting that made it possible. With one drill each such event allows one
 * operation of the piece at hand; with d drills a clamping allows d tools on that piece and a fitting while it is clamped
 * one more. So a piece with n (turns of a tool on it; with more drills its tools) that is clamped h times takes
 * n − d · h changes for itself, if that is more than none. changes ≥ the sum over all pieces, changes ≥ least; the least of
 * changes · T + mounts · C over all clampings, each further one given to the piece where it saves most.
 * With one drill, going from pieces and tools to others that share none with them (a part of the batch to the next) takes
 * a clamping and a fitting for one operation: each part after the first adds one.
 */
export const handlingBound = (
  work: DrillWork,
  leastChanges: number
): { readonly mounts: number; readonly seconds: number } => {
  const { drills } = work
  let pieces = 0
  let needed = drills === 1 ? partsOf(work) - 1 : 0
  /** By how many changes it saves: clampings of a piece beyond its first. */
  const further = new Array<number>(drills + 1).fill(0)
  for (const piece of work.pieces) {
    if (piece.operations.length === 0) continue
    pieces += piece.count
    const more = Math.max(0, pairsOf(piece, drills) - drills)
    needed += piece.count * more
    further[drills] = (further[drills] as number) + piece.count * Math.floor(more / drills)
    further[more % drills] = (further[more % drills] as number) + piece.count
  }
  // A part more is left by a clamping or by a change.
  if (drills === 1) further[1] = Number.POSITIVE_INFINITY
  let mounts = pieces
  let seconds = Number.POSITIVE_INFINITY
  for (let saves = drills; saves > 0; saves--) {
    for (let left = further[saves] as number; left >= 0; left--) {
      seconds = Math.min(seconds, Math.max(leastChanges, needed) * work.changeS + mounts * work.mountS)
      if (needed <= leastChanges || left === 0) break
      needed -= saves
      mounts += 1
    }
  }
  return { mounts: pieces, seconds }
}

const pairsOf = (piece: DrillPiece, drills: number): number =>
  drills === 1 ? turnsOfAll(piece, 0) : new Set(piece.operations.map(({ tool }) => tool)).size

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
