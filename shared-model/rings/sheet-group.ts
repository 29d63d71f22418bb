import type { Budget } from '../outcome'
import type { EqualLayout } from './band-fill'
import { latticeLayout } from './band-fill'
import type { Choice, ChoiceKind } from './choose-sheets'
import { chooseSheets } from './choose-sheets'
import { packField } from './pack-circles'
import type { PlateNeed, RingNeed, RingPlan, SheetCut } from './ring-plan'
import type { Area, Filled, Parts } from './round-stock'
import { nothingLeft } from './round-stock'
import type { SheetSetup, SheetStock } from './sheet'
import { sheetBound } from './sheet-bound'
import { sheetOffcuts } from './sheet-offcuts'

/** Parts of one material and thickness, less those that cores serve. */
export interface SheetGroup {
  readonly needs: readonly RingNeed[]
  readonly plates: readonly PlateNeed[]
  readonly sheets: readonly SheetStock[]
  readonly setup: SheetSetup
  readonly priced: boolean
  readonly budget: Budget
  /** Sheets marked before these. */
  readonly marked: number
}

export type SheetGroupPlan = Pick<RingPlan, 'sheets' | 'uncut' | 'leastSheets' | 'value' | 'lowerBound' | 'proven'>

export const planSheetGroup = (group: SheetGroup): SheetGroupPlan => {
  const parts = partsOf(group)
  const kinds = group.sheets.map((sheet): ChoiceKind => kindOf(sheet, group))
  const bound = sheetBound(kinds, parts)
  const lowerBound = bound ?? 0
  const quick = chooseSheets(kinds, parts, latticeLayout, lowerBound, QUICK_ATTEMPTS)
  const choice =
    isDone(quick, lowerBound) || group.budget.work <= 0 ? quick : deeper(group, kinds, parts, quick, lowerBound)
  const least = sheetBound(
    kinds.map((kind) => ({ ...kind, cost: 1 })),
    parts
  )
  const uncut = [...choice.left.rounds, ...choice.left.plates].map(({ needId, count }) => ({ needId, count }))
  const cut = cutsOf(group)
  return {
    sheets: choice.sheets.map(({ kind, filled }, i) => ({
      mark: `S${group.marked + i + 1}`,
      ...cut(group.sheets[kind] as SheetStock, filled)
    })),
    uncut,
    leastSheets: Math.min(least ?? choice.sheets.length, choice.sheets.length),
    value: choice.cost,
    lowerBound: uncut.length === 0 ? Math.min(lowerBound, choice.cost) : 0,
    proven: isDone(choice, lowerBound)
  }
}

const QUICK_ATTEMPTS = 4
const DEEP_ATTEMPTS = 40

const isDone = (choice: Choice, lowerBound: number): boolean =>
  nothingLeft(choice.left) && choice.cost <= lowerBound + 1e-9

/** Free searches for each size on each sheet kind, then the choice again with what they found. */
const deeper = (
  group: SheetGroup,
  kinds: readonly ChoiceKind[],
  parts: Parts,
  quick: Choice,
  lowerBound: number
): Choice => {
  const searches = Math.max(1, kinds.length * parts.rounds.length)
  const found = new Map<string, readonly (readonly [number, number])[]>()
  let left = group.budget.work
  for (const { acrossMm } of parts.rounds) {
    for (const { field } of kinds) {
      const key = keyOf(acrossMm, field.widthMm, field.heightMm)
      if (found.has(key)) continue
      const centres = packField(
        { acrossMm: field.widthMm - acrossMm, upMm: field.heightMm - acrossMm, apartMm: acrossMm, marginMm: 0 },
        { work: Math.min(left, group.budget.work / searches), stop: group.budget.stop }
      )
      left -= centres.work
      found.set(
        key,
        centres.centres.map(([x, y]) => [x + acrossMm / 2, y + acrossMm / 2] as const)
      )
    }
  }
  const layout: EqualLayout = (acrossMm, widthMm, heightMm) =>
    found.get(keyOf(acrossMm, widthMm, heightMm)) ?? latticeLayout(acrossMm, widthMm, heightMm)
  const deep = chooseSheets(kinds, parts, layout, lowerBound, DEEP_ATTEMPTS)
  const isBetter = nothingLeft(deep.left) !== nothingLeft(quick.left) ? nothingLeft(deep.left) : deep.cost < quick.cost
  return isBetter ? deep : quick
}

