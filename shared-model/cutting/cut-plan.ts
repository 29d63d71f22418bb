import type { BoundCertificate } from './certificate'
import type { CutInstance } from './instance'

/** A piece to cut, at the length that is printed and sawn. */
export interface Piece {
  readonly id: string
  /** Mark on the piece, the sheet and the board: `1`, `2` … and the unit for a batch: `1/3`. */
  readonly mark: string
  readonly channelId: string
  readonly profileId: string
  readonly lengthMm: number
  /** Pinned to this bar (its `key`: a stock id and its serial); null: free. */
  readonly pinnedTo: string | null
  /** Left on the piece for fitting at the bench; sawn with it. */
  readonly allowanceMm?: number
  /** Pieces of one name are cut from one bar. */
  readonly barGroup?: string
  /** Pieces of one name are cut from bars of one lot: one stock's new bars, or offcuts of one lot. */
  readonly lotGroup?: string
}

/** What has been done to a piece; a spoiled one has to be cut again, from what is left of the bars. */
export type PieceState = 'planned' | 'cut' | 'drilled' | 'spoiled'

export interface DonePiece {
  readonly pieceId: string
  readonly mark: string
  readonly lengthMm: number
  readonly state: Exclude<PieceState, 'planned'>
}

/** A bar that is cut or measured already: it stays as it is, and only what is left of it can be used. */
export interface DoneBar {
  readonly key: string
  readonly mark: string
  readonly stockId: string
  readonly isOffcut: boolean
  readonly profileId: string
  /** As found at the bench, which may be shorter than planned. */
  readonly lengthMm: number
  readonly trimMm: number
  /** What is cut from it so far, in order. */
  readonly pieces: readonly DonePiece[]
  /** Nothing more is cut from it. */
  readonly closed: boolean
  readonly costMinor: number | null
}

export interface CutBar {
  /** Serial over the whole plan: bar A, B, … */
  readonly mark: string
  /** Stock id and serial (`downspout-10ft#2`): what a piece is pinned to. */
  readonly key: string
  readonly stockId: string
  readonly isOffcut: boolean
  readonly lengthMm: number
  readonly trimMm: number
  readonly pieces: readonly {
    readonly pieceId: string
    readonly mark: string
    readonly lengthMm: number
    readonly startMm: number
    readonly state: PieceState
  }[]
  readonly cuts: number
  readonly leftoverMm: number
  readonly keep: boolean
  /** null: no price known. */
  readonly costMinor: number | null
  readonly keptWorthMinor: number
}

/** The plan for one profile's bars. */
export interface CutPlan {
  readonly profileId: string
  readonly kerfMm: number
  readonly bars: readonly CutBar[]
  /** Pieces for which no bar is long enough. */
  readonly uncut: readonly { readonly pieceId: string; readonly lengthMm: number; readonly longestMm: number }[]
  readonly costMinor: number | null
  readonly keptWorthMinor: number
  /** In what the bars are compared by: minor units where priced, else bar length in whole mm. */
  readonly value: number
  readonly lowerBound: number
  readonly proven: boolean
  /** What shows the bound, for `checkCertificate`; null: the bound is 0. */
  readonly certificate: BoundCertificate | null
  /** The whole-number instance that was solved: what the certificate and the independent checks speak of. */
  readonly instance: CutInstance
  /** Different ways a bar is cut. */
  readonly patterns: number
  readonly longestOffcutMm: number
  /**
   * Whether no plan of this cost uses fewer bars. One long offcut, few patterns and few stop settings are looked for
   * within the cost too, and are best effort always.
   */
  readonly fewestBars: 'proven' | 'best-effort'
  /** Piece lengths in the order to set the stop to. */
  readonly stopSettingsMm: readonly number[]
  readonly boughtMm: number
  readonly wasteMm: number
  readonly keptMm: number
}

/** Where a bar comes from: bought, off the rack, or the good part of a spoiled piece (whose stock is its bar's key). */
export const barSource = ({ isOffcut, stockId }: Pick<CutBar, 'isOffcut' | 'stockId'>): 'new' | 'rack' | 'piece' =>
  stockId.includes('#') ? 'piece' : isOffcut ? 'rack' : 'new'
