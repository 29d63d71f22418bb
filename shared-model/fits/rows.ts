import { type LayoutProblem, sitesAtPitch } from '../layout'
import { ok, type Result } from '../outcome'

/** What rows of channels along a sill are made of; all in mm. */
export interface RowsWanted {
  /** Least length and depth of the sill, the fit clearance already taken off. */
  readonly roomLengthMm: number
  readonly roomDepthMm: number
  /** Across a channel, its closures' proud edges included. */
  readonly acrossMm: number
  readonly rowGapMm: number
  /** From a cut end to the nearest hole's centre. */
  readonly leastEndMm: number
  readonly pitchMm: number
  /** What both closures add to the cut length. */
  readonly closuresAddMm: number
}

/** One row: its cut length and its sites' distances from the datum end. */
export interface FitRow {
  readonly lengthMm: number
  readonly sitesAtMm: readonly number[]
}

const MOST_ROWS = 4
const MOST_SITES = 40

/** How many rows and sites a row a sill has room for, and whether more than are tried. */
export interface RowRoom {
  readonly rows: number
  readonly sites: number
  readonly capped: boolean
}

export function rowRoom(wanted: RowsWanted): Result<RowRoom, LayoutProblem> {
  const { roomLengthMm, roomDepthMm, acrossMm, rowGapMm, leastEndMm, pitchMm, closuresAddMm } = wanted
  const longest = sitesAtPitch({
    lengthMm: Math.max(0.001, roomLengthMm - closuresAddMm),
    pitchMm,
    leastEndMm,
    spread: 'from-datum'
  })
  if (!longest.ok) return longest
  const rows = Math.max(0, Math.floor((roomDepthMm + rowGapMm) / (acrossMm + rowGapMm)))
  const { sites } = longest.value
  return ok({
    rows: Math.min(MOST_ROWS, rows),
    sites: Math.min(MOST_SITES, sites),
    capped: rows > MOST_ROWS || sites > MOST_SITES
  })
}

/**
 * Every way to fill a sill with rows of channels, each row at one of the lengths at which its number of sites changes:
 * 2 × end + (sites − 1) × pitch. (Longer rows with no more sites, which leave less stock over: `everyChoice`.) At most 4 rows and 40 sites a row; an empty sill is not listed. Rows are listed shortest first.
 */
export function rowsThatFit(wanted: RowsWanted): Result<readonly (readonly FitRow[])[], LayoutProblem> {
  const { leastEndMm, pitchMm } = wanted
  const room = rowRoom(wanted)
  if (!room.ok) return room
  const { rows, sites } = room.value
  const rowOf = (count: number): FitRow => ({
    lengthMm: 2 * leastEndMm + (count - 1) * pitchMm,
    sitesAtMm: Array.from({ length: count }, (_, at) => leastEndMm + at * pitchMm)
  })
  const found: (readonly FitRow[])[] = []
  const add = (counts: readonly number[], from: number): void => {
    if (counts.length > 0) found.push(counts.map(rowOf))
    if (counts.length >= rows) return
    for (let count = from; count <= sites; count++) add([...counts, count], count)
  }
  add([], 1)
  return ok(found)
}
