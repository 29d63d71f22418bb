/**
 * Centre of the solution's mass in a channel, along it from the datum end and above its inside floor, mm.
 *
 * Height of the centre = level − (∫ wet area over height ÷ wet area at the level), from the first moment by parts; along a
 * channel with a fall by the depth at each place. What stands in the solution is left out: it moves the centre by less than
 * a drawing shows.
 * @source bore-volume
 */
import { wetArea } from '../profile'
import { mm } from '../units'
import { type Basin, riseAt } from './basin'
import { gauss } from './gauss'

export function solutionCentre(basin: Basin, levelMm: number): { readonly alongMm: number; readonly heightMm: number } {
  const middleMm = basin.wetFromMm + basin.wetLengthMm / 2
  const depthAt = (atMm: number): number => Math.min(basin.insideHeightMm, Math.max(0, levelMm - riseAt(basin, atMm)))
  const area = (depthMm: number): number => wetArea(basin.section, mm(depthMm))
  const depthMm = depthAt(middleMm)
  const areaMm2 = area(depthMm)
  const heightMm = areaMm2 > 0 ? depthMm - gauss(0, depthMm, area) / areaMm2 : 0
  if (Math.abs(basin.slope) < 1e-9) return { alongMm: middleMm, heightMm }
  const endMm = basin.wetFromMm + basin.wetLengthMm
  const volume = gauss(basin.wetFromMm, endMm, (at) => area(depthAt(at)))
  const moment = gauss(basin.wetFromMm, endMm, (at) => at * area(depthAt(at)))
  return { alongMm: volume > 0 ? moment / volume : middleMm, heightMm }
}
