import type { Where } from '../outcome'
import type { HoleSaw } from '../parts'
import { type Body, bodyOf, taperTangent } from './body'
import type { SeatingFinding } from './codes'
import type { Face } from './face'
import type { Interface, SawOption, SeatFit } from './fit'
import { FRICTION_DEG, FRICTION_TANGENT, LAND_LEAST_MM } from './limits'
import type { PartIndex } from './part-index'
import { pipeFindings } from './pipe-findings'
import { holeRange, sawAdvice } from './saw-advice'
import type { Seat } from './seat'

/** A bottom this little below the floor just touches it, mm. */
const FLOOR_TOUCH_MM = 0.05

/** What is to be minded about one seat in one channel, each with its figures, limit, source and, where there is one, cure. */
export function seatFindings(
  channelId: string,
  seat: Seat,
  fit: SeatFit,
  face: Face,
  index: PartIndex,
  saws: readonly HoleSaw[]
): readonly SeatingFinding[] {
  const found: SeatingFinding[] = []
  const where: Where = { channelId, seatId: seat.id, field: `seats.${seat.id}.sawId` }
  fit.interfaces.forEach((part, i) => {
    const item = seat.stack[i]
    const body = item && bodyOf(item, index)
    if (body) found.push(...interfaceFindings(part, body, seat, face, index, saws, where))
  })
  // A part that drops through lies on the floor already: one word for one fault.
  const dropped = fit.interfaces.some((part) => part.hold === 'drops-through')
  if (!dropped && fit.floorClearanceMm < -FLOOR_TOUCH_MM) {
    found.push({
      code: 'reaches-floor',
      severity: 'stop',
      figures: { part: nameOf(fit.lowestPartId, seat, index), shortMm: -fit.floorClearanceMm },
      where: { ...where, partId: fit.lowestPartId, field: `seats.${seat.id}.stack` },
      source: 'seat-geometry'
    })
  }
  if (face.outsideRadiusMm !== null) found.push(...pipeFindings(seat, fit, face, face.outsideRadiusMm, index, where))
  return found
}

function interfaceFindings(
  part: Interface,
  body: Body,
  seat: Seat,
  face: Face,
  index: PartIndex,
  saws: readonly HoleSaw[],
  place: Where
): readonly SeatingFinding[] {
  const where = { ...place, partId: part.partId }
  const onFace = part.on === 'face'
  const found: SeatingFinding[] = []
  switch (part.hold) {
    case 'drops-through':
      found.push({
        code: 'part-drops-through',
        severity: 'stop',
        figures: { part: body.name, openingMm: part.openingMm, rimMm: body.rimMm },
        where,
        source: 'seat-geometry',
        ...sawThat(onFace, seat, face, index, saws, (options) => (options.length === 1 ? options[0] : undefined))
      })
      break
    case 'does-not-enter': {
      const least = saws
        .filter((s) => s.diameterMm + s.oversizeMm > body.lowerMm && s.diameterMm + s.oversizeMm <= face.flatMm)
        .sort((a, b) => a.diameterMm - b.diameterMm)[0]
      found.push({
        code: 'part-does-not-enter',
        severity: 'stop',
        figures: {
          part: body.name,
          openingMm: part.openingMm,
          bottomMm: body.lowerMm,
          saw: onFace ? (least?.name ?? '') : '',
          leastMm: onFace && least ? least.diameterMm : body.lowerMm
        },
        where,
        source: 'seat-geometry',
        ...sawThat(onFace, seat, face, index, saws, (options) => options.find((o) => o.sawId === least?.id))
      })
      break
    }
    case 'stands-on-face':
      if (!part.located) {
        found.push({
          code: 'seat-not-located',
          severity: 'warn',
          figures: { part: body.name, openingMm: part.openingMm },
          where,
          source: 'seat-geometry'
        })
      }
      break
    case 'wedges':
      if (taperTangent(body) >= FRICTION_TANGENT) {
        const halfAngleDeg = (Math.atan(taperTangent(body)) * 180) / Math.PI
        found.push({
          code: 'taper-slips',
          severity: 'note',
          figures: { part: body.name, halfAngleDeg, frictionDeg: FRICTION_DEG },
          where,
          source: 'friction-angle'
        })
      }
      break
    default:
      break
  }
  const rests = part.hold === 'hangs-on-rim' || part.hold === 'stands-on-face'
  if (rests && part.landMm !== null && part.landMm < LAND_LEAST_MM) {
    found.push({
      code: 'land-thin',
      severity: 'warn',
      figures: { part: body.name, landMm: part.landMm, leastMm: LAND_LEAST_MM },
      where,
      source: 'rim-land-least',
      ...sawThat(onFace, seat, face, index, saws, (options) =>
        options.findLast((o) => o.hold === 'hangs-on-rim' && o.diameterMm < part.openingMm)
      )
    })
  }
  const past = onFace && body.rimMm > face.outsideWidthMm
  if (past) {
    found.push({
      code: 'rim-past-face',
      severity: 'warn',
      figures: {
        part: body.name,
        rimMm: body.rimMm,
        faceMm: face.outsideWidthMm,
        overMm: (body.rimMm - face.outsideWidthMm) / 2
      },
      where,
      source: 'seat-geometry'
    })
  }
  if (!past && rests && onFace && face.outsideRadiusMm === null && body.rimMm > face.flatMm) {
    found.push({
      code: 'land-past-flat',
      severity: 'warn',
      figures: { part: body.name, rimMm: body.rimMm, flatMm: face.flatMm },
      where,
      source: 'seat-geometry'
    })
  }
  return found.concat(onFace ? noSawFits(part, seat, face, index, saws, where) : [])
}

/** Named only where the hole as it is does not seat the part and no saw at hand would. */
function noSawFits(
  part: Interface,
  seat: Seat,
  face: Face,
  index: PartIndex,
  saws: readonly HoleSaw[],
  where: Where
): readonly SeatingFinding[] {
  if (part.hold !== 'drops-through' && part.hold !== 'does-not-enter') return []
  if (sawAdvice(seat, face, index, saws).options.length > 0) return []
  const range = holeRange(seat, index)
  if (!range) return []
  return [
    {
      code: 'no-saw-fits',
      severity: 'note',
      figures: { seat: seat.name, leastMm: range.least, mostMm: range.most },
      where,
      source: 'seat-geometry'
    }
  ]
}

/** The change that clears it, where the saws at hand that seat the part leave one to take. */
function sawThat(
  onFace: boolean,
  seat: Seat,
  face: Face,
  index: PartIndex,
  saws: readonly HoleSaw[],
  choose: (options: readonly SawOption[]) => SawOption | undefined
): { readonly fix?: { readonly field: string; readonly value: string } } {
  const chosen = onFace ? choose(sawAdvice(seat, face, index, saws).options) : undefined
  return chosen ? { fix: { field: `seats.${seat.id}.sawId`, value: chosen.sawId } } : {}
}

function nameOf(partId: string, seat: Seat, index: PartIndex): string {
  const item = seat.stack.find((s) => s.partId === partId)
  return (item && bodyOf(item, index)?.name) ?? partId
}
