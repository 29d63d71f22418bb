import {
  addChannel,
  addCrop,
  addSeat,
  type Design,
  type Edited,
  sitesByPitch,
  type Workshop
} from '../../shared-model/design'
import { failed } from '../../shared-model/outcome'
import { graduationNm, mm, setOnGraduation } from '../../shared-model/units'
import { closureFor } from '../catalogue/fitting-closures'
import { offered } from '../catalogue/offered'
import { nearestSeating, seatingSaw } from '../catalogue/seating-saw'

/** A pitch for crops of which no spacing is published; the grower types over it. */
const PLAIN_PITCH_MM = 150

/** One channel along the whole sill in its middle, sites at the crop's spacing, a cup and a saw that seats it. */
export function firstDesign(design: Design, workshop: Workshop, cropId: string, profileId: string): Edited<Design> {
  const from = offered(design, workshop)
  const crop = from.crops.find((each) => each.id === cropId)
  const profile = from.profiles.find((each) => each.id === profileId)
  const closure = profile === undefined ? undefined : closureFor(from.closures, profile)
  const seating = profile === undefined ? null : (seatingSaw(from, profile) ?? nearestSeating(from))
  if (profile === undefined || closure === undefined) {
    return failed({ code: 'edit-not-found', figures: { what: 'profile', id: profileId } })
  }
  if (crop === undefined || seating === null)
    return failed({ code: 'edit-not-found', figures: { what: 'crop', id: cropId } })
  const { sill } = design
  const roomMm = Math.min(...sill.lengthsMm) - 2 * sill.clearanceMm - 2 * closure.addsLengthMm
  const lengthMm = Math.max(1, setOnGraduation(mm(Math.max(1, roomMm)), graduationNm(workshop.shows), 'down'))
  const seated = addSeat(addCrop(design, crop), { name: seating.cup.name, cup: seating.cup, saw: seating.saw })
  const placed = addChannel(seated, {
    profile,
    datumClosure: closure,
    farClosure: closure,
    xMm: sill.clearanceMm + closure.addsLengthMm,
    yMm: Math.min(...sill.depthsMm) / 2,
    lengthMm
  })
  const channel = placed.ok ? placed.value.channels.at(-1) : undefined
  const seat = seated.seats.at(-1)
  if (!placed.ok || channel === undefined || seat === undefined) return placed
  const pitchMm = crop.pitchMm?.least ?? PLAIN_PITCH_MM
  return sitesByPitch(placed.value, channel.id, { spread: 'even', pitchMm }, { seatId: seat.id, cropId: crop.id })
}
