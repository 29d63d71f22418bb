import type { BillLine } from './bill'
import type { BillFinding } from './codes'

/**
 * Whole days from one ISO date to another (negative when it lies ahead); null where either is no date of the Gregorian calendar.
 */
export function daysBetween(from: string, to: string): number | null {
  const [first, last] = [dayNumber(from), dayNumber(to)]
  return first === null || last === null ? null : last - first
}

/**
 * What the prices have to say on this day: one finding for those too old, led by the oldest, and one for those without a
 * date. Each line of the bill carries its own oldest date.
 */
export function priceAgeFindings(lines: readonly BillLine[], on: string, mostDays: number): readonly BillFinding[] {
  const bought = lines.flatMap((line) =>
    line.packs.map((pack) => ({ ...pack, partId: line.partId, ageDays: daysBetween(pack.pricedOn, on) }))
  )
  const old = bought
    .filter((pack): pack is typeof pack & { ageDays: number } => pack.ageDays !== null && pack.ageDays > mostDays)
    .toSorted((a, b) => b.ageDays - a.ageDays)
  const undated = bought.filter((pack) => pack.ageDays === null)
  const placed = ({ partId, offerId }: { readonly partId: string; readonly offerId: string }) => ({
    partId,
    field: `offers.${offerId}.pricedOn`
  })
  const findings: BillFinding[] = []
  const [oldest] = old
  if (oldest !== undefined) {
    const { name, supplier, pricedOn, ageDays } = oldest
    const figures = { name, supplier, pricedOn, ageDays, mostDays, prices: old.length }
    findings.push({ code: 'price-old', severity: 'warn', figures, where: placed(oldest) })
  }
  const [first] = undated
  if (first !== undefined) {
    const figures = { name: first.name, supplier: first.supplier, prices: undated.length }
    findings.push({ code: 'price-undated', severity: 'note', figures, where: placed(first) })
  }
  return findings
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
