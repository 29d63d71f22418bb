import type { DrillPiece, DrillWork } from './drill-work'
import { allDone, doable } from './drill-work'
import { turnsOf } from './turns'

/** Pieces that are drilled alike, with what each set of fitted tools can do on one of them. */
export interface PieceKind {
  /** The pieces of the work that are of this kind. */
  readonly pieces: readonly number[]
  readonly count: number
  readonly full: number
  /** By set of tools, then by what is done: what is done after a clamping with them. */
  readonly after: readonly Int32Array[]
  /** By what is done: operations left, and the fewest clampings they take with any tools. */
  readonly left: Uint8Array
  readonly ideal: Uint8Array
  /** By set of tools: operations that one clamping can do beyond the first. */
  readonly gain: Uint8Array
  /** By tool, then by what is done: how often the tool comes up with another between. */
  readonly turns: readonly Uint8Array[]
  readonly isOrdered: boolean
  readonly waits: readonly { readonly kind: number; readonly bit: number }[]
}

/** It matters to such a piece in which order the sets of tools come. */
export const isInTurn = ({ count, isOrdered, waits }: PieceKind): boolean =>
  count > 0 && (isOrdered || waits.length > 0)

/** Operations of one piece up to which all its states are listed. */
const MOST_OPERATIONS = 10

/** Kinds with parents before cores; null where a piece has too many operations to list its states. */
export const pieceKinds = (work: DrillWork, sets: readonly (readonly number[])[]): readonly PieceKind[] | null => {
  const groups = new Map<string, { readonly piece: DrillPiece; readonly pieces: number[]; count: number }>()
  const groupOf: number[] = []
  for (const [p, piece] of work.pieces.entries()) {
    if (piece.operations.length > MOST_OPERATIONS) return null
    const waits = piece.waitsFor
      .filter(({ piece: other }) => (work.pieces[other]?.count ?? 0) > 0)
      .map(({ piece: other, operation }) => [groupOf[other], operation])
    const key = JSON.stringify([piece.operations, waits])
    const known = groups.get(key)
    groupOf.push(known ? [...groups.keys()].indexOf(key) : groups.size)
    if (known) {
      known.pieces.push(p)
      known.count += piece.count
    } else groups.set(key, { piece, pieces: [p], count: piece.count })
  }
  return [...groups.values()].map(({ piece, pieces, count }) => ({
    pieces,
    count: piece.operations.length > 0 ? count : 0,
    ...tablesOf(work, piece, sets),
    waits: piece.waitsFor
      .filter(({ piece: other }) => (work.pieces[other]?.count ?? 0) > 0)
      .map(({ piece: other, operation }) => ({ kind: groupOf[other] ?? 0, bit: 1 << operation }))
  }))
}

const tablesOf = (work: DrillWork, piece: DrillPiece, sets: readonly (readonly number[])[]) => {
  const full = allDone(piece)
  const masks = Array.from({ length: full + 1 }, (_, mask) => mask)
  const after = sets.map((tools) => Int32Array.from(masks, (mask) => doable(piece, mask, tools)))
  const left = Uint8Array.from(masks, (mask) => bits(full & ~mask))
  const ideal = new Uint8Array(full + 1)
  for (let mask = full - 1; mask >= 0; mask--) {
    let least = 254
    for (const table of after) {
      const next = table[mask] ?? mask
      if (next !== mask) least = Math.min(least, ideal[next] ?? 254)
    }
    ideal[mask] = least + 1
  }
  const gain = Uint8Array.from(after, (table) =>
    masks.reduce((most, mask) => Math.max(most, bits((table[mask] ?? mask) & ~mask) - 1), 0)
  )
  const turns = Array.from({ length: work.tools }, (_, tool) =>
    Uint8Array.from(masks, (mask) => turnsOf(piece, mask, tool))
  )
  return { full, after, left, ideal, gain, turns, isOrdered: piece.operations.some((o) => o.after.length > 0) }
}

const bits = (mask: number): number => {
  let count = 0
  for (let rest = mask; rest; rest &= rest - 1) count += 1
  return count
}
