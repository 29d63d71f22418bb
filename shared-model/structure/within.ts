import type { StructureProblem } from './codes'

/** A problem naming both bounds when a value is not a number within them. */
export function within(
  what: string,
  value: number,
  least: number,
  most: number,
  field?: string
): StructureProblem | undefined {
  const where = field === undefined ? {} : { where: { field } }
  if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what }, ...where }
  if (value < least || value > most) return { code: 'out-of-range', figures: { what, value, least, most }, ...where }
  return undefined
}
