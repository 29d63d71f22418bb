import { failed, ok, type Result } from '../outcome'
import { checkSaw } from '../parts'
import { saddleGap } from '../profile'
import { mm } from '../units'
import { type Body, bodyOf, type Opening } from './body'
import { checkItem } from './check-item'
import type { SeatingProblem } from './codes'
import { type Face, floorUnder } from './face'
import type { Interface, SeatFit, Solid } from './fit'
import type { PartIndex } from './part-index'
import { partMassG } from './part-mass'
import type { Seat } from './seat'
import { seatInOpening } from './seat-in-opening'
import { bodySolids } from './solids'

/**
 * How a whole stack sits in a hole of a face: every part in the opening of the one below, all heights from the channel's
 * inside floor. A part that drops through is taken to lie on the floor, one that does not enter to stand on the edge, so
 * that what follows still has a place; the findings say that it is wrong.
 *
 * `siteId` is left empty: a seat is worked out once and given to its sites. Fails when a part is missing, the stack is
 * empty, or a cup's measures contradict each other.
 */
export function seatFit(
  seat: Seat,
  face: Face,
  index: PartIndex,
  /** The hole to seat in instead of the one its saw leaves: what another saw would do. */
  holeInsteadMm?: number
): Result<SeatFit, SeatingProblem> {
  const saw = index.saws.get(seat.sawId)
  if (!saw && holeInsteadMm === undefined) return missing(seat, 'saw', seat.sawId, 'sawId')
  if (seat.stack.length === 0) {
    return failed({
      code: 'empty-stack',
      figures: { seat: seat.name },
      where: { seatId: seat.id, field: `seats.${seat.id}.stack` }
    })
  }
  const wrongSaw = saw && holeInsteadMm === undefined ? checkSaw(saw)[0] : undefined
  if (wrongSaw) return failed(wrongSaw)
  const holeMm = holeInsteadMm ?? (saw ? saw.diameterMm + saw.oversizeMm : 0)
  const bodies: Body[] = []
  for (const item of seat.stack) {
    const wrong = checkItem(item, index)
    if (wrong) return failed(wrong)
    const body = bodyOf(item, index)
    if (!body) return missing(seat, item.kind, item.partId, 'stack')
    bodies.push(body)
  }
  return ok(stackUp(seat, bodies, face, index, holeMm))
}

function stackUp(seat: Seat, bodies: readonly Body[], face: Face, index: PartIndex, holeMm: number): SeatFit {
  const interfaces: Interface[] = []
  const solids: Solid[] = []
  let opening: Opening = { mouthMm: holeMm, lowerMm: holeMm, depthMm: face.wallMm, floorHoleMm: null }
  let atMm = face.topMm
  let on = 'face'
  let massG = 0
  let momentGmm = 0
  for (const body of bodies) {
    const sits = seatInOpening(body, opening, atMm)
    interfaces.push({
      partId: body.partId,
      kind: body.kind,
      on,
      openingMm: opening.mouthMm,
      openingAtMm: atMm,
      hold: sits.hold,
      landMm: sits.landMm,
      playMm: sits.playMm,
      proudMm: sits.topMm - atMm,
      pressMm: sits.pressMm,
      undersideMm: sits.undersideMm,
      topMm: sits.topMm,
      held: sits.held,
      located: sits.hold !== 'stands-on-face' && sits.hold !== 'does-not-enter'
    })
    solids.push(...bodySolids(body, sits.undersideMm))
    const partG = partMassG(body, index)
    massG += partG
    momentGmm += partG * (sits.undersideMm + body.heightMm * 0.55)
    opening = body.opening
    atMm = sits.topMm
    on = body.partId
  }
  const located = locate(interfaces)
  const cup = located.findLast((i) => i.kind === 'cup')
  const lowest = located.reduce((low, i) => (i.undersideMm < low.undersideMm ? i : low))
  const first = located[0] ?? lowest
  return {
    siteId: '',
    seatId: seat.id,
    holeMm,
    interfaces: located,
    undersideMm: (cup ?? lowest).undersideMm,
    topMm: Math.max(...located.map((i) => i.topMm)),
    lowestMm: lowest.undersideMm,
    lowestPartId: lowest.partId,
    floorClearanceMm: Math.min(
      ...located.map((part, i) => part.undersideMm - floorUnder(face, bodies[i]?.lowerMm ?? 0))
    ),
    hold: first.hold,
    seals: seals(first, bodies[0], face, holeMm),
    widestMm: Math.max(holeMm, ...bodies.map((b) => b.rimMm)),
    solids,
    massG,
    massAtMm: massG > 0 ? momentGmm / massG : face.topMm
  }
}

/** A part that only stands on an edge is kept there by the next one when that one hangs down through it. */
function locate(interfaces: readonly Interface[]): readonly Interface[] {
  return interfaces.map((part, i) => {
    const next = interfaces[i + 1]
    const through = part.hold === 'stands-on-face' && next !== undefined && next.undersideMm < part.openingAtMm
    return through ? { ...part, located: true } : part
  })
}

/** Only a full ring of contact seals: a flexible taper or push fit in a flat face, or foam thick enough for the edge. */
function seals(first: Interface, body: Body | undefined, face: Face, holeMm: number): boolean {
  if (!body) return false
  if (first.hold === 'pressed-in') {
    if (face.outsideRadiusMm === null) return true
    const gap = saddleGap(mm(face.outsideRadiusMm), mm(holeMm))
    return gap.ok && body.heightMm > gap.value
  }
  return face.outsideRadiusMm === null && body.flexible && (first.hold === 'wedges' || first.hold === 'push-fit')
}

function missing(
  seat: Seat,
  kind: string,
  partId: string,
  field: string
): { readonly ok: false; readonly problem: SeatingProblem } {
  return failed({
    code: 'part-missing',
    figures: { kind, partId },
    where: { seatId: seat.id, partId, field: `seats.${seat.id}.${field}` }
  })
}
