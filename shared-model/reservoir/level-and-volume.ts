/**
 * Litres in a channel at a level, and the level at which it holds so many litres.
 *
 * Volume = bore area below the level × bore length − displacement of what stands in it. On a sill with a fall the floor
 * rises evenly away from the deepest point, so the bore area is integrated along the channel and each site has its own level.
 *
 * Levels in mm above the inside floor at the deepest point, from 0 to the inside height; litres from 0 to what the channel
 * holds there. Level → volume → level returns within 0.01 mm.
 * @source bore-volume
 */
import { failed, ok, type Result } from '../outcome'
import { wetArea } from '../profile'
import { type Litres, litres, MM3_PER_LITRE, type Mm, mm } from '../units'
import type { Basin } from './basin'
import type { ReservoirProblem } from './codes'
import { displacedBelow } from './displacement'
import { gauss } from './gauss'

/** Solution in the channel at a level, L. */
export function litresAtLevel(basin: Basin, levelMm: Mm): Result<Litres, ReservoirProblem> {
  if (!Number.isFinite(levelMm)) return failed({ code: 'not-finite', figures: { what: 'level' } })
  if (levelMm < 0 || levelMm > basin.insideHeightMm + 1e-9) {
    return failed({
      code: 'out-of-range',
      figures: { what: 'level', value: levelMm, least: 0, most: basin.insideHeightMm }
    })
  }
  return ok(litres(volumeMm3(basin, levelMm) / MM3_PER_LITRE))
}

/** Level at which the channel holds so many litres, mm. */
export function levelAtLitres(basin: Basin, amount: Litres): Result<Mm, ReservoirProblem> {
  if (!Number.isFinite(amount)) return failed({ code: 'not-finite', figures: { what: 'litres' } })
  const most = volumeMm3(basin, basin.insideHeightMm) / MM3_PER_LITRE
  if (amount < 0 || amount > most * (1 + 1e-9)) {
    return failed({ code: 'volume-outside-bore', figures: { litres: amount, least: 0, most } })
  }
  return ok(mm(levelOfVolume(basin, amount * MM3_PER_LITRE, basin.insideHeightMm)))
}

/** Solution below a level that is known to be inside the bore, mm³. */
export function volumeMm3(basin: Basin, levelMm: number): number {
  let volume = boreVolume(basin, levelMm)
  for (const stand of basin.stands) volume -= stand.count * displacedBelow(basin, stand, levelMm - stand.riseMm)
  return Math.max(0, volume)
}

/** Level in [0, highMm] at which the volume is reached, by secants kept inside a bracket; for amounts inside. */
export function levelOfVolume(basin: Basin, targetMm3: number, highMm: number): number {
  const highOver = volumeMm3(basin, highMm) - targetMm3
  if (highOver <= 0) return highMm
  if (targetMm3 <= 0) return 0
  // Close in the amount itself: near a round floor or a dry end the volume goes with a power of the level.
  const closeMm3 = 1e-7 * targetMm3
  let below = 0
  let above = highMm
  let last = highMm
  let lastOver = highOver
  let next = (highMm * targetMm3) / (highOver + targetMm3)
  for (let look = 0; look < 100 && above - below > 1e-9; look += 1) {
    const over = volumeMm3(basin, next) - targetMm3
    if (Math.abs(over) <= closeMm3) return next
    if (over > 0) above = next
    else below = next
    const secant = next - (over * (next - last)) / (over - lastOver)
    last = next
    lastOver = over
    // A secant that leaves the bracket, or comes too slowly, gives way to halving.
    next = secant > below && secant < above && look % 6 !== 5 ? secant : (below + above) / 2
  }
  return (below + above) / 2
}

/** Bore below a level, without anything standing in it, mm³. */
export function boreVolume(basin: Basin, levelMm: number): number {
  const { section, insideHeightMm, wetLengthMm } = basin
  const riseMm = Math.abs(basin.slope) * wetLengthMm
  if (riseMm < 1e-9) return wetArea(section, mm(Math.min(Math.max(levelMm, 0), insideHeightMm))) * wetLengthMm
  // Along the channel the depth goes evenly from the level down to level − rise; where the floor is dry nothing counts.
  const high = Math.min(levelMm, insideHeightMm)
  const low = Math.max(0, levelMm - riseMm)
  const area = (depthMm: number): number => wetArea(section, mm(depthMm))
  const brimful = Math.max(0, levelMm - insideHeightMm) * area(insideHeightMm)
  if (high <= low) return high <= 0 ? 0 : area(insideHeightMm) * wetLengthMm
  return (wetLengthMm / riseMm) * (gauss(low, high, area) + brimful)
}
