import type { Piece } from './cut-plan'
import type { CutPiece } from './profile-job'

/**
 * A piece longer than any bar, cut in as few parts as bars allow and joined by couplings. The parts butt in the coupling,
 * so together they are exactly as long as the piece; they are equal to the millimetre, so that one stop setting cuts them.
 * Common practice, no source. Lengths in nanometres.
 */
export const joinParts = (piece: Piece, length: number, longest: number): readonly CutPiece[] => {
  const parts = Math.ceil(length / longest)
  const even = Math.ceil(length / parts / NM_PER_MM) * NM_PER_MM
  const part = even > longest ? Math.ceil(length / parts) : even
  return Array.from({ length: parts }, (_, index) => ({
    pieceId: `${piece.id}~${index + 1}`,
    mark: `${piece.mark}${String.fromCharCode(97 + index)}`,
    length: index < parts - 1 ? part : length - part * (parts - 1),
    state: 'planned'
  }))
}

/** The piece that an id on a bar speaks of: the piece itself, or the one that it is a part of. */
export const wholePiece = <T extends { readonly id: string }>(pieces: readonly T[], pieceId: string): T | undefined =>
  pieces.find(({ id }) => id === pieceId) ?? pieces.find(({ id }) => pieceId.startsWith(`${id}~`))

const NM_PER_MM = 1_000_000
