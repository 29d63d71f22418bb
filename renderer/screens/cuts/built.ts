import { type BuiltRack, markAsBuilt } from '../../../shared-model/cutting'
import {
  addOffcut,
  addSheet,
  type Design,
  deleteFrom,
  type Edited,
  editSheet,
  editStock,
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
 * is less by what was taken, and sheets likewise.
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
    ...sheets.flatMap((cut) => cut.offcuts.map((left) => (now: Workshop) => keepSheet(now, workshop, cut, left, from))),
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
    ...sheets.map((cut) => (now: Workshop) => takeSheet(now, cut))
  ]
  let made: Edited<Workshop> = ok(workshop)
  for (const step of steps) {
    if (!made.ok) return made
    made = step(made.value)
  }
  return made
}

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
  left: SheetCut['offcuts'][number],
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
    offer: { priceMinor: null, supplier: '', pricedOn: '', taxInside: false }
  })
}
