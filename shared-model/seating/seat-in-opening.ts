/**
 * How a part sits in the round opening below it, and how high its top comes to stand.
 *
 * Drops through: opening ≥ rim. Hangs on its rim: body under the rim ≤ opening < rim; land = (rim − opening) ÷ 2,
 * play = (opening − body) ÷ 2. Wedges on its taper: lower edge < opening < body, where the body measures the opening; a
 * flexible wall goes further by interference ÷ (2 × tan half-angle). Stands: an open lower edge, or a ring, wider than the
 * opening; land = (lower outside − opening) ÷ 2. A soft ring up to its squeeze wider presses in flush. A parallel wall is a
 * push fit up to a limit. A closed bottom as wide as the opening does not enter.
 *
 * In an opening that tapers (a cup's inside) a part also stops where its rim's or its bottom's edge meets the wall.
 * Diameters and heights in mm; interference and squeeze are on the diameter.
 * @source seat-geometry
 */

import { type Body, depthOfDiameter, type Opening, taperTangent } from './body'
import type { Hold } from './fit'
import { FRICTION_TANGENT, PRESS_INTERFERENCE_MM, PUSH_FIT_MOST_MM } from './limits'

export interface Sitting {
  readonly hold: Hold
  readonly topMm: number
  readonly undersideMm: number
  readonly landMm: number | null
  readonly playMm: number | null
  readonly pressMm: number | null
  /** Held when turned over. */
  readonly held: boolean
}

export function seatInOpening(body: Body, opening: Opening, atMm: number): Sitting {
  return body.ring ? ringInOpening(body, opening, atMm) : cupInOpening(body, opening, atMm)
}

function cupInOpening(body: Body, opening: Opening, atMm: number): Sitting {
  const openMm = opening.mouthMm
  const stopMm = stopInside(body, opening, atMm)
  if (openMm >= body.rimMm) {
    if (stopMm === null) return sitting('drops-through', body, body.heightMm, {})
    return sitting('wedges', body, stopMm, { held: holdsByFriction(body) })
  }
  if (openMm >= body.underRimMm) {
    const topMm = atMm + body.rimDepthMm
    if (stopMm !== null && stopMm > topMm) return sitting('wedges', body, stopMm, { held: holdsByFriction(body) })
    return sitting('hangs-on-rim', body, topMm, {
      landMm: (body.rimMm - openMm) / 2,
      playMm: (openMm - body.underRimMm) / 2
    })
  }
  const tangent = taperTangent(body)
  if (tangent === 0 && body.underRimMm - openMm <= PUSH_FIT_MOST_MM) {
    return sitting('push-fit', body, atMm + body.rimDepthMm, { pressMm: body.underRimMm - openMm, held: true })
  }
  if (openMm <= body.lowerMm) {
    const topMm = atMm + body.heightMm
    if (!body.openBelow) return sitting('does-not-enter', body, topMm, {})
    return sitting('stands-on-face', body, topMm, { landMm: (body.lowerMm - openMm) / 2 })
  }
  const depthMm = depthOfDiameter(body, openMm)
  const pressMm = body.flexible ? Math.min(PRESS_INTERFERENCE_MM / (2 * tangent), depthMm - body.rimDepthMm) : 0
  const topMm = Math.max(atMm + depthMm - pressMm, stopMm ?? Number.NEGATIVE_INFINITY)
  return sitting('wedges', body, topMm, { pressMm, held: holdsByFriction(body) })
}

function ringInOpening(body: Body, opening: Opening, atMm: number): Sitting {
  const openMm = opening.mouthMm
  if (body.rimMm < openMm) {
    const stopMm = stopInside(body, opening, atMm)
    if (stopMm === null) return sitting('drops-through', body, body.heightMm, {})
    return sitting('wedges', body, stopMm, { held: body.flexible })
  }
  const overMm = body.rimMm - openMm
  if (body.squeezeShare !== null && overMm <= body.squeezeShare * body.rimMm) {
    return sitting('pressed-in', body, atMm, { pressMm: overMm, held: true })
  }
  if (overMm <= PUSH_FIT_MOST_MM && !body.flexible)
    return sitting('push-fit', body, atMm, { pressMm: overMm, held: true })
  return sitting('stands-on-face', body, atMm + body.heightMm, { landMm: overMm / 2 })
}

/** Height of the part's top where the tapering inside of the opening stops it; null where nothing inside does. */
function stopInside(body: Body, opening: Opening, atMm: number): number | null {
  const fall = opening.mouthMm - opening.lowerMm
  const meets = (edgeMm: number): number | null => {
    if (edgeMm < opening.lowerMm) return null
    if (fall <= 0 || edgeMm > opening.mouthMm) return null
    return (opening.depthMm * (opening.mouthMm - edgeMm)) / fall
  }
  const tops: number[] = []
  const rimAt = meets(body.rimMm)
  if (rimAt !== null) tops.push(atMm - rimAt + body.rimDepthMm)
  const lowerAt = meets(body.lowerMm)
  if (lowerAt !== null && !body.ring) tops.push(atMm - lowerAt + body.heightMm)
  const { floorHoleMm } = opening
  // On a closed bottom everything stands, on the flange of a bored one what is wider than its hole.
  if (floorHoleMm !== null && (floorHoleMm === 0 || body.lowerMm > floorHoleMm)) {
    tops.push(atMm - opening.depthMm + body.heightMm)
  }
  return tops.length === 0 ? null : Math.max(...tops)
}

function holdsByFriction(body: Body): boolean {
  const tangent = taperTangent(body)
  return tangent > 0 && tangent < FRICTION_TANGENT
}

function sitting(hold: Hold, body: Body, topMm: number, more: Partial<Sitting>): Sitting {
  return {
    hold,
    topMm,
    undersideMm: topMm - body.heightMm,
    landMm: null,
    playMm: null,
    pressMm: null,
    held: false,
    ...more
  }
}
