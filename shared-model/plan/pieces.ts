import type { Piece } from '../cutting'
import type { Design, Shows } from '../design'
import { graduationNm, mm, setOnGraduation } from '../units'
import { keepLast } from './kept'

const keptPieces = keepLast<readonly Piece[]>()

/**
 * The pieces of a whole batch, at the lengths that are planned, printed and sawn: each channel's cut length set on the
 * shop's graduation, downwards, so that it still fits between the faces it was drawn between. The same list as long as no
 * channel's length or profile changes.
 */
export const piecesOf = (design: Design, shows: Shows): readonly Piece[] => {
  const { channels, quantity } = design
  const graduation = graduationNm(shows)
  const pins = design.atBench?.pins
  const figures = channels.flatMap(({ id, profileId, lengthMm }) => [id, profileId, lengthMm])
  return keptPieces([quantity, graduation, pins, ...figures], () => {
    const pinned = new Map(pins?.map(({ pieceId, barKey }) => [pieceId, barKey]))
    const lengths = channels.map(({ lengthMm }) => setOnGraduation(mm(lengthMm), graduation, 'down'))
    const units = Array.from({ length: quantity }, (_, k) => k + 1)
    return units.flatMap((unit) =>
      channels.map(({ id, profileId }, k) => ({
        id: `${id}.${unit}`,
        mark: pieceMark(k, unit, quantity),
        channelId: id,
        profileId,
        lengthMm: lengths[k] ?? 0,
        pinnedTo: pinned.get(`${id}.${unit}`) ?? null
      }))
    )
  })
}

/** `1`, `2` … for one unit; with the unit's number for a batch: `1/3`. */
const pieceMark = (channel: number, unit: number, quantity: number): string =>
  quantity === 1 ? `${channel + 1}` : `${channel + 1}/${unit}`
