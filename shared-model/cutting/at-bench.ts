import type { CutBar, DoneBar, DonePiece } from './cut-plan'

/** What is settled at the bench: pieces pinned to a bar, and bars that are cut or measured already. */
export interface AtBench {
  readonly pins: readonly { readonly pieceId: string; readonly barKey: string }[]
  readonly bars: readonly DoneBar[]
}

export const NOTHING_AT_BENCH: AtBench = { pins: [], bars: [] }

/** A planned bar with the profile that it is of. */
export type BarOf = CutBar & { readonly profileId: string }

/** Whatever the rest is, this piece is cut from this bar; a bar key of null lets it go where it likes. */
export const pinned = (bench: AtBench, pieceId: string, barKey: string | null): AtBench => ({
  ...bench,
  pins: [...bench.pins.filter((pin) => pin.pieceId !== pieceId), ...(barKey === null ? [] : [{ pieceId, barKey }])]
})

/** The piece is cut, and with it all that stands before it on its bar. */
export const cutUpTo = (bench: AtBench, bar: BarOf, pieceId: string): AtBench =>
  withBar(bench, bar, doneUpTo(bench, bar, pieceId))

/** A cut piece is drilled too: nothing of it is left to do before washing. */
export const drilled = (bench: AtBench, bar: BarOf, pieceId: string): AtBench =>
  withBar(bench, bar, doneUpTo(bench, bar, pieceId, 'drilled'))

/**
 * The piece is spoiled, or a hole in it is wrong: it has to be cut again. What is good of it, mm, is a bar of its own from
 * now on; 0: nothing.
 */
export const spoiled = (bench: AtBench, bar: BarOf, pieceId: string, goodMm: number): AtBench => {
  const pieces = doneUpTo(bench, bar, pieceId, 'spoiled')
  const after = withBar(bench, bar, pieces)
  const gone = pieces.findLast((piece) => piece.pieceId === pieceId)
  if (gone === undefined || goodMm <= 0) return after
  const serial = after.bars.filter(({ stockId }) => stockId === bar.key).length + 1
  const rest: DoneBar = {
    key: `${bar.key}/${serial}`,
    mark: `${bar.mark}${serial}`,
    stockId: bar.key,
    isOffcut: true,
    profileId: bar.profileId,
    lengthMm: Math.min(goodMm, gone.lengthMm),
    trimMm: 0,
    pieces: [],
    closed: false,
    costMinor: 0
  }
  return { ...after, bars: [...after.bars, rest] }
}

/** The bar is as long as found, mm: what is cut from it already stays. */
export const foundLong = (bench: AtBench, bar: BarOf, lengthMm: number): AtBench => {
  const after = withBar(bench, bar, doneUpTo(bench, bar, null))
  return { ...after, bars: after.bars.map((each) => (each.key === bar.key ? { ...each, lengthMm } : each)) }
}

/** Nothing of this bar is settled after all. */
export const barTakenBack = (bench: AtBench, barKey: string): AtBench => ({
  ...bench,
  bars: bench.bars.filter((bar) => bar.key !== barKey)
})

/** How much of a bar is gone: end trim, what is cut, and a kerf after each, mm. */
export const cutAwayMm = (bar: Pick<CutBar, 'trimMm' | 'pieces'>, kerfMm: number): number =>
  bar.pieces
    .filter((piece) => piece.state !== 'planned')
    .reduce((sum, piece) => sum + piece.lengthMm + kerfMm, bar.trimMm)

/**
 * What is done of a bar once this piece is: pieces come off one after the other, so those before it are cut too. What the
 * bench knows counts for more than the plan, which may be a step behind.
 */
const doneUpTo = (bench: AtBench, bar: BarOf, pieceId: string | null, as?: DonePiece['state']): DonePiece[] => {
  const known = bench.bars.find(({ key }) => key === bar.key)?.pieces ?? []
  const pieces = [...known, ...bar.pieces.filter(({ state }) => state === 'planned').filter(isNotIn(known))]
  const last = pieces.findLastIndex((piece) => piece.pieceId === pieceId && piece.state !== 'spoiled')
  return pieces.slice(0, Math.max(last + 1, known.length)).map(({ pieceId: id, mark, lengthMm, state }, at) => ({
    pieceId: id,
    mark,
    lengthMm,
    state: at === last && as !== undefined ? as : state === 'planned' ? 'cut' : state
  }))
}

const isNotIn =
  (known: readonly DonePiece[]) =>
  ({ pieceId }: { readonly pieceId: string }): boolean =>
    !known.some((piece) => piece.pieceId === pieceId && piece.state !== 'spoiled')

const withBar = (bench: AtBench, bar: BarOf, pieces: readonly DonePiece[]): AtBench => {
  const { key, mark, stockId, isOffcut, profileId, lengthMm, trimMm, costMinor } = bar
  const known = bench.bars.find((each) => each.key === key)
  const made: DoneBar = known
    ? { ...known, pieces }
    : { key, mark, stockId, isOffcut, profileId, lengthMm, trimMm, pieces, closed: false, costMinor }
  return { ...bench, bars: known ? bench.bars.map((each) => (each === known ? made : each)) : [...bench.bars, made] }
}
