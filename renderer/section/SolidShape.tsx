import type { Solid } from '../../shared-model/seating'
import type { SectionScale } from './section-scale'

/** A part of a seat stack cut through its middle. */
export function SolidShape({
  solid,
  atMm,
  scale
}: {
  readonly solid: Solid
  readonly atMm: number
  readonly scale: SectionScale
}) {
  const low = solid.lowerOutsideMm / 2
  const high = solid.upperOutsideMm / 2
  const corners = [
    [atMm - high, solid.toMm],
    [atMm + high, solid.toMm],
    [atMm + low, solid.fromMm],
    [atMm - low, solid.fromMm]
  ] as const
  return <polygon className="pen-part" points={corners.map(([x, y]) => `${scale.x(x)},${scale.y(y)}`).join(' ')} />
}
