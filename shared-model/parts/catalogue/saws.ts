import type { Evidence } from '../../sources'
import { MM_PER_INCH } from '../../units'
import type { HoleSaw } from '../part'
import { evidenceFor, PRACTICE, printedIn } from './evidence'

/** Inch sizes as sixteenths. The published list runs to 2-9/16 in; larger sizes are common practice. */
const PUBLISHED_SIXTEENTHS = [
  9, 10, 11, 12, 13, 14, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 32, 33, 34, 36, 37, 38, 40, 41
]
const LARGER_SIXTEENTHS = [42, 44, 46, 48, 50, 52, 54, 56, 58, 60, 62, 64, 66, 68, 70, 72, 76, 80, 88, 96]
const METRIC_MM = [
  16, 20, 22, 25, 27, 30, 32, 35, 38, 40, 43, 45, 48, 50, 52, 54, 55, 57, 60, 64, 65, 68, 70, 73, 75, 76, 80, 83, 85,
  89, 90, 92, 95, 98, 100, 102, 105, 108, 110, 114, 120, 127, 152
]

/** Tooth kerf from memory (0.075 in); cutting depth from a listing. */
const KERF_MM = 0.075 * MM_PER_INCH
const DEPTH_MM = 1.875 * MM_PER_INCH

export const SAWS: readonly HoleSaw[] = [
  ...PUBLISHED_SIXTEENTHS.map((steps) =>
    inchSaw(steps, printedIn('hole-saw-definitions', `${inchText(steps)} in; size list as published up to 2-9/16 in`))
  ),
  ...LARGER_SIXTEENTHS.map((steps) => inchSaw(steps, PRACTICE)),
  ...METRIC_MM.map((size) => saw(`saw-mm-${size}`, `Hole saw, ${size} mm`, size, PRACTICE))
]

function inchSaw(steps: number, evidence: Evidence): HoleSaw {
  const text = inchText(steps)
  return saw(`saw-in-${text.replace('/', '-')}`, `Hole saw, ${text} in`, (steps * MM_PER_INCH) / 16, evidence)
}

function saw(id: string, name: string, diameterMm: number, evidence: Evidence): HoleSaw {
  return {
    id,
    name,
    diameterMm,
    kerfMm: KERF_MM,
    depthMm: DEPTH_MM,
    oversizeMm: 0,
    evidence: evidenceFor(['kerfMm', 'oversizeMm'], {
      diameterMm: evidence,
      depthMm: printedIn('hole-saw-listing', '1.875 in'),
      oversizeMm: printedIn('saw-oversize', 'often marginally larger than nominal: measure it')
    })
  }
}

/** `2-1/8` from 34 sixteenths. */
function inchText(steps: number): string {
  const whole = Math.floor(steps / 16)
  let [top, bottom] = [steps - whole * 16, 16]
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2]
  if (top === 0) return `${whole}`
  return whole === 0 ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`
}
