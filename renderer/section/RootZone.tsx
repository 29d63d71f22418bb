import type { SeatFit } from '../../shared-model/seating'
import type { SectionScale } from './section-scale'

/** Where roots hang: from the cup's underside down to the channel's floor. */
export function RootZone({
  seat,
  atMm,
  scale
}: {
  readonly seat: SeatFit
  readonly atMm: number
  readonly scale: SectionScale
}) {
  const bottom = seat.solids.find((solid) => Math.abs(solid.fromMm - seat.undersideMm) < 0.01)
  const half = (bottom?.lowerOutsideMm ?? seat.holeMm) / 2
  if (seat.undersideMm <= 0) return null
  return (
    <rect
      className="pen-root"
      x={scale.x(atMm - half)}
      y={scale.y(seat.undersideMm)}
      width={2 * half * scale.pxPerMm}
      height={seat.undersideMm * scale.pxPerMm}
    />
  )
}