const keyOf = (acrossMm: number, widthMm: number, heightMm: number): string => `${acrossMm} ${widthMm} ${heightMm}`

const partsOf = ({ needs, plates, setup }: SheetGroup): Parts => ({
  rounds: needs
    .filter(({ count }) => count > 0)
    .map(({ id, cutDiameterMm, count }) => ({ needId: id, acrossMm: cutDiameterMm + setup.webMm, count })),
  plates: plates
    .filter(({ count }) => count > 0)
    .map(({ id, widthMm, heightMm, count }) => ({
      needId: id,
      widthMm: widthMm + setup.webMm,
      heightMm: heightMm + setup.webMm,
      count
    }))
})

const kindOf = (sheet: SheetStock, { setup, priced }: SheetGroup): ChoiceKind => ({
  cost: priced ? (sheet.offer.priceMinor ?? 0) : sheet.widthMm * sheet.heightMm,
  count: sheet.count,
  isOffcut: sheet.isOffcut,
  field: {
    xMm: 0,
    yMm: 0,
    widthMm: Math.max(0, sheet.widthMm - 2 * setup.edgeMm + setup.webMm),
    heightMm: Math.max(0, sheet.heightMm - 2 * setup.edgeMm + setup.webMm)
  }
})

type Unmarked = Omit<SheetCut, 'mark'>

/** Sheets of one kind that are filled alike are cut alike: worked out once. */
const cutsOf = (group: SheetGroup): ((sheet: SheetStock, filled: Filled) => Unmarked) => {
  const bySheet = new Map<SheetStock, Map<Filled, Unmarked>>()
  return (sheet, filled) => {
    const known = bySheet.get(sheet) ?? new Map<Filled, Unmarked>()
    bySheet.set(sheet, known)
    const cut = known.get(filled) ?? sheetCut(group, sheet, filled)
    known.set(filled, cut)
    return cut
  }
}

const sheetCut = ({ setup, needs }: SheetGroup, sheet: SheetStock, filled: Filled): Unmarked => {
  const shift = setup.edgeMm - setup.webMm / 2
  const circles = filled.rounds.map(({ needId, xMm, yMm, acrossMm }) => ({
    needId,
    xMm: xMm + shift,
    yMm: yMm + shift,
    diameterMm: acrossMm - setup.webMm
  }))
  const plates = filled.plates.map(({ needId, xMm, yMm, widthMm, heightMm }) => ({
    needId,
    xMm: xMm + setup.edgeMm,
    yMm: yMm + setup.edgeMm,
    widthMm: widthMm - setup.webMm,
    heightMm: heightMm - setup.webMm
  }))
  const widest = needs.reduce((most, { cutDiameterMm }) => Math.max(most, cutDiameterMm), 0)
  const keepFromMm = setup.keepFromMm ?? Math.max(widest, LEAST_KEPT_MM) + 2 * setup.edgeMm
  return {
    sheetId: sheet.id,
    isOffcut: sheet.isOffcut,
    widthMm: sheet.widthMm,
    heightMm: sheet.heightMm,
    circles,
    plates,
    offcuts: sheetOffcuts(
      { xMm: 0, yMm: 0, widthMm: sheet.widthMm, heightMm: sheet.heightMm },
      [...circles.map((circle) => boxOf(circle, setup.webMm)), ...plates.map((plate) => grown(plate, setup.webMm))],
      keepFromMm
    ),
    costMinor: sheet.offer.priceMinor ?? (sheet.isOffcut ? 0 : null)
  }
}

/** Narrower than this an offcut of a sheet of plates alone is not kept (from memory). */
const LEAST_KEPT_MM = 50

const boxOf = (
  circle: { readonly xMm: number; readonly yMm: number; readonly diameterMm: number },
  webMm: number
): Area => ({
  xMm: circle.xMm - circle.diameterMm / 2 - webMm,
  yMm: circle.yMm - circle.diameterMm / 2 - webMm,
  widthMm: circle.diameterMm + 2 * webMm,
  heightMm: circle.diameterMm + 2 * webMm
})

const grown = (plate: Area, webMm: number): Area => ({
  xMm: plate.xMm - webMm,
  yMm: plate.yMm - webMm,
  widthMm: plate.widthMm + 2 * webMm,
  heightMm: plate.heightMm + 2 * webMm
})
