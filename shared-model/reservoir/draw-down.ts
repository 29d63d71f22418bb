/**
 * Level, gap and litres left by day.
 *
 * Litres on a day = start − day × plants' daily use. Ends on the first day at or under the end share of the start volume.
 * Refill day: the last day on which filling up again brings the solution no more than 20 mm up on roots that were in the air.
 * Litres, mm, mL to the day; days are whole.
 * @source rise-over-air-roots
 */
import { MM3_PER_LITRE } from '../units'
import { type CupAt, gapRange } from './air-gap'
import type { Basin } from './basin'
import type { DrawDown, DrawDownDay } from './channel-water'
import { levelOfVolume, volumeMm3 } from './level-and-volume'
import { DRAW_DOWN_DAYS, RISE_MOST_MM } from './limits'

export function drawDown(
  basin: Basin,
  cups: readonly CupAt[],
  start: { readonly levelMm: number; readonly litres: number; readonly dailyMl: number; readonly endShare: number }
): DrawDown {
  const days: DrawDownDay[] = []
  const endLitres = start.endShare * start.litres
  const sinks = sinking(basin, start.levelMm, start.litres * MM3_PER_LITRE)
  let levelMm = start.levelMm
  let endDay: number | null = null
  for (let day = 0; day <= DRAW_DOWN_DAYS; day += 1) {
    const litres = Math.max(0, start.litres - (day * start.dailyMl) / 1000)
    if (day > 0) levelMm = sinks(litres * MM3_PER_LITRE)
    days.push({ day, litres, levelMm, gapMm: gapRange(cups, levelMm)?.leastMm ?? 0 })
    if (litres <= endLitres + 1e-9) {
      endDay = day
      break
    }
  }
  return { dailyMl: start.dailyMl, days, endDay, refillDay: refillDay(days, endDay) }
}

/** How close a day's level is found, mm: a tenth of the finest mark. */
const CLOSE_MM = 0.001

/**
 * The level as the volume sinks from step to step. The surface changes little from one day to the next, so the last day's
 * surface says where to look, and one look corrects it; where that is not close enough the whole search is made.
 */
function sinking(basin: Basin, startMm: number, startMm3: number): (volume: number) => number {
  let level = startMm
  let volume = startMm3
  let surface = startMm > 0 ? startMm3 / startMm : 1
  return (target) => {
    let guess = level - (volume - target) / surface
    for (let look = 0; look < 3; look += 1) {
      if (!(guess >= 0 && guess <= level)) break
      const found = volumeMm3(basin, guess)
      const nearer = level > guess ? (volume - found) / (level - guess) : surface
      if (!(nearer > 0)) break
      surface = nearer
      level = guess
      volume = found
      const offMm = (found - target) / surface
      guess -= offMm
      if (Math.abs(offMm) < CLOSE_MM * 20) {
        level = Math.max(0, guess)
        volume = target
        return level
      }
    }
    level = levelOfVolume(basin, target, startMm)
    volume = target
    return level
  }
}

function refillDay(days: readonly DrawDownDay[], endDay: number | null): number | null {
  const first = days[0]
  if (!first) return null
  let last: number | null = null
  for (const { day, gapMm } of days) {
    if (day > 0 && (gapMm <= 0 || gapMm - first.gapMm <= RISE_MOST_MM)) last = day
  }
  return last ?? endDay
}

/** How far solution comes up against a cup, mm, and whether that drowns roots: the cup must have hung in the air before. */
export function riseCheck(
  oldGapMm: number,
  newGapMm: number
): { readonly riseMm: number; readonly drowns: boolean; readonly mostMm: number } {
  const riseMm = oldGapMm - newGapMm
  return { riseMm, drowns: oldGapMm > 0 && riseMm > RISE_MOST_MM, mostMm: RISE_MOST_MM }
}
