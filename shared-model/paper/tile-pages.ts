import { type ChannelTemplate, type Drawing, type Shape, shifted, text } from '../sheet'
import { barsAlong, barsDown, inchSquare, SIX_INCHES_MM } from './check-bars'
import { BARE_EDGE_MM, type PageSize } from './page'
import { matchShapes, type Reading, stripShapes } from './strip'
import { type Tile, tilesOf } from './tiles'

const ZONE_LEFT_MM = BARE_EDGE_MM + 3
const ZONE_TOP_MM = 23
/** For the bars down the right side, and for the bars and the square along the foot. */
const RIGHT_BARS_MM = 22
const FOOT_MM = 31
/** Above a strip: its name and the match lines' figures; below it: the baseline's figures. */
const STRIP_HEAD_MM = 12
const STRIP_FOOT_MM = 9

/**
 * Every 1:1 page as one drawing of the whole sheet of paper: lying on its side, or upright for a face too wide for that.
 */
export const tilePages = (
  templates: readonly ChannelTemplate[],
  page: PageSize,
  reading: Reading
): readonly Drawing[] => {
  const lying = { widthMm: page.heightMm, heightMm: page.widthMm }
  const wide = templates.filter((template) => acrossOf(template) > roomDown(lying))
  const narrow = templates.filter((template) => acrossOf(template) <= roomDown(lying))
  return [...pagesOf(narrow, lying, reading), ...pagesOf(wide, page, reading)]
}

const roomDown = ({ heightMm }: PageSize): number => heightMm - BARE_EDGE_MM - FOOT_MM - ZONE_TOP_MM
const roomAlong = ({ widthMm }: PageSize): number => widthMm - ZONE_LEFT_MM - BARE_EDGE_MM - RIGHT_BARS_MM

const pagesOf = (templates: readonly ChannelTemplate[], page: PageSize, reading: Reading): readonly Drawing[] => {
  const pages: Tile[][] = []
  let used = Number.POSITIVE_INFINITY
  for (const tile of templates.flatMap((template) => tilesOf(template, roomAlong(page)))) {
    const needed = acrossOf(tile.template)
    if (used + needed > roomDown(page)) {
      pages.push([])
      used = 0
    }
    pages[pages.length - 1]?.push(tile)
    used += needed
  }
  return pages.map((tiles) => ({
    ...page,
    scale: '1:1',
    alt: tiles.map(tileTitle).join('; '),
    shapes: [...pageBars(page.widthMm, page.heightMm), ...tileShapes(tiles, reading)]
  }))
}

const acrossOf = (template: ChannelTemplate): number =>
  template.toYMm - template.fromYMm + STRIP_HEAD_MM + STRIP_FOOT_MM

const tileTitle = ({ template, index, count }: Tile): string =>
  `Channel ${template.mark}, ${template.name}: tile ${index + 1} of ${count}`

const tileShapes = (tiles: readonly Tile[], reading: Reading): Shape[] => {
  let topMm = ZONE_TOP_MM
  return tiles.flatMap((tile) => {
    const { template, fromMm, toMm } = tile
    const dx = ZONE_LEFT_MM - fromMm
    const dy = topMm + STRIP_HEAD_MM - template.fromYMm
    const matches = [tile.matchBeforeMm, tile.matchAfterMm].flatMap((atMm, index) =>
      atMm === null ? [] : matchShapes(template, atMm, index === 0, reading)
    )
    const title = text(
      ZONE_LEFT_MM,
      topMm + 3.4,
      `${tileTitle(tile)}${template.wraps ? ' (wraps round the pipe)' : ''}`,
      {
        sizePt: 9,
        bold: true
      }
    )
    topMm += acrossOf(template)
    return [
      title,
      ...[...stripShapes(template, fromMm, toMm, reading), ...matches].map((shape) => shifted(shape, dx, dy))
    ]
  })
}

const pageBars = (widthMm: number, heightMm: number): Shape[] => {
  const foot = heightMm - BARE_EDGE_MM
  return [
    ...barsDown(widthMm - BARE_EDGE_MM - 11, 22),
    ...barsAlong(ZONE_LEFT_MM, foot - 12),
    ...inchSquare(ZONE_LEFT_MM + SIX_INCHES_MM + 12, foot - 26),
    text(ZONE_LEFT_MM, foot - 20, 'Print at 100 %. Lay a rule on the bars before you use this page.', { sizePt: 9 })
  ]
}
