import type { CentreField } from './centre-field'
import { FIELD_TOLERANCE_MM } from './centre-field'
import { squareBound } from './square-bound'

/**
 * Answers: how many equal circles can a sheet hold at most, whatever the layout?
 *
 * Oler: points at least 1 apart in a convex field number at most (2/√3) · area + half the perimeter + 1.
 * Narrow field (b ≤ √3/2 after scaling by the distance): sorted along the field, neighbours' heights differ by at most
 * b, so they step at least √(1 − b²) along it; hence 1 + ⌊a/√(1 − b²)⌋, and a zigzag reaches it.
 * A field lies in a square of its longer side, which holds no more than the proven optimum of that square.
 * A field cut into k equal strips holds at most k times what one strip holds; the least of all these is the bound.
 *
 * Symbols: a, b field sizes divided by the least distance; both taken larger by the field tolerance, so that no layout
 * that passes as valid can beat the bound.
 * Valid for any a, b ≥ 0; a field of negative size holds nothing.
 * @source oler-1961
 * @source strip-zigzag
 * @source square-optima
 */
export const circleBound = (field: CentreField): number => {
  const apart = field.apartMm - FIELD_TOLERANCE_MM
  const a = (field.acrossMm + FIELD_TOLERANCE_MM) / apart
  const b = (field.upMm + FIELD_TOLERANCE_MM) / apart
  if (a < 0 || b < 0) return 0
  let least = whole(a, b)
  for (let strips = 2; strips <= MOST_STRIPS; strips++) {
    least = Math.min(least, strips * whole(a / strips, b), strips * whole(a, b / strips))
  }
  return least
}

/** Beyond this many strips the floors add up to more than the whole field's bound on any sheet of the trade. */
const MOST_STRIPS = 60

const NARROW = Math.sqrt(3) / 2

const whole = (a: number, b: number): number =>
  Math.min(oler(a, b), zigzag(a, b), zigzag(b, a), squareBound(Math.max(a, b)))

const oler = (a: number, b: number): number => Math.floor((2 / Math.sqrt(3)) * a * b + a + b + 1)

const zigzag = (along: number, across: number): number =>
  across <= NARROW ? 1 + Math.floor(along / Math.sqrt(1 - across * across)) : Number.POSITIVE_INFINITY
