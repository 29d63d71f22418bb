import { type Mm, mm, type Nm, nm } from './quantity'

/** What a shop reads off its rule: structurally the part of the workshop's `shows` that lengths need. */
export interface LengthShows {
  readonly units: 'in' | 'mm'
  readonly inchGraduation: 16 | 32
  readonly mmGraduation: 0.5 | 1
  readonly decimalMark: '.' | ','
}

export const NM_PER_MM = 1_000_000
const NM_PER_INCH = 25_400_000

/** The nearest whole nanometre: the exact length that decides whether a piece fits. Throws on a length that is not finite. */
export function exactNm(length: Mm): Nm {
  const exact = Math.round(length * NM_PER_MM)
  if (!Number.isSafeInteger(exact)) throw new RangeError(`length is not one: ${length}`)
  return nm(exact === 0 ? 0 : exact)
}

/** The shop's graduation in whole nanometres: 1/16 in = 1 587 500, 1/32 in = 793 750, 0.5 mm = 500 000. */
export const graduationNm = (shows: LengthShows): Nm =>
  nm(shows.units === 'in' ? NM_PER_INCH / shows.inchGraduation : NM_PER_MM * shows.mmGraduation)

export type GraduationWay = 'down' | 'up' | 'nearest'

/** How many graduations a length is, down, up or to the nearest one with exact midpoints to the even graduation. */
export function graduations(length: Mm, graduation: Nm, way: GraduationWay): number {
  const exact = exactNm(length)
  const below = Math.floor(exact / graduation)
  const rest = exact - below * graduation
  if (rest === 0 || way === 'down') return below
  if (way === 'up') return below + 1
  if (2 * rest !== graduation) return 2 * rest < graduation ? below : below + 1
  return below % 2 === 0 ? below : below + 1
}

/** A length set on the graduation, worked in whole nanometres: the figure that is planned, printed and sawn. */
export const setOnGraduation = (length: Mm, graduation: Nm, way: GraduationWay): Mm =>
  mm((graduations(length, graduation, way) * graduation) / NM_PER_MM)
