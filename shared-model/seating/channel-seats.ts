import { ok, type Result } from '../outcome'
import type { HoleSaw } from '../parts'
import type { Section } from '../profile'
import type { SeatingFinding, SeatingProblem } from './codes'
import { type Face, faceOf } from './face'
import type { SeatFit } from './fit'
import type { PartIndex } from './part-index'
import type { Seat } from './seat'
import { seatFindings } from './seat-findings'
import { seatFit } from './seat-fit'

export interface SeatedChannel {
  readonly fits: readonly SeatFit[]
  readonly findings: readonly SeatingFinding[]
}

const keptByIndex = new WeakMap<PartIndex, Map<string, Result<SeatFit, SeatingProblem>>>()

/** How a seat sits in a face; worked out once for all channels of one section, as long as the parts are the same objects. */
function keptFit(seat: Seat, face: Face, index: PartIndex): Result<SeatFit, SeatingProblem> {
  const kept = keptByIndex.get(index) ?? new Map<string, Result<SeatFit, SeatingProblem>>()
  keptByIndex.set(index, kept)
  const { shape, topMm, undersideMm, wallMm, flatMm, outsideRadiusMm, boreWidthMm, boreCornerMm } = face
  const measures = [shape, topMm, undersideMm, wallMm, flatMm, outsideRadiusMm, boreWidthMm, boreCornerMm]
  const key = `${seat.id} ${measures.join(' ')}`
  const fit = kept.get(key) ?? seatFit(seat, face, index)
  kept.set(key, fit)
  return fit
}

/**
 * How every site of a channel sits. A seat is worked out once for the channel's section and given to its sites; its findings
 * are told once for each channel and seat. `saws` are those at hand, for the advice.
 */
export function channelSeats(
  channel: { readonly id: string; readonly sites: readonly { readonly id: string; readonly seatId: string }[] },
  section: Section,
  index: PartIndex,
  saws: readonly HoleSaw[]
): Result<SeatedChannel, SeatingProblem> {
  const face = faceOf(section)
  const bySeat = new Map<string, SeatFit>()
  const findings: SeatingFinding[] = []
  const fits: SeatFit[] = []
  for (const site of channel.sites) {
    let fit = bySeat.get(site.seatId)
    if (!fit) {
      const seat = index.seats.get(site.seatId)
      const worked = seat ? keptFit(seat, face, index) : noSeat(channel.id, site)
      if (!worked.ok)
        return { ok: false, problem: { ...worked.problem, where: { ...worked.problem.where, channelId: channel.id } } }
      fit = worked.value
      bySeat.set(site.seatId, fit)
      if (seat) findings.push(...seatFindings(channel.id, seat, fit, face, index, saws))
    }
    fits.push({ ...fit, siteId: site.id })
  }
  return ok({ fits, findings })
}

function noSeat(
  channelId: string,
  site: { readonly id: string; readonly seatId: string }
): Result<SeatFit, SeatingProblem> {
  return {
    ok: false,
    problem: {
      code: 'part-missing',
      figures: { kind: 'seat', partId: site.seatId },
      where: { channelId, siteId: site.id, field: `channels.${channelId}.sites.${site.id}.seatId` }
    }
  }
}

/** The seats a design uses, each with the first section it sits in: what saw advice is worked out for. */
export function seatsInUse(
  channels: readonly { readonly section: Section; readonly seatIds: Iterable<string> }[],
  index: PartIndex
): readonly { readonly seat: Seat; readonly section: Section }[] {
  const used = new Map<string, { readonly seat: Seat; readonly section: Section }>()
  for (const channel of channels) {
    for (const seatId of channel.seatIds) {
      if (used.has(seatId)) continue
      const seat = index.seats.get(seatId)
      if (seat) used.set(seatId, { seat, section: channel.section })
    }
  }
  return [...used.values()]
}
