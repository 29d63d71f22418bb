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
import type { Plan, PlanFinding, PlanProblem } from '../../shared-model/plan'
import type { Profile } from '../../shared-model/profile'
import { graduationNm, mm, setOnGraduation } from '../../shared-model/units'
import { closureFor } from '../catalogue/fitting-closures'
import { type Offered, offered } from '../catalogue/offered'
import { nearestSaw, type Seating, seatingSaw } from '../catalogue/seating-saw'
import { evaluateHere } from '../plan/evaluate-here'

/** A pitch for crops of which no spacing is published; the grower types over it. */
export const PLAIN_PITCH_MM = 150

/** What the three steps lead to: a design without a fault and what follows from it, or why there is none. */
export type FirstDesign =
  | { readonly design: Design; readonly plan: Plan }
  | { readonly finding: PlanFinding }
  | { readonly problem: PlanProblem }

/**
 * One channel along the whole sill in its middle, sites at the crop's spacing, and the first cup on offer that the plan
 * has nothing to stop for. With none, the fault of the likeliest.
 */
export function firstDesign(
  design: Design,
  workshop: Workshop,
  on: string,
  chosen: { readonly cropId: string; readonly profileId: string }
): FirstDesign {
  const from = offered(design, workshop)
  const profile = from.profiles.find((each) => each.id === chosen.profileId)
  if (profile === undefined) return missing('profile', chosen.profileId)
  let fault: FirstDesign = missing('cup', '')
  for (const [serial, seating] of seatings(from, profile).entries()) {
    const made = built(design, workshop, from, { profile, cropId: chosen.cropId, seating })
    const tried = made.ok ? faultOf(made.value, workshop, on) : { problem: made.problem }
    if ('design' in tried) return tried
    if (serial === 0) fault = tried
  }
  return fault
}

function faultOf(design: Design, workshop: Workshop, on: string): FirstDesign {
  const plan = evaluateHere(design, workshop, on)
  const [problem] = plan.problems
  if (problem !== undefined) return { problem }
  const finding = plan.findings.find((each) => each.severity === 'stop')
  return finding === undefined ? { design, plan } : { finding }
}

/** Cups to try: the one that seats well, then each with the saw nearest to its body. */
function seatings(from: Offered, profile: Profile): readonly Seating[] {
  const best = seatingSaw(from, profile)
  const others = from.cups.flatMap((cup) => {
    const saw = nearestSaw(from, cup)
    return saw === null ? [] : [{ cup, saw }]
  })
  const narrow = others.filter((each) => each.saw.diameterMm < profile.widthMm)
  if (best !== null) return [best, ...narrow]
  return narrow.length > 0 ? narrow : others.slice(0, 1)
}

function built(
  design: Design,
  workshop: Workshop,
  from: Offered,
  { profile, cropId, seating }: { readonly profile: Profile; readonly cropId: string; readonly seating: Seating }
): Edited<Design> {
  const crop = from.crops.find((each) => each.id === cropId)
  const closure = closureFor(from.closures, profile)
  if (crop === undefined) return failed({ code: 'edit-not-found', figures: { what: 'crop', id: cropId } })
  if (closure === undefined) return failed({ code: 'edit-not-found', figures: { what: 'end closure', id: '' } })
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

const missing = (what: string, id: string): { readonly problem: PlanProblem } => ({
  problem: { code: 'edit-not-found', figures: { what, id } }
})
