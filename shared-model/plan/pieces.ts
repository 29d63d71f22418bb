import type { Piece } from '../cutting'
import type { Design, Shows } from '../design'
import { graduationNm, mm, setOnGraduation } from '../units'

/**
 * The pieces of a whole batch, at the lengths that are planned, printed and sawn: each channel's cut length set on the
 * shop's graduation, downwards, so that it still fits between the faces it was drawn between.
 */
export const piecesOf = (design: Design, shows: Shows): readonly Piece[] => {
  const graduation = graduationNm(shows)
  const units = Array.from({ length: design.quantity }, (_, k) => k + 1)
  return units.flatMap((unit) =>
    design.channels.map(({ id, profileId, lengthMm }, k) => ({
      id: `${id}.${unit}`,
      mark: pieceMark(k, unit, design.quantity),
      channelId: id,
      profileId,
      lengthMm: setOnGraduation(mm(lengthMm), graduation, 'down'),
      pinnedTo: null
    }))
  )
}

/** `1`, `2` … for one unit; with the unit's number for a batch: `1/3`. */
const pieceMark = (channel: number, unit: number, quantity: number): string =>
  quantity === 1 ? `${channel + 1}` : `${channel + 1}/${unit}`
