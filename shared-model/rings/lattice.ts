import type { CentreField, Point } from './centre-field'

/**
 * The best of the row lattices: square, hexagonal along and across the sheet, rows pressed closer and their circles
 * drawn apart (stretched rows), and hexagonal rows with a few square joints that save a short row.
 * Centres are in field coordinates. An empty list: nothing fits.
 */
export const bestLattice = (field: CentreField): readonly Point[] => {
  if (field.acrossMm < 0 || field.upMm < 0) return []
  const upright = bestRows(field.acrossMm, field.upMm, field.apartMm)
  const turned = bestRows(field.upMm, field.acrossMm, field.apartMm)
  return countOf(turned) > countOf(upright) ? centresOf(turned).map(([x, y]) => [y, x] as const) : centresOf(upright)
}

/** How many circles `bestLattice` holds, without setting out a single one. */
export const latticeCount = ({ acrossMm, upMm, apartMm }: CentreField): number => {
  if (acrossMm < 0 || upMm < 0) return 0
  return Math.max(mostInRows(acrossMm, upMm, apartMm).count, mostInRows(upMm, acrossMm, apartMm).count)
}

/** Every row lattice of the field, both ways, that comes within `slack` circles of the best: starting points. */
export const latticeCandidates = (field: CentreField, slack: number): readonly (readonly Point[])[] => {
  const upright = rowLattices(field.acrossMm, field.upMm, field.apartMm).map((rows) => ({ rows, turned: false }))
  const turned = rowLattices(field.upMm, field.acrossMm, field.apartMm).map((rows) => ({ rows, turned: true }))
  const all = [...upright, ...turned]
  const most = all.reduce((best, { rows }) => Math.max(best, countOf(rows)), 0)
  return all
    .filter(({ rows }) => countOf(rows) >= most - slack)
    .map(({ rows, turned: isTurned }) =>
      isTurned ? centresOf(rows).map(([x, y]) => [y, x] as const) : centresOf(rows)
    )
}

interface Row {
  readonly yMm: number
  readonly fromMm: number
  readonly stepMm: number
  readonly count: number
}

/** Relative rounding allowed where a row just fits; far below the field tolerance. */
const ROUNDING = 1e-9

const countOf = (rows: readonly Row[]): number => rows.reduce((sum, row) => sum + row.count, 0)

const centresOf = (rows: readonly Row[]): Point[] =>
  rows.flatMap((row) => Array.from({ length: row.count }, (_, i) => [row.fromMm + i * row.stepMm, row.yMm] as const))

const bestRows = (along: number, up: number, apart: number): readonly Row[] => {
  const { count, rows, joined } = mostInRows(along, up, apart)
  if (count === 0) return []
  return (joined ? joinedRows : stretchedRows)(along, up, apart, rows) ?? []
}

interface Counted {
  readonly count: number
  readonly rows: number
  readonly joined: boolean
}

/** The first of the row lattices that holds the most. */
const mostInRows = (along: number, up: number, apart: number): Counted => {
  let best: Counted = { count: 0, rows: 0, joined: false }
  if (along < 0 || up < 0) return best
  const most = mostRows(up, apart)
  for (let rows = 1; rows <= most; rows++) {
    const stretched = stretchedCount(along, up, apart, rows)
    if (stretched > best.count) best = { count: stretched, rows, joined: false }
    const joined = joinedCount(along, up, apart, rows)
    if (joined > best.count) best = { count: joined, rows, joined: true }
  }
  return best
}

const mostRows = (up: number, apart: number): number => Math.max(2, Math.floor((2 * up) / apart + ROUNDING) + 1)

const rowLattices = (along: number, up: number, apart: number): (readonly Row[])[] => {
  if (along < 0 || up < 0) return []
  const most = mostRows(up, apart)
  const lattices: (readonly Row[])[] = []
  for (let rows = 1; rows <= most; rows++) {
    const staggered = stretchedRows(along, up, apart, rows)
    if (staggered) lattices.push(staggered)
    const joined = joinedRows(along, up, apart, rows)
    if (joined) lattices.push(joined)
  }
  return lattices
}

const fitting = (span: number, step: number): number => (span < -ROUNDING ? 0 : Math.floor(span / step + ROUNDING) + 1)

/** Rows spread over the whole height; the half step s keeps s² + pitch² ≥ apart² and 2 s ≥ apart. */
const stretchedRows = (along: number, up: number, apart: number, rows: number): readonly Row[] | null => {
  const pitch = rows === 1 ? apart : up / (rows - 1)
  const half = halfStep(apart, pitch, rows)
  if (half === null) return null
  return Array.from({ length: rows }, (_, row) => {
    const fromMm = row % 2 === 0 ? 0 : half
    return { yMm: row * (rows === 1 ? 0 : pitch), fromMm, stepMm: 2 * half, count: fitting(along - fromMm, 2 * half) }
  })
}

const halfStep = (apart: number, pitch: number, rows: number): number | null =>
  2 * pitch < apart * (1 - ROUNDING) && rows > 2
    ? null
    : Math.max(apart / 2, Math.sqrt(Math.max(0, apart * apart - pitch * pitch)))

/** How many `stretchedRows` hold: every second row starts half a step in. */
const stretchedCount = (along: number, up: number, apart: number, rows: number): number => {
  const half = halfStep(apart, rows === 1 ? apart : up / (rows - 1), rows)
  if (half === null) return 0
  return Math.ceil(rows / 2) * fitting(along, 2 * half) + Math.floor(rows / 2) * fitting(along - half, 2 * half)
}

/** Rows at full step: hexagonal joints √3/2 · apart high, as many square joints (apart high) as the height leaves room for. */
const joinedRows = (along: number, up: number, apart: number, rows: number): readonly Row[] | null => {
  const hexagonal = (Math.sqrt(3) / 2) * apart
  const spare = up - (rows - 1) * hexagonal
  if (rows < 2 || spare < -ROUNDING * apart) return null
  const square = Math.min(rows - 1, Math.floor(spare / (apart - hexagonal) + ROUNDING))
  const placed: Row[] = []
  let yMm = 0
  let shifted = false
  let left = square
  for (let row = 0; row < rows; row++) {
    const fromMm = shifted ? apart / 2 : 0
    placed.push({ yMm, fromMm, stepMm: apart, count: fitting(along - fromMm, apart) })
    const joinsSquare = !shifted && left > 0
    if (joinsSquare) left -= 1
    else shifted = !shifted
    yMm += joinsSquare ? apart : hexagonal
  }
  return placed
}

/** How many `joinedRows` hold: each square joint repeats a long row, and after the last of them rows take turns. */
const joinedCount = (along: number, up: number, apart: number, rows: number): number => {
  const hexagonal = (Math.sqrt(3) / 2) * apart
  const spare = up - (rows - 1) * hexagonal
  if (rows < 2 || spare < -ROUNDING * apart) return 0
  const square = Math.min(rows - 1, Math.floor(spare / (apart - hexagonal) + ROUNDING))
  const long = Math.max(0, square) + Math.ceil((rows - Math.max(0, square)) / 2)
  return long * fitting(along, apart) + (rows - long) * fitting(along - apart / 2, apart)
}
