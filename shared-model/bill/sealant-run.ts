import { failed, ok, type Result } from '../outcome'
import { type Mm, type Mm3, mm, mm3 } from '../units'
import type { Bead } from './bill-input'
import type { BillProblem } from './codes'

/**
 * How far one cartridge of sealant goes.
 *
 * run = V / (w * d): V volume of the cartridge in mm3, w width and d depth of the bead in mm. Bead sides 0.5 to 50 mm, cartridge
 * 1 000 to 10 000 000 mm3 (1 mL to 10 L). Nothing is taken off for waste.
 *
 * @source sealant-yield
 */
export function sealantRun(bead: Bead, cartridgeMm3: Mm3): Result<Mm, BillProblem> {
  const sides = beadProblem(bead)
  if (sides !== null) return failed(sides)
  if (!(cartridgeMm3 >= 1000 && cartridgeMm3 <= 1e7)) return failed(outOfRange('cartridgeMm3', cartridgeMm3, 1000, 1e7))
  return ok(mm(cartridgeMm3 / (bead.widthMm * bead.depthMm)))
}

/**
 * Sealant for a joint of a given wetted length: length * w * d, the same equation read the other way.
 *
 * @source sealant-yield
 */
export function sealantVolume(bead: Bead, lengthMm: Mm): Result<Mm3, BillProblem> {
  const sides = beadProblem(bead)
  if (sides !== null) return failed(sides)
  if (!(lengthMm >= 0 && lengthMm <= MOST_LENGTH_MM)) return failed(outOfRange('lengthMm', lengthMm, 0, MOST_LENGTH_MM))
  return ok(mm3(lengthMm * bead.widthMm * bead.depthMm))
}

const LEAST_SIDE_MM = 0.5
const MOST_SIDE_MM = 50
const MOST_LENGTH_MM = 1e9

function beadProblem(bead: Bead): BillProblem | null {
  for (const field of ['widthMm', 'depthMm'] as const) {
    const side = bead[field]
    if (!(side >= LEAST_SIDE_MM && side <= MOST_SIDE_MM))
      return outOfRange(`bead.${field}`, side, LEAST_SIDE_MM, MOST_SIDE_MM)
  }
  return null
}

function outOfRange(what: string, value: number, least: number, most: number): BillProblem {
  const where = { field: what }
  if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what }, where }
  return { code: 'out-of-range', figures: { what, value, least, most }, where }
}
