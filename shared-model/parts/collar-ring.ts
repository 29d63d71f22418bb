/**
 * The ring that two concentric hole saws leave, and the disc that falls out of it.
 *
 *     outside = A - 2 kA       hole = B       core = B - 2 kB
 *
 * Symbols: A the larger saw's diameter and kA its kerf, B and kB the smaller one's, in mm; a saw's diameter is measured over
 * its tooth set and is the hole that it leaves, with any measured oversize of the inner saw's hole added. Valid where the
 * hole is smaller than the ring's outside, else a problem with both bounds.
 *
 * @source hole-saw-definitions
 */
import { failed, ok, type Result } from '../outcome'
import type { PartsProblem } from './codes'
import type { Collar, HoleSaw } from './part'

export interface CollarRing {
  readonly outsideMm: number
  readonly holeMm: number
  readonly coreMm: number
  readonly thicknessMm: number
}

export function collarRing(collar: Collar, outerSaw: HoleSaw, innerSaw: HoleSaw): Result<CollarRing, PartsProblem> {
  const outsideMm = outerSaw.diameterMm - 2 * outerSaw.kerfMm
  const holeMm = innerSaw.diameterMm + innerSaw.oversizeMm
  if (!(holeMm > 0 && holeMm < outsideMm)) {
    const valueMm = Number.isFinite(holeMm) ? holeMm : -1
    const figures = { valueMm, leastMm: 0, mostMm: Math.max(0, Number.isFinite(outsideMm) ? outsideMm : 0) }
    return failed({ code: 'collar-hole-outside-ring', figures, where: { partId: collar.id, field: 'innerSawId' } })
  }
  const coreMm = Math.max(0, innerSaw.diameterMm - 2 * innerSaw.kerfMm)
  return ok({ outsideMm, holeMm, coreMm, thicknessMm: collar.thicknessMm })
}
