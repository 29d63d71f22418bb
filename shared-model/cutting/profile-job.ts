import { mm } from '../units'
import type { DoneBar, Piece, PieceState } from './cut-plan'
import type { KeepRule } from './instance'
import { needNm } from './kerf'
import type { CuttingSetup, Offcut, StockBar } from './stock'

export interface ProfileJob {
  readonly profileId: string
  readonly pieces: readonly Piece[]
  readonly stock: readonly StockBar[]
  readonly rack: readonly Offcut[]
  readonly setup: CuttingSetup
  readonly done: readonly DoneBar[]
}

/** Where a stock of the instance comes from. */
export interface StockSource {
  readonly kind: 'new' | 'offcut' | 'open'
  readonly stockId: string
  readonly lengthMm: number
  readonly trimMm: number
  /** null: no price known. */
  readonly costMinor: number | null
  readonly keep: KeepRule | null
  readonly isOffcut: boolean
  /** Shortest leftover worth keeping, in nanometres. */
  readonly keepFrom: number
  /** Open bars only: what is cut from it or pinned to it, in order, and its key. */
  readonly key: string | null
  readonly mark: string | null
  readonly first: readonly CutPiece[]
}

/** A piece at the length that is sawn, its allowance in it. */
export interface CutPiece {
  readonly pieceId: string
  readonly mark: string
  readonly length: number
  readonly state: PieceState
}

export const barKey = (stockId: string, serial: number): string => `${stockId}#${serial}`

export const sawnLength = (piece: Piece): number => needNm(mm(piece.lengthMm)) + needNm(mm(piece.allowanceMm ?? 0))
