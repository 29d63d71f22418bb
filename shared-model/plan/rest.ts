import { type BenchInput, type BenchPlan, benchPlan } from '../bench'
import { type DonePiece, type Piece, wholePiece } from '../cutting'
import type { Design } from '../design'
import type { Budget } from '../outcome'

/** What is left to do of a batch at which the bench has begun. */
export interface RestPlan {
  /** Ids of the pieces that are still to be cut, spoiled ones among them. */
  readonly toCut: readonly string[]
  /** Ids of the pieces that are still to be drilled. */
  readonly toDrill: readonly string[]
  /** The steps for these pieces; what comes after drilling stands in full. */
  readonly bench: BenchPlan
}

/** null: nothing is cut yet, or the steps cannot be worked out. `whole` is the bench's work for the whole batch. */
export const restOf = (
  design: Design,
  pieces: readonly Piece[],
  whole: BenchInput,
  budget: Budget | undefined
): RestPlan | null => {
  // A piece that was cut of another profile than its channel has now has to be cut again.
  const done = (design.atBench?.bars ?? []).flatMap((bar) =>
    bar.pieces.filter(({ pieceId }) => (wholePiece(pieces, pieceId)?.profileId ?? bar.profileId) === bar.profileId)
  )
  if (done.length === 0) return null
  const cut = wholeOnes(
    pieces,
    done.filter(({ state }) => state !== 'spoiled')
  )
  const drilled = wholeOnes(
    pieces,
    done.filter(({ state }) => state === 'drilled')
  )
  const toDrill = pieces.filter(({ id }) => !drilled.has(id))
  const worked = benchPlan(
    {
      ...whole,
      pieces: whole.pieces.filter(({ id }) => !cut.has(id)),
      channels: whole.channels.map((channel) => ({
        ...channel,
        toDrill: toDrill.filter(({ channelId }) => channelId === channel.channelId).length
      }))
    },
    budget
  )
  if (!worked.ok) return null
  return {
    toCut: pieces.filter(({ id }) => !cut.has(id)).map(({ id }) => id),
    toDrill: toDrill.map(({ id }) => id),
    bench: worked.value
  }
}

/** Ids of the pieces that are done; one that is joined of parts is when its last part is. */
const wholeOnes = (pieces: readonly Piece[], done: readonly DonePiece[]): ReadonlySet<string> => {
  const ids = new Set<string>()
  const partsMm = new Map<string, number>()
  for (const { pieceId, lengthMm } of done) {
    const piece = wholePiece(pieces, pieceId)
    if (piece === undefined) continue
    const doneMm = (partsMm.get(piece.id) ?? 0) + lengthMm
    partsMm.set(piece.id, doneMm)
    if (piece.id === pieceId || doneMm >= piece.lengthMm - SAME_LENGTH_MM) ids.add(piece.id)
  }
  return ids
}

/** Lengths are set on the graduation before they are planned; parts differ from the whole by arithmetic only. */
const SAME_LENGTH_MM = 0.001
