import type { ChannelTemplate, TemplateHole } from '../sheet'

/** How far neighbouring tiles lie over each other. */
export const OVERLAP_MM = 12
/** No hole comes nearer to the overlap than this, where the webs leave room. */
const HOLE_CLEAR_MM = 1

/** A stretch of a template in one direction, and the match lines that it shares with its neighbours. */
export interface Stretch {
  readonly fromMm: number
  readonly toMm: number
  readonly matchBeforeMm: number | null
  readonly matchAfterMm: number | null
}

/** The part of a template that goes on one page: distances along from the datum end, across from its centre line or edge. */
export interface Tile {
  readonly template: ChannelTemplate
  readonly index: number
  readonly count: number
  readonly along: Stretch
  readonly across: Stretch
}

/** Room before the datum end and past the far end. */
const RUN_OUT_MM = 4

/**
 * Tiles of a template, each as large as a page takes, row by row, their match lines in webs between holes where that can
 * be. The last tile of a row is the one that holds the last hole: bare paper past it is not printed. Sides, underside and
 * ends print only the tiles that hold a hole; what is laid alone is laid by the baseline.
 */
export const tilesOf = (template: ChannelTemplate, roomAlongMm: number, roomAcrossMm: number): readonly Tile[] => {
  const lastHoleMm = Math.max(0, ...template.holes.map((hole) => hole.atMm + hole.diameterMm / 2))
  const all = stretches(
    -RUN_OUT_MM,
    template.lengthMm + RUN_OUT_MM,
    roomAlongMm,
    template.holes.map((hole) => ({ atMm: hole.atMm, halfMm: hole.diameterMm / 2 })),
    template.face === 'around' ? Number.POSITIVE_INFINITY : lastHoleMm
  )
  const columns = template.face === 'top' || template.face === 'around' ? all : withHoles(all, template.holes)
  const rows = stretches(
    template.fromYMm,
    template.toYMm,
    roomAcrossMm,
    template.holes.map((hole) => ({ atMm: hole.acrossMm, halfMm: halfAcross(hole) })),
    Number.POSITIVE_INFINITY
  )
  return rows.flatMap((across, row) =>
    columns.map((along, column) => ({
      template,
      index: row * columns.length + column,
      count: rows.length * columns.length,
      along,
      across
    }))
  )
}

/** Only stretches that some hole reaches into; without a neighbour there is no match line either. */
const withHoles = (all: readonly Stretch[], holes: readonly TemplateHole[]): readonly Stretch[] => {
  const held = all.map(({ fromMm, toMm }) =>
    holes.some(({ atMm, diameterMm }) => atMm + diameterMm / 2 > fromMm && atMm - diameterMm / 2 < toMm)
  )
  return all.flatMap((one, index) =>
    held[index] === true
      ? [
          {
            ...one,
            matchBeforeMm: held[index - 1] === true ? one.matchBeforeMm : null,
            matchAfterMm: held[index + 1] === true ? one.matchAfterMm : null
          }
        ]
      : []
  )
}

const halfAcross = (hole: TemplateHole): number =>
  Math.max(hole.diameterMm / 2, ...hole.outlineMm.map(({ yMm }) => Math.abs(yMm - hole.acrossMm)))

interface Span {
  readonly atMm: number
  readonly halfMm: number
}

/** One direction cut into stretches of at most the room; nothing past `neededMm` has to be printed. */
const stretches = (
  startMm: number,
  endMm: number,
  roomMm: number,
  spans: readonly Span[],
  neededMm: number
): readonly Stretch[] => {
  const matches: number[] = []
  let fromMm = startMm
  while (endMm - fromMm > roomMm + 1e-9 && neededMm + HOLE_CLEAR_MM > fromMm + roomMm) {
    const match = matchLine(spans, fromMm + roomMm / 2, fromMm + roomMm - OVERLAP_MM / 2)
    matches.push(match)
    fromMm = match - OVERLAP_MM / 2
  }
  return [...matches, null].map((after, index) => {
    const before = matches[index - 1] ?? null
    return {
      fromMm: before === null ? startMm : before - OVERLAP_MM / 2,
      toMm: after === null ? Math.min(endMm, fromMm + roomMm) : after + OVERLAP_MM / 2,
      matchBeforeMm: before,
      matchAfterMm: after
    }
  })
}

/** The last place at which the whole overlap misses every hole; the last place of all when no web is wide enough. */
const matchLine = (spans: readonly Span[], earliest: number, latest: number): number => {
  const clear = ({ halfMm }: Span): number => halfMm + OVERLAP_MM / 2 + HOLE_CLEAR_MM
  const free = (atMm: number): boolean => spans.every((span) => Math.abs(span.atMm - atMm) >= clear(span) - 1e-9)
  const places = [latest, ...spans.map((span) => span.atMm - clear(span))]
    .filter((place) => place >= earliest && place <= latest && free(place))
    .sort((a, b) => b - a)
  return places[0] ?? latest
}
