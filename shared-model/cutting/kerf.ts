/**
 * How many pieces a bar holds when every cut takes a kerf.
 *
 * In words: n pieces need n − 1 cuts between them, and one more unless the last piece ends at the bar's end or within a
 * kerf of it. So each piece grows by a kerf, and so does the bar: Σ(l + k) ≤ L + k.
 *
 * l: piece length, k: kerf, L: usable bar length (raw length less end trim); whole nanometres, all ≥ 0.
 * Usable leftover = max(0, L − Σ(l + k)): a sliver thinner than the kerf vanishes in the last cut.
 * @source cut-kerf-arithmetic
 */
import type { RangeProblemCodes } from '../outcome'
import { failed, ok, type ProblemOf, type Result } from '../outcome'
import { type Mm, mm, type Nm, nm } from '../units'

const NM_PER_MM = 1_000_000
/** A length typed in decimals may miss its whole nanometre by the last bits of a double. */
const LAST_BITS_NM = 1e-3

/** Piece lengths, kerfs and trims: up to the next whole nanometre. */
export const needNm = (lengthMm: Mm): Nm => nm(Math.ceil(lengthMm * NM_PER_MM - LAST_BITS_NM))

/** Stock lengths: down to the next whole nanometre. */
export const haveNm = (lengthMm: Mm): Nm => nm(Math.floor(lengthMm * NM_PER_MM + LAST_BITS_NM))

export const mmFromNm = (length: number): number => length / NM_PER_MM

/** Leftover of a bar after pieces that add up to `grown` = Σ(l + k); negative sums cannot be cut. */
export const leftoverAfter = (usable: number, grown: number): number => Math.max(0, usable - grown)

/** Saw cuts in a bar: one a piece, but none after a last piece that ends at the bar's end. */
export const cutsIn = (usable: number, grown: number, kerf: number, pieces: number): number =>
  pieces === 0 ? 0 : usable + kerf === grown ? pieces - 1 : pieces

export interface BarFit {
  readonly fits: boolean
  /** How many of the pieces the bar holds. */
  readonly holds: number
  /** How much too short the last piece would be; 0 when all fit. */
  readonly lastPieceShortMm: number
  readonly leftoverMm: number
  readonly cuts: number
}

/** Whether a number of equal pieces comes from one bar. Lengths in mm; problems name the value that is out of range. */
export const piecesFromOneBar = (
  barMm: Mm,
  pieceMm: Mm,
  pieces: number,
  kerfMm: Mm
): Result<BarFit, ProblemOf<RangeProblemCodes>> => {
  const given = [
    ['bar length', barMm, 0, MOST_MM],
    ['piece length', pieceMm, LEAST_PIECE_MM, MOST_MM],
    ['number of pieces', pieces, 0, MOST_PIECES],
    ['kerf', kerfMm, 0, MOST_KERF_MM]
  ] as const
  for (const [what, value, least, most] of given) {
    if (!Number.isFinite(value)) return failed({ code: 'not-finite', figures: { what } })
    if (value < least || value > most) return failed({ code: 'out-of-range', figures: { what, value, least, most } })
  }
  const usable = haveNm(barMm)
  const kerf = needNm(kerfMm)
  const grown = needNm(pieceMm) + kerf
  const holds = Math.min(Math.floor(pieces), Math.floor((usable + kerf) / grown))
  const short = pieces * grown - kerf - usable
  return ok({
    fits: holds >= pieces,
    holds,
    lastPieceShortMm: mm(short > 0 ? mmFromNm(short) : 0),
    leftoverMm: mm(mmFromNm(leftoverAfter(usable, holds * grown))),
    cuts: cutsIn(usable, holds * grown, kerf, holds)
  })
}

/** Longest bar, shortest piece and widest kerf that the room works with. */
export const MOST_MM = 100_000
export const LEAST_PIECE_MM = 1
export const MOST_KERF_MM = 50
const MOST_PIECES = 100_000
