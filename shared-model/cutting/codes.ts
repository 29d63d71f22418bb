import type { RangeProblemCodes } from '../outcome'

export interface CuttingFindingCodes {
  /** No bar is long enough; the longest usable length is given. */
  readonly 'piece-too-long': {
    readonly mark: string
    readonly profileId: string
    readonly lengthMm: number
    readonly longestMm: number
  }
  /** Cut in parts that a coupling joins, because no bar is long enough. */
  readonly 'piece-joined': {
    readonly mark: string
    readonly lengthMm: number
    readonly longestMm: number
    readonly parts: number
    readonly partMm: number
  }
  /** Pieces that must come from one bar are together longer than any bar. */
  readonly 'bar-group-too-long': {
    readonly group: string
    readonly lengthMm: number
    readonly longestMm: number
  }
  /** The counted stock does not reach for every piece. */
  readonly 'stock-runs-out': { readonly profileId: string; readonly pieces: number; readonly lengthMm: number }
  /** A piece cannot stay on the bar it is pinned to. */
  readonly 'pin-refused': { readonly mark: string; readonly bar: string; readonly why: 'no-such-bar' | 'no-room' }
  /** A piece is cut already, at another length than the design asks for now. */
  readonly 'cut-otherwise': { readonly mark: string; readonly cutMm: number; readonly wantedMm: number }
  /** A price is missing, so bars are compared by length. */
  readonly 'bars-compared-by-length': { readonly profileId: string; readonly unpriced: number }
  /** The plan may not be the least: how far above the proven bound it is. */
  readonly 'cut-plan-not-proven': {
    readonly profileId: string
    readonly value: number
    readonly lowerBound: number
    readonly gapPercent: number
  }
}

export interface CuttingProblemCodes extends RangeProblemCodes {
  readonly 'same-id-twice': { readonly what: string; readonly id: string }
}
