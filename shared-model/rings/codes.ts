import type { FindingOf, ProblemOf, RangeProblemCodes } from '../outcome'

/** What the sheet plan has to say about a batch. */
export interface RingsFindingCodes {
  /** No sheet of that material and thickness is on offer or on the rack, or too few. */
  readonly 'sheet-short': {
    readonly name: string
    readonly material: string
    readonly thicknessMm: number
    readonly missing: number
  }
  /** A collar or plate is larger than every sheet that it could come from. */
  readonly 'sheet-too-small': {
    readonly name: string
    readonly needsMm: number
    readonly largestMm: number
  }
  /** The sheets are valid, but a cheaper choice of sheets has not been ruled out. */
  readonly 'sheets-not-proven': { readonly value: number; readonly lowerBound: number }
}

export interface RingsProblemCodes extends RangeProblemCodes {
  /** Two needs, or two sheets, share an id. */
  readonly 'sheet-id-twice': { readonly id: string }
}

export type RingsFinding = FindingOf<RingsFindingCodes>
export type RingsProblem = ProblemOf<RingsProblemCodes>
