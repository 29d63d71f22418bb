import type { ChannelTemplate } from '../sheet'

/** How far neighbouring tiles lie over each other. */
export const OVERLAP_MM = 12
/** No hole comes nearer to the overlap than this, where the webs leave room. */
const HOLE_CLEAR_MM = 1

/** A length of a template that goes on one page; distances are from the datum end. */
export interface Tile {
  readonly template: ChannelTemplate
  readonly index: number
  readonly count: number
  readonly fromMm: number
  readonly toMm: number
  /** Match line shared with the tile before, and with the next. */
  readonly matchBeforeMm: number | null
  readonly matchAfterMm: number | null
}

/** Room before the datum end and past the far end. */
const RUN_OUT_MM = 4

/**
 * Tiles of a template, each as long as a page takes, their match lines in webs between holes where that can be. The last
 * tile is the one that holds the last hole: bare paper past it is not printed.
 */
export const tilesOf = (template: ChannelTemplate, pageRoomMm: number): readonly Tile[] => {
  const endMm = template.lengthMm + RUN_OUT_MM
  const matches: number[] = []
  const lastHoleMm = Math.max(0, ...template.holes.map((hole) => hole.atMm + hole.diameterMm / 2))
  let fromMm = -RUN_OUT_MM
  while (endMm - fromMm > pageRoomMm && lastHoleMm + HOLE_CLEAR_MM > fromMm + pageRoomMm) {
    const latest = fromMm + pageRoomMm - OVERLAP_MM / 2
    const match = matchLine(template, fromMm + pageRoomMm / 2, latest)
    matches.push(match)
    fromMm = match - OVERLAP_MM / 2
  }
  return [...matches, null].map((after, index) => {
    const before = matches[index - 1] ?? null
    return {
      template,
      index,
      count: matches.length + 1,
      fromMm: before === null ? -RUN_OUT_MM : before - OVERLAP_MM / 2,
      toMm: after === null ? Math.min(endMm, fromMm + pageRoomMm) : after + OVERLAP_MM / 2,
      matchBeforeMm: before,
      matchAfterMm: after
    }
  })
}

/** The last place at which the whole overlap misses every hole; the last place of all when no web is wide enough. */
const matchLine = (template: ChannelTemplate, earliest: number, latest: number): number => {
  const clear = (hole: ChannelTemplate['holes'][number]): number => hole.diameterMm / 2 + OVERLAP_MM / 2 + HOLE_CLEAR_MM
  const free = (atMm: number): boolean =>
    template.holes.every((hole) => Math.abs(hole.atMm - atMm) >= clear(hole) - 1e-9)
  const places = [latest, ...template.holes.map((hole) => hole.atMm - clear(hole))]
    .filter((place) => place >= earliest && place <= latest && free(place))
    .sort((a, b) => b - a)
  return places[0] ?? latest
}
