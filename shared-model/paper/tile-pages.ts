import { type ChannelTemplate, type Drawing, fittedText, type Shape, shifted, text, textWidthMm } from '../sheet'
import { barsAlong, barsDown, inchSquare, SIX_INCHES_MM } from './check-bars'
import { matchShapes } from './match-lines'
import { BARE_EDGE_MM, CONTENT_BOTTOM_MM, type PageSize } from './page'
import { shortName } from './short-name'
import { type Reading, stripShapes } from './strip'
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
 * Every 1:1 page as one drawing of the whole sheet of paper, lying on its side or upright, whichever takes fewer pages.
 * Templates too wide for one page are tiled in both directions.
 */
export const tilePages = (
  templates: readonly ChannelTemplate[],
  page: PageSize,
  reading: Reading
): readonly Drawing[] => {
  const lying = { widthMm: page.heightMm, heightMm: page.widthMm }
  const stands = (template: ChannelTemplate): boolean =>
    tilesOn(template, page).length < tilesOn(template, lying).length
  return [
    ...pagesOf(
      templates.filter((template) => !stands(template)),
      lying,
      reading
    ),
    ...pagesOf(templates.filter(stands), page, reading)
  ]
}

const roomDown = (page: PageSize): number => page.heightMm - footOf(page) - FOOT_MM - ZONE_TOP_MM
/** An upright page has the frame's foot below the bars. */
const footOf = ({ widthMm, heightMm }: PageSize): number => (heightMm > widthMm ? CONTENT_BOTTOM_MM : BARE_EDGE_MM)
const roomAlong = ({ widthMm }: PageSize): number => widthMm - ZONE_LEFT_MM - BARE_EDGE_MM - RIGHT_BARS_MM

const tilesOn = (template: ChannelTemplate, page: PageSize): readonly Tile[] =>
  tilesOf(template, roomAlong(page), roomDown(page) - STRIP_HEAD_MM - STRIP_FOOT_MM)

const pagesOf = (templates: readonly ChannelTemplate[], page: PageSize, reading: Reading): readonly Drawing[] => {
  const pages: Tile[][] = []
  let used = Number.POSITIVE_INFINITY
  for (const tile of templates.flatMap((template) => tilesOn(template, page))) {
    const needed = heightOf(tile)
    if (used + needed > roomDown(page) + 1e-9) {
      pages.push([])
      used = 0
    }
    pages[pages.length - 1]?.push(tile)
    used += needed
  }
  return pages.map((tiles) => ({
    ...page,
    scale: '1:1',
    alt: tiles.map((tile) => `${tileName(tile)}${tileCount(tile)}`).join('; '),
    shapes: [...pageBars(page), ...tileShapes(tiles, page, reading)]
  }))
}

const heightOf = ({ across }: Tile): number => across.toMm - across.fromMm + STRIP_HEAD_MM + STRIP_FOOT_MM

const tileName = ({ template }: Tile): string => `Channel ${template.mark}, ${shortName(template.name)}`

const tileCount = ({ template, index, count }: Tile): string =>
  `: tile ${index + 1} of ${count}${template.wraps ? ' (wraps round the pipe)' : ''}`

const tileShapes = (tiles: readonly Tile[], page: PageSize, reading: Reading): Shape[] => {
  let topMm = ZONE_TOP_MM
  return tiles.flatMap((tile) => {
    const { template, along, across } = tile
    const dx = ZONE_LEFT_MM - along.fromMm
    const dy = topMm + STRIP_HEAD_MM - across.fromMm
    const counted = tileCount(tile)
    const room = roomAlong(page) - textWidthMm(counted, 9, true)
    const name = `${fittedText(tileName(tile), room, 9, true)}${counted}`
    const title = text(ZONE_LEFT_MM, topMm + 3.4, name, { sizePt: 9, bold: true })
    topMm += heightOf(tile)
    const part = { fromMm: along.fromMm, toMm: along.toMm, fromYMm: across.fromMm, toYMm: across.toMm }
    return [
      title,
      ...[...stripShapes(template, part, reading), ...matchShapes(tile, reading)].map((shape) => shifted(shape, dx, dy))
    ]
  })
}

const pageBars = (page: PageSize): Shape[] => {
  const foot = page.heightMm - footOf(page)
  return [
    ...barsDown(page.widthMm - BARE_EDGE_MM - 11, 22),
    ...barsAlong(ZONE_LEFT_MM, foot - 12),
    ...inchSquare(ZONE_LEFT_MM + SIX_INCHES_MM + 12, foot - 26),
    text(ZONE_LEFT_MM, foot - 20, 'Print at 100 %. Lay a rule on the bars before you use this page.', { sizePt: 9 })
  ]
}
