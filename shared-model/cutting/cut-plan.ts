/** A piece to cut, at the length that is printed and sawn. */
export interface Piece {
  readonly id: string
  /** Mark on the piece, the sheet and the board: `1`, `2` … and the unit for a batch: `1/3`. */
  readonly mark: string
  readonly channelId: string
  readonly profileId: string
  readonly lengthMm: number
  /** Pinned to this bar (a stock id and its serial); null: free. */
  readonly pinnedTo: string | null
}

export interface CutBar {
  /** Serial over the whole plan: bar A, B, … */
  readonly mark: string
  readonly stockId: string
  readonly isOffcut: boolean
  readonly lengthMm: number
  readonly trimMm: number
  readonly pieces: readonly {
    readonly pieceId: string
    readonly mark: string
    readonly lengthMm: number
    readonly startMm: number
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
  /** Piece lengths in the order to set the stop to. */
  readonly stopSettingsMm: readonly number[]
  readonly boughtMm: number
  readonly wasteMm: number
  readonly keptMm: number
}
