import type { HoleSaw } from '../parts'
import { bodyOf } from './body'
import type { Face } from './face'
import type { Hold, SawAdvice, SawOption } from './fit'
import { LAND_LEAST_MM } from './limits'
import type { PartIndex } from './part-index'
import type { Seat } from './seat'
import { seatFit } from './seat-fit'

const SEATED: ReadonlySet<Hold> = new Set(['hangs-on-rim', 'wedges', 'push-fit', 'pressed-in'])

/**
 * Which of the saws at hand give a seat's first part a rim or a taper (or press its foam in), with land, play and height,
 * widest saw last; and the range of hole diameters that would when none does. A saw wider than the face's flat is left out.
 * It advises only: no saw is changed.
 */
export function sawAdvice(seat: Seat, face: Face, index: PartIndex, saws: readonly HoleSaw[]): SawAdvice {
  const options: SawOption[] = []
  for (const saw of saws) {
    const holeMm = saw.diameterMm + saw.oversizeMm
    if (holeMm > face.flatMm) continue
    const fit = seatFit(seat, face, index, holeMm)
    const first = fit.ok ? fit.value.interfaces[0] : undefined
    if (!fit.ok || !first || !SEATED.has(first.hold)) continue
    if (first.hold === 'hangs-on-rim' && (first.landMm ?? 0) < LAND_LEAST_MM) continue
    options.push({
      sawId: saw.id,
      diameterMm: saw.diameterMm,
      hold: first.hold,
      landMm: first.landMm,
      playMm: first.playMm,
      undersideMm: fit.value.undersideMm
    })
  }
  options.sort((a, b) => a.diameterMm - b.diameterMm || (a.sawId < b.sawId ? -1 : 1))
  return { seatId: seat.id, options, wouldDoMm: options.length > 0 ? null : holeRange(seat, index) }
}

/** Hole diameters that seat a stack's first part: its taper, or its body up to a rim's least land; a foam ring's squeeze. */
export function holeRange(seat: Seat, index: PartIndex): { readonly least: number; readonly most: number } | null {
  const item = seat.stack[0]
  const body = item && bodyOf(item, index)
  if (!body) return null
  if (body.ring) {
    return body.squeezeShare === null ? null : { least: body.rimMm * (1 - body.squeezeShare), most: body.rimMm }
  }
  const most = body.rimMm - 2 * LAND_LEAST_MM
  return body.underRimMm <= most
    ? { least: body.underRimMm, most }
    : body.lowerMm < body.underRimMm
      ? { least: body.lowerMm, most: body.underRimMm }
      : null
}
