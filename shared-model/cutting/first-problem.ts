import type { ProblemOf } from '../outcome'
import type { CuttingProblemCodes } from './codes'
import type { DoneBar, Piece } from './cut-plan'
import { LEAST_PIECE_MM, MOST_KERF_MM, MOST_MM } from './kerf'
import type { CuttingSetup, Offcut, StockBar } from './stock'

export interface BarsToCut {
  readonly pieces: readonly Piece[]
  readonly stock: readonly StockBar[]
  readonly rack: readonly Offcut[]
  readonly setup: CuttingSetup
  /** Bars that are cut already; left out: none. */
  readonly done?: readonly DoneBar[]
}

export type CuttingProblem = ProblemOf<CuttingProblemCodes>

/** The first value that cannot be worked with; null: none. */
export const firstProblem = ({ pieces, stock, rack, setup, done = [] }: BarsToCut): CuttingProblem | null => {
  const lengths: readonly (readonly [string, number, number, number])[] = [
    ...pieces.map((piece) => [`pieces.${piece.id}.lengthMm`, piece.lengthMm, LEAST_PIECE_MM, MOST_MM] as const),
    ...pieces.map((piece) => [`pieces.${piece.id}.allowanceMm`, piece.allowanceMm ?? 0, 0, MOST_MM] as const),
    ...stock.map((bar) => [`stock.${bar.id}.lengthMm`, bar.lengthMm, LEAST_PIECE_MM, MOST_MM] as const),
    ...stock.map((bar) => [`stock.${bar.id}.count`, bar.count ?? 0, 0, MOST_COUNT] as const),
    ...stock.map((bar) => [`stock.${bar.id}.offer.priceMinor`, bar.offer.priceMinor ?? 0, 0, MOST_MINOR] as const),
    ...rack.map((bar) => [`rack.${bar.id}.lengthMm`, bar.lengthMm, LEAST_PIECE_MM, MOST_MM] as const),
    ...rack.map((bar) => [`rack.${bar.id}.worthMinor`, bar.worthMinor, 0, MOST_MINOR] as const),
    ...done.map((bar) => [`done.${bar.key}.lengthMm`, bar.lengthMm, 0, MOST_MM] as const),
    ['cutting.kerfMm', setup.kerfMm, 0, MOST_KERF_MM],
    ['cutting.endTrimMm', setup.endTrimMm, 0, MOST_MM],
    ['cutting.keepFromMm', setup.keepFromMm, 0, MOST_MM],
    ['cutting.keptWorthPercent', setup.keptWorthPercent, 0, 100]
  ]
  for (const [what, value, least, most] of lengths) {
    if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what } }
    if (value < least || value > most) return { code: 'out-of-range', figures: { what, value, least, most } }
  }
  const named: readonly (readonly [string, readonly string[]])[] = [
    ['pieces', pieces.map(({ id }) => id)],
    ['stock', [...stock, ...rack].map(({ id }) => id)],
    ['done', done.map(({ key }) => key)]
  ]
  for (const [what, ids] of named) {
    const id = ids.find((each, index) => ids.indexOf(each) !== index)
    if (id !== undefined) return { code: 'same-id-twice', figures: { what, id } }
  }
  return null
}

const MOST_COUNT = 1_000_000
const MOST_MINOR = 1_000_000_000
