import { type Channel, closureDepthMm, LEAST_WEB_MM, leastEnd, sitesAtPitch, sitesByCount } from '../../layout'
import { failed, ok } from '../../outcome'
import { mm } from '../../units'
import type { Design } from '../design'
import { type Edited, notFound } from './edit'

/** How a row of sites lies: from the datum end on, or with what is left over shared by both ends. */
export interface Row {
  readonly spread: 'even' | 'from-datum'
  /** From each cut end to the nearest hole's centre; left out, the least that keeps the web. */
  readonly endMm?: number
}

interface Room {
  readonly channelId: string
  readonly lengthMm: number
  readonly leastEndMm: number
  /** Least pitch: a hole and a web. */
  readonly leastPitchMm: number
}

/** Where sites of this seat may stand in a channel. */
export const siteRoom = (design: Design, channel: Channel, seatId: string, endMm?: number): Edited<Room> => {
  const seat = design.seats.find((each) => each.id === seatId)
  if (seat === undefined) return notFound('seat', seatId)
  const saw = design.parts.saws.find((each) => each.id === seat.sawId)
  if (saw === undefined) return notFound('saw', seat.sawId)
  const holeMm = saw.diameterMm + saw.oversizeMm
  const depths = design.parts.closures
    .filter((each) => each.id === channel.datumClosureId || each.id === channel.farClosureId)
    .map(closureDepthMm)
  return ok({
    channelId: channel.id,
    lengthMm: channel.lengthMm,
    leastEndMm: endMm ?? leastEnd(mm(Math.max(0, ...depths)), mm(LEAST_WEB_MM), mm(holeMm)),
    leastPitchMm: holeMm + LEAST_WEB_MM
  })
}

/** As many positions as fit at this pitch. A pitch below hole and web is refused. */
export const rowByPitch = (room: Room, row: Row & { readonly pitchMm: number }): Edited<readonly number[]> => {
  const { lengthMm, leastEndMm } = room
  if (!(row.pitchMm >= room.leastPitchMm - SLACK_MM)) return tooClose(room, row.pitchMm)
  const made = sitesAtPitch({ lengthMm, pitchMm: row.pitchMm, leastEndMm, spread: row.spread })
  return made.ok ? ok(made.value.positionsMm) : noRoom(room, row.pitchMm)
}

/** This many positions at the pitch given, or spread as wide as they go. */
export const rowByCount = (
  room: Room,
  row: Row & { readonly count: number; readonly pitchMm?: number }
): Edited<readonly number[]> => {
  const { lengthMm, leastEndMm } = room
  if (row.pitchMm !== undefined) {
    const needMm = (row.count - 1) * row.pitchMm + 2 * leastEndMm
    if (!(row.pitchMm >= room.leastPitchMm - SLACK_MM)) return tooClose(room, row.pitchMm)
    if (!(needMm <= lengthMm + SLACK_MM)) return noRoom(room, needMm)
    const startMm = row.spread === 'even' ? (lengthMm - (row.count - 1) * row.pitchMm) / 2 : leastEndMm
    return ok(Array.from({ length: row.count }, (_, k) => startMm + k * (row.pitchMm ?? 0)))
  }
  const made = sitesByCount({ lengthMm, count: row.count, leastEndMm })
  const needMm = 2 * leastEndMm + Math.max(0, row.count - 1) * room.leastPitchMm
  return made.ok && needMm <= lengthMm + SLACK_MM ? ok(made.value.positionsMm) : noRoom(room, needMm)
}

/** A row that fits but for the last digits of a fraction of an inch in binary still fits. */
const SLACK_MM = 1e-6

const noRoom = (room: Room, wanted: number) =>
  failed({
    code: 'edit-no-room' as const,
    figures: { field: `channels.${room.channelId}.lengthMm`, wanted: finite(wanted), room: room.lengthMm }
  })

const tooClose = (room: Room, pitchMm: number) => {
  const field = `channels.${room.channelId}.sites`
  return failed({
    code: 'field-out-of-range' as const,
    figures: { field, value: finite(pitchMm), least: room.leastPitchMm, most: room.lengthMm }
  })
}

const finite = (value: number): number => (Number.isFinite(value) ? value : 0)
