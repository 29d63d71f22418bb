import { cornerFill } from './corner-fill'
import { bestLattice, latticeCount } from './lattice'
import type { Area, PlacedRound, RoundPart } from './round-stock'
import { FIT_MM } from './round-stock'

/** The best layout known for equal circles in a field of this size: a lattice, or what a free search has found. */
export type EqualLayout = (
  acrossMm: number,
  widthMm: number,
  heightMm: number
) => readonly (readonly [number, number])[]

export const latticeLayout: EqualLayout = (acrossMm, widthMm, heightMm) =>
  bestLattice({ acrossMm: widthMm - acrossMm, upMm: heightMm - acrossMm, apartMm: acrossMm, marginMm: 0 }).map(
    ([x, y]) => [x + acrossMm / 2, y + acrossMm / 2] as const
  )

/**
 * Sets circles size by size, the widest first, into bands: each size takes the narrowest band along one side of what is
 * left that holds it in its best row lattice, and what is left is a rectangle again. Gaps are then filled corner by corner.
 */
export const bandFill = (area: Area, parts: readonly RoundPart[], layout: EqualLayout): readonly PlacedRound[] => {
  const placed: PlacedRound[] = []
  let rest = area
  for (const part of [...parts].sort((a, b) => b.acrossMm - a.acrossMm)) {
    const band = narrowestBand(rest, part, layout)
    for (const [x, y] of band.centres.slice(0, part.count)) {
      placed.push({ needId: part.needId, xMm: rest.xMm + x, yMm: rest.yMm + y, acrossMm: part.acrossMm })
    }
    rest = band.rest
  }
  if (parts.length === 1) return placed
  const left = parts.map((part) => ({
    ...part,
    count: part.count - placed.filter(({ needId }) => needId === part.needId).length
  }))
  return [...placed, ...cornerFill(area, left, placed)]
}

interface Band {
  readonly centres: readonly (readonly [number, number])[]
  readonly rest: Area
}

const NOTHING: Area = { xMm: 0, yMm: 0, widthMm: 0, heightMm: 0 }

const narrowestBand = (rest: Area, part: RoundPart, layout: EqualLayout): Band => {
  const whole = layout(part.acrossMm, rest.widthMm, rest.heightMm)
  if (whole.length <= part.count) return { centres: whole, rest: whole.length === 0 ? rest : NOTHING }
  const low = least(part, rest.heightMm, (high) => ({ ...rest, heightMm: high }))
  const left = least(part, rest.widthMm, (wide) => ({ ...rest, widthMm: wide }))
  if (!low && !left) return { centres: whole, rest: NOTHING }
  if (low && (!left || low.sizeMm * rest.widthMm <= left.sizeMm * rest.heightMm)) {
    return {
      centres: lowest(low.centres),
      rest: { ...rest, yMm: rest.yMm + low.sizeMm, heightMm: rest.heightMm - low.sizeMm }
    }
  }
  const chosen = left ?? { sizeMm: 0, centres: [] }
  return {
    centres: leftmost(chosen.centres),
    rest: { ...rest, xMm: rest.xMm + chosen.sizeMm, widthMm: rest.widthMm - chosen.sizeMm }
  }
}

const lowest = (centres: Band['centres']) => [...centres].sort((a, b) => a[1] - b[1] || a[0] - b[0])
const leftmost = (centres: Band['centres']) => [...centres].sort((a, b) => a[0] - b[0] || a[1] - b[1])

/** The least of some natural band sizes (rows square or hexagonal) whose lattice holds the part's whole count. */
const least = (
  part: RoundPart,
  mostMm: number,
  bandOf: (sizeMm: number) => Area
): { readonly sizeMm: number; readonly centres: Band['centres'] } | null => {
  const pitches = [(Math.sqrt(3) / 2) * part.acrossMm, part.acrossMm]
  let best: { readonly sizeMm: number; readonly band: Area } | null = null
  for (const pitch of pitches) {
    const most = Math.floor((mostMm - part.acrossMm) / pitch + FIT_MM)
    let from = 0
    let to = most
    while (from <= to) {
      const rows = (from + to) >> 1
      const sizeMm = part.acrossMm + rows * pitch
      const band = bandOf(sizeMm)
      if (held(part.acrossMm, band) >= part.count) {
        if (!best || sizeMm < best.sizeMm) best = { sizeMm, band }
        to = rows - 1
      } else {
        from = rows + 1
      }
    }
  }
  return best && { sizeMm: best.sizeMm, centres: latticeLayout(part.acrossMm, best.band.widthMm, best.band.heightMm) }
}

const held = (acrossMm: number, { widthMm, heightMm }: Area): number =>
  latticeCount({ acrossMm: widthMm - acrossMm, upMm: heightMm - acrossMm, apartMm: acrossMm, marginMm: 0 })
