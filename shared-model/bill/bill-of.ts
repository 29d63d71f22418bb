import { failed, ok, type Result } from '../outcome'
import type { Bill, BillLine } from './bill'
import type { BillInput, BillShop } from './bill-input'
import { MOST_CEMENT_OUTSIDE_MM } from './cement-joints'
import { billProblem } from './check-bill'
import type { BillFinding, BillProblem } from './codes'
import { needsOf } from './needs-of'
import { packLine } from './pack-line'
import { priceAgeFindings } from './price-age'
import { oldest, sheetLine, stockLine } from './stock-line'

/**
 * The bill of a batch: what it needs, what to buy, what each line costs and what of it the batch uses. A missing price makes the
 * line and the totals null, never zero.
 */
export function billOf(
  input: BillInput,
  shop: BillShop
): Result<{ readonly bill: Bill; readonly findings: readonly BillFinding[] }, BillProblem> {
  const problem = billProblem(input, shop)
  if (problem !== null) return failed(problem)
  const lines: BillLine[] = []
  let shelf = shop.shelf
  for (const need of needsOf(input)) {
    if (need.need === 'stock') lines.push(stockLine(need, input, shop))
    else if (need.need === 'sheet') lines.push(sheetLine(need, input, shop))
    else {
      const line = packLine(need, shelf, shop)
      if (!line.ok) return line
      lines.push(line.value.line)
      shelf = line.value.shelf
    }
  }
  const bill: Bill = {
    currency: shop.currency,
    quantity: input.quantity,
    lines,
    totalMinor: sumOrNull(lines.map((line) => line.totalMinor)),
    usedMinor: sumOrNull(lines.map((line) => line.usedMinor)),
    restMinor: sumOrNull(lines.map((line) => line.restMinor)),
    oldestPriceOn: oldest(lines.map((line) => line.oldestPriceOn)),
    missing: missingOf(input, lines)
  }
  return ok({
    bill,
    findings: [
      ...missingFindings(bill, input, shop),
      ...priceAgeFindings(bill.lines, shop.on, shop.priceAgeDays),
      ...cementFindings(input)
    ]
  })
}

const sumOrNull = (amounts: readonly (number | null)[]): number | null =>
  amounts.reduce<number | null>((sum, amount) => (sum === null || amount === null ? null : sum + amount), 0)

function missingOf(input: BillInput, lines: readonly BillLine[]): Bill['missing'] {
  const unpriced = lines
    .filter((line) => line.totalMinor === null)
    .map(({ need, partId, name }) => ({ need, partId, name }))
  // Collars that no sheet on offer holds are missing without a line of their own.
  const uncut = (input.rings?.uncut ?? []).filter((need) => need.count > 0)
  const nameOf = (id: string) =>
    [...(input.rings?.needs ?? []), ...(input.rings?.plates ?? [])].find((n) => n.id === id)?.name
  return [
    ...unpriced,
    ...uncut.map((n) => ({ need: 'sheet' as const, partId: n.needId, name: nameOf(n.needId) ?? n.needId }))
  ]
}

function missingFindings(bill: Bill, input: BillInput, shop: BillShop): readonly BillFinding[] {
  // Stock whose pieces fit no bar has a stop of its own in the cut plan: its price is not what is missing.
  const short = new Set(input.cuts.filter((cut) => cut.uncut.length > 0).map((cut) => cut.profileId))
  const missing = bill.missing.filter((thing) => thing.need !== 'stock' || !short.has(thing.partId))
  if (missing.length === 0) return []
  const offers = [...shop.stock, ...shop.sheets, ...shop.offers]
  // A shop without any price has not begun to price: said once, as a note.
  if (offers.every((one) => one.offer.priceMinor === null)) {
    const where = { field: 'offers' }
    return [{ code: 'prices-none', severity: 'note', figures: { lines: missing.length }, where }]
  }
  return missing.map((thing) => ({
    code: 'price-missing',
    severity: 'stop',
    figures: thing,
    where: {
      partId: thing.partId,
      field: thing.need === 'stock' || thing.need === 'sheet' ? `${thing.need}` : 'offers'
    }
  }))
}

const cementFindings = (input: BillInput): readonly BillFinding[] =>
  input.channels.flatMap((channel) =>
    channel.joints
      .filter((joint) => joint.method === 'solvent-cement' && joint.outsideMm > MOST_CEMENT_OUTSIDE_MM + 0.5)
      .map((joint) => ({
        code: 'cement-size-unlisted',
        severity: 'note',
        figures: { outsideMm: joint.outsideMm, mostMm: MOST_CEMENT_OUTSIDE_MM },
        where: { channelId: channel.channelId },
        source: 'cement-joints'
      }))
  )
