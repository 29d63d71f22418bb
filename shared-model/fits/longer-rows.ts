import type { Workshop } from '../design'
import { graduationNm, mm, setOnGraduation } from '../units'
import type { FitRow, RowsWanted } from './rows'

/** The bars that rows are cut from, and how. Lengths in mm. */
interface RowBars {
  /** What each kind of bar gives: its length less the end trim, and offcuts as they are. */
  readonly usableMm: readonly number[]
  readonly kerfMm: number
  /** Sets a length on the shop's graduation, downwards. */
  readonly setDown: (lengthMm: number) => number
}

/** The bars of one profile that the workshop has or can buy. */
export function rowBars({ stock, rack, cutting, shows }: Workshop, profileId: string): RowBars {
  const graduation = graduationNm(shows)
  const mine = (each: { readonly profileId: string }): boolean => each.profileId === profileId
  const newMm = stock.filter(mine).map((bar) => bar.lengthMm - cutting.endTrimMm)
  return {
    usableMm: [...new Set([...newMm, ...rack.filter(mine).map((bar) => bar.lengthMm)])],
    kerfMm: cutting.kerfMm,
    setDown: (lengthMm) => setOnGraduation(mm(lengthMm), graduation, 'down')
  }
}

/** Every set of rows as short as its sites allow, then every one made longer. */
export function* everyChoice(
  choices: readonly (readonly FitRow[])[],
  wanted: RowsWanted,
  bars: RowBars
): Generator<readonly FitRow[], void> {
  yield* choices
  for (const rows of choices) yield* longerRows(rows, wanted, bars)
}

/**
 * The same rows with one of them, or several that are equal, as long as they get before the bars they are cut from change:
 * m rows of length l and the others that share their bar fill it, m × (l + k) + Σ(s + k) = U + k, k the kerf, s the others'
 * lengths, U what the bar gives. Only lengths at which no further site fits: with one more they are rows of their own. The
 * sites are spread over the length. A longer row leaves less stock over and weighs more, so either may be wanted.
 */
function* longerRows(rows: readonly FitRow[], wanted: RowsWanted, bars: RowBars): Generator<readonly FitRow[], void> {
  const roomMm = wanted.roomLengthMm - wanted.closuresAddMm
  for (const shortMm of new Set(rows.map((row) => row.lengthMm))) {
    const equal = rows.filter((row) => row.lengthMm === shortMm)
    const others = rows.filter((row) => row.lengthMm !== shortMm)
    const nextMm = shortMm + wanted.pitchMm
    for (let m = 1; m <= equal.length; m += 1) {
      const kept = [...equal.slice(m), ...others]
      for (const lengthMm of fillingLengths(m, kept, bars)) {
        if (lengthMm <= shortMm || lengthMm >= nextMm || lengthMm > roomMm) continue
        yield [...kept, ...equal.slice(0, m).map((row) => spread(row, lengthMm, wanted.leastEndMm))].toSorted(
          (a, b) => a.lengthMm - b.lengthMm
        )
      }
    }
  }
}

function fillingLengths(m: number, kept: readonly FitRow[], { usableMm, kerfMm, setDown }: RowBars): Set<number> {
  const found = new Set<number>()
  const ways = 2 ** kept.length
  for (let way = 0; way < ways; way += 1) {
    const sharing = kept.filter((_, at) => Math.floor(way / 2 ** at) % 2 === 1)
    const takenMm = sharing.reduce((sum, row) => sum + row.lengthMm + kerfMm, 0)
    for (const usable of usableMm) {
      // As many of the m rows as one bar holds; the others fill bars of their own.
      for (let together = 1; together <= m; together += 1)
        found.add(setDown(Math.max(0, (usable + kerfMm - takenMm) / together - kerfMm)))
    }
  }
  return found
}

function spread(row: FitRow, lengthMm: number, leastEndMm: number): FitRow {
  const gaps = row.sitesAtMm.length - 1
  if (gaps === 0) return { lengthMm, sitesAtMm: [lengthMm / 2] }
  const pitchMm = (lengthMm - 2 * leastEndMm) / gaps
  return { lengthMm, sitesAtMm: row.sitesAtMm.map((_, at) => leastEndMm + at * pitchMm) }
}
