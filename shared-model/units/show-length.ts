import { graduationNm, graduations, type LengthShows, NM_PER_MM } from './graduation'
import type { Mm } from './quantity'

export interface ShowLengthOptions {
  /** With `in`, `mm` behind the figure; on by default. */
  readonly mark?: boolean
  /** Feet and inches from 2 ft on; off by default. */
  readonly feet?: boolean
}

/**
 * A length as the shop reads it, rounded on its own from the exact value to the graduation, exact midpoints to the even one:
 * `7 1/2 in`, `2 ft 3 1/2 in`, `190.5 mm`. What is printed here is read back by `parseLength`. Throws on a length that is not finite.
 */
export function showLength(length: Mm, shows: LengthShows, options: ShowLengthOptions = {}): string {
  const steps = graduations(length, graduationNm(shows), 'nearest')
  const sign = steps < 0 ? '-' : ''
  const size = Math.abs(steps)
  if (shows.units === 'mm') return `${sign}${showMm(size, shows)}${options.mark === false ? '' : ' mm'}`
  const stepsPerFoot = 12 * shows.inchGraduation
  if (options.feet !== true || size < 2 * stepsPerFoot) {
    return `${sign}${showInches(size, shows.inchGraduation)}${options.mark === false ? '' : ' in'}`
  }
  const feet = Math.floor(size / stepsPerFoot)
  const rest = size - feet * stepsPerFoot
  return `${sign}${feet} ft${rest === 0 ? '' : ` ${showInches(rest, shows.inchGraduation)} in`}`
}

function showMm(steps: number, shows: LengthShows): string {
  const tenths = Math.round((steps * graduationNm({ ...shows, units: 'mm' })) / (NM_PER_MM / 10))
  const whole = Math.floor(tenths / 10)
  return tenths % 10 === 0 ? `${whole}` : `${whole}${shows.decimalMark}${tenths % 10}`
}

function showInches(steps: number, denominator: number): string {
  const whole = Math.floor(steps / denominator)
  let [top, bottom] = [steps - whole * denominator, denominator]
  if (top === 0) return `${whole}`
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2]
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`
}
