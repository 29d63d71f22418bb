import type { Channel } from '../../layout'
import { failed, ok } from '../../outcome'
import type { Design } from '../design'
import { type Edited, notFound } from './edit'

/** How a row of sites lies: from the datum end on, or in the middle of the room with the same end distance twice. */
export interface Row {
  readonly from: 'datum' | 'spread'
  /** From each cut end to the nearest hole's centre; left out, the least that keeps the web. */
  readonly endMm?: number
}

interface Room {
  readonly lengthMm: number
  readonly endMm: number
  /** Least pitch: a hole and a web. */
  readonly leastPitchMm: number
}

/** Material kept between two holes and between a hole and an end closure: common practice, no source. */
export const LEAST_WEB_MM = 10

/** Where sites of this seat may stand in a channel: e = closure inside + web + d/2 from each cut end, p = d + web. */
export const siteRoom = (design: Design, channel: Channel, seatId: string, endMm?: number): Edited<Room> => {
  const seat = design.seats.find((each) => each.id === seatId)
  if (seat === undefined) return notFound('seat', seatId)
  const saw = design.parts.saws.find((each) => each.id === seat.sawId)
  if (saw === undefined) return notFound('saw', seat.sawId)
  const insides = design.parts.closures
    .filter((each) => each.id === channel.datumClosureId || each.id === channel.farClosureId)
    .map((each) => each.insideDepthMm)
  const leastEndMm = Math.max(0, ...insides) + LEAST_WEB_MM + saw.diameterMm / 2
  return ok({ lengthMm: channel.lengthMm, endMm: endMm ?? leastEndMm, leastPitchMm: saw.diameterMm + LEAST_WEB_MM })
}

/** As many positions as fit at this pitch: ⌊(L − 2e)/p⌋ + 1 when L ≥ 2e, else none. */
export const rowByPitch = (room: Room, row: Row & { readonly pitchMm: number }): readonly number[] => {
  const roomMm = room.lengthMm - 2 * room.endMm
  const pitchMm = row.pitchMm
  if (roomMm < -SLACK_MM || !(pitchMm > 0)) return []
  const count = Math.min(MOST_SITES, Math.floor((roomMm + SLACK_MM) / pitchMm) + 1)
  return positions(room, row.from, pitchMm, count)
}

/** This many positions at the pitch given, or at the one that fills the room. */
export const rowByCount = (
  room: Room,
  row: Row & { readonly count: number; readonly pitchMm?: number },
  channelId: string
): Edited<readonly number[]> => {
  const count = Math.min(MOST_SITES, Math.floor(row.count))
  if (!(count >= 1)) return ok([])
  const roomMm = room.lengthMm - 2 * room.endMm
  const pitchMm = row.pitchMm ?? (count > 1 ? roomMm / (count - 1) : 0)
  const wantedMm = Math.max(pitchMm, count > 1 ? room.leastPitchMm : 0) * (count - 1)
  if (wantedMm > roomMm + SLACK_MM)
    return failed({
      code: 'edit-no-room',
      figures: { field: `channels.${channelId}.lengthMm`, wanted: wantedMm + 2 * room.endMm, room: room.lengthMm }
    })
  return ok(positions(room, count === 1 && row.pitchMm === undefined ? 'spread' : row.from, pitchMm, count))
}

const positions = (room: Room, from: Row['from'], pitchMm: number, count: number): readonly number[] => {
  const startMm = from === 'datum' ? room.endMm : (room.lengthMm - pitchMm * (count - 1)) / 2
  return Array.from({ length: Math.max(0, count) }, (_, k) => startMm + k * pitchMm)
}

/** A row that fits but for the last digits of a fraction of an inch in binary still fits. */
const SLACK_MM = 1e-6
const MOST_SITES = 400
