import type { BillLine } from './bill'
import type { BillFinding } from './codes'

/**
 * Whole days from one ISO date to another (negative when it lies ahead); null where either is no date of the Gregorian calendar.
 */
export function daysBetween(from: string, to: string): number | null {
  const [first, last] = [dayNumber(from), dayNumber(to)]
  return first === null || last === null ? null : last - first
}

/** What a line's prices have to say: too old on this day, or without a date. One finding for each offer bought. */
export function priceAgeFindings(line: BillLine, on: string, mostDays: number): readonly BillFinding[] {
  return line.packs.flatMap((pack): readonly BillFinding[] => {
    const { name, supplier, pricedOn } = pack
    const where = { partId: line.partId, field: `offers.${pack.offerId}.pricedOn` }
    const ageDays = daysBetween(pricedOn, on)
    if (ageDays === null) return [{ code: 'price-undated', severity: 'note', figures: { name, supplier }, where }]
    if (ageDays <= mostDays) return []
    return [{ code: 'price-old', severity: 'warn', figures: { name, supplier, pricedOn, ageDays, mostDays }, where }]
  })
}

/** Days since 0000-03-01: a year that starts in March ends with its leap day, so months follow one rule. */
function dayNumber(iso: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso)
  if (match === null) return null
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])]
  if (month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return null
  const shifted = month <= 2 ? year - 1 : year
  const march = (month + 9) % 12
  const leaps = Math.floor(shifted / 4) - Math.floor(shifted / 100) + Math.floor(shifted / 400)
  return shifted * 365 + leaps + Math.floor((153 * march + 2) / 5) + day
}

function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31
}
