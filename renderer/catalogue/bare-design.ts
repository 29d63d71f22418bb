import { type Design, newDesign, type Workshop } from '../../shared-model/design'
import { MM_PER_INCH } from '../../shared-model/units'

/** A design with nothing on its sill, which has round figures in the shop's units until it is measured. */
export function bareDesign({ shows }: Workshop): Design {
  const design = newDesign(crypto.randomUUID())
  if (shows.units === 'mm') return design
  const [lengthMm, depthMm, clearHeightMm] = [48 * MM_PER_INCH, 8 * MM_PER_INCH, 40 * MM_PER_INCH]
  return { ...design, sill: { ...design.sill, lengthsMm: [lengthMm], depthsMm: [depthMm], clearHeightMm } }
}
