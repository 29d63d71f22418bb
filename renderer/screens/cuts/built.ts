import { type Bill, keptSheetWorth, putOnShelf } from '../../../shared-model/bill'
import { type BuiltRack, markAsBuilt } from '../../../shared-model/cutting'
import {
  addOffcut,
  addSheet,
  type Design,
  deleteFrom,
  type Edited,
  editSheet,
  editStock,
  setShelf,
  type Workshop
} from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import type { Plan } from '../../../shared-model/plan'
import type { SheetCut } from '../../../shared-model/rings'

/** What building it does to the shelves: what comes off and what goes on. */
export interface Built {
  readonly bars: Pick<BuiltRack, 'used' | 'added' | 'bars'>
  /** Sheets that something is cut from. */
  readonly sheets: readonly SheetCut[]
}

export function builtOf(plan: Plan, design: Design, workshop: Workshop): Built {
  const { used, added, bars } = markAsBuilt({
    rack: workshop.rack,
    cuts: plan.cuts,
    from: design.title,
    on: plan.on
  })
  const sheets = plan.rings.sheets.filter(({ circles, plates }) => circles.length + plates.length > 0)
  return { bars: { used, added, bars }, sheets }
}

/**
 * The workshop after the build: used offcuts are off the rack, kept ones on it with where and when they came from, counted stock
 * is less by what was taken, and sheets likewise. What packs left over is on the shelf, each with its worth, for the next batch.
 */
export function afterBuilt(plan: Plan, design: Design, workshop: Workshop): Edited<Workshop> {
  const { bars, sheets } = builtOf(plan, design, workshop)
  const from = `${design.title}, ${plan.on}`
  // What goes on comes first, so that it takes no id of what comes off: labels stick to the old ones. The rack gives its own
  // ids, since a title may hold what an id may not.
  const steps: readonly ((now: Workshop) => Edited<Workshop>)[] = [
    ...bars.added.map(
      ({ id: _, ...offcut }) =>
        (now: Workshop) =>
          addOffcut(now, offcut)
    ),
    ...sheets.flatMap((cut) => {
      const worths = keptWorths(cut, workshop)
      return cut.offcuts.map(
        (left, at) => (now: Workshop) => keepSheet(now, workshop, cut, { ...left, worthMinor: worths[at] ?? 0 }, from)
      )
    }),
    ...bars.used.map(
      ({ id }) =>
        (now: Workshop) =>
          deleteFrom(now, 'rack', id)
    ),
    ...bars.bars.map(
      ({ stockId, count }) =>
        (now: Workshop) =>
          takeBars(now, stockId, count)
    ),
    ...sheets.map((cut) => (now: Workshop) => takeSheet(now, cut)),
    (now) => setShelf(now, putOnShelf(now.shelf, leftOf(plan.bill, workshop)))
  ]
  let made: Edited<Workshop> = ok(workshop)
  for (const step of steps) {
    if (!made.ok) return made
    made = step(made.value)
  }
  return made
}

/** A rest that the batch has paid for is worth nothing to the next one. */
function leftOf(bill: Bill, { pricing }: Workshop): Bill {
  if (pricing.chargePackRestTo === 'nobody') return bill
  return { ...bill, lines: bill.lines.map((line) => ({ ...line, restMinor: 0 })) }
}

const keptWorths = (cut: SheetCut, { sheets, sheetSetup, pricing }: Workshop): readonly number[] =>
  keptSheetWorth(cut, {
    sheets,
    sheetWorthPercent: sheetSetup.keptWorthPercent ?? 0,
    ...(pricing.buyingTax === undefined ? {} : { buyingTax: pricing.buyingTax })
  })

function takeBars(now: Workshop, stockId: string, count: number): Edited<Workshop> {
  const bar = now.stock.find(({ id }) => id === stockId)
  if (bar === undefined || bar.count === null) return ok(now)
  return editStock(now, stockId, { count: Math.max(0, bar.count - count) })
}

function takeSheet(now: Workshop, { sheetId, isOffcut }: SheetCut): Edited<Workshop> {
  const sheet = now.sheets.find(({ id }) => id === sheetId)
  if (sheet === undefined) return ok(now)
  if (isOffcut && (sheet.count ?? 1) <= 1) return deleteFrom(now, 'sheets', sheetId)
  return sheet.count === null ? ok(now) : editSheet(now, sheetId, { count: Math.max(0, sheet.count - 1) })
}

/** Smaller than this a sheet cannot be entered. */
const LEAST_SIDE_MM = 10
const MOST_NAME = 200

function keepSheet(
  now: Workshop,
  before: Workshop,
  { sheetId }: SheetCut,
  left: SheetCut['offcuts'][number] & { readonly worthMinor: number },
  from: string
): Edited<Workshop> {
  const sheet = before.sheets.find(({ id }) => id === sheetId)
  if (sheet === undefined || Math.min(left.widthMm, left.heightMm) < LEAST_SIDE_MM) return ok(now)
  const { id: _, ...kept } = sheet
  return addSheet(now, {
    ...kept,
    name: `${sheet.name.split(' · ')[0] ?? ''} · ${from}`.slice(0, MOST_NAME),
    widthMm: left.widthMm,
    heightMm: left.heightMm,
    count: 1,
    isOffcut: true,
    offer: { priceMinor: left.worthMinor > 0 ? left.worthMinor : null, supplier: '', pricedOn: '', taxInside: false }
  })
}
