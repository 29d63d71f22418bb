import type { Where } from '../outcome'
import { pipeStrip, saddleGap, sawDepthOnPipe } from '../profile'
import { mm } from '../units'
import { bodyOf } from './body'
import type { SeatingFinding } from './codes'
import type { Face } from './face'
import type { SeatFit } from './fit'
import { PIPE_STRIP_LEAST_MM } from './limits'
import type { PartIndex } from './part-index'
import type { Seat } from './seat'

/** What a hole on a round pipe brings: a gap under the rim, a deep cut for the saw, a thin strip left. */
export function pipeFindings(
  seat: Seat,
  fit: SeatFit,
  face: Face,
  outsideRadiusMm: number,
  index: PartIndex,
  where: Where
): readonly SeatingFinding[] {
  const found: SeatingFinding[] = []
  const first = fit.interfaces[0]
  const item = seat.stack[0]
  const body = item && bodyOf(item, index)
  const gap = saddleGap(mm(outsideRadiusMm), mm(fit.holeMm))
  if (first && body && gap.ok && (first.hold === 'hangs-on-rim' || first.hold === 'stands-on-face')) {
    const atRim = saddleGap(
      mm(outsideRadiusMm),
      mm(Math.min(body.ring ? body.rimMm : Math.max(body.rimMm, body.lowerMm), 2 * outsideRadiusMm))
    )
    found.push({
      code: 'saddle-gap',
      severity: 'note',
      figures: { gapMm: gap.value, atRimMm: atRim.ok ? atRim.value : outsideRadiusMm },
      where,
      source: 'geometry'
    })
  }
  const saw = index.saws.get(seat.sawId)
  const need = sawDepthOnPipe(mm(outsideRadiusMm), mm(face.wallMm), mm(fit.holeMm))
  if (saw && need.ok && need.value > saw.depthMm) {
    found.push({
      code: 'saw-too-shallow',
      severity: 'stop',
      figures: { saw: saw.name, needMm: need.value, depthMm: saw.depthMm },
      where,
      source: 'geometry'
    })
  }
  const stripMm = pipeStrip(mm(outsideRadiusMm), mm(fit.holeMm))
  if (stripMm < PIPE_STRIP_LEAST_MM) {
    found.push({
      code: 'pipe-strip-thin',
      severity: 'warn',
      figures: { stripMm, leastMm: PIPE_STRIP_LEAST_MM },
      where,
      source: 'pipe-strip-least'
    })
  }
  return found
}
