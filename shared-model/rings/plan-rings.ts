import type { Result } from '../outcome'
import { failed, ok } from '../outcome'
import { mm } from '../units'
import type { RingsProblem } from './codes'
import { perSheet } from './per-sheet'
import { refuseRings } from './refuse-rings'
import type { CoreReuse } from './reuse-cores'
import { reuseCores } from './reuse-cores'
import type { PlateNeed, RingNeed, RingPlan } from './ring-plan'
import type { RingsInput } from './rings-input'
import type { SheetStock } from './sheet'
import type { SheetGroupPlan } from './sheet-group'
import { planSheetGroup } from './sheet-group'

/**
 * Sheets for a whole batch of collars, discs and end plates: cores serve first, the rest goes on the least costly
 * sheets found, with a proven bound beside it. Each material and thickness is planned apart; offcuts on the rack are
 * used where that is cheaper. Compared in minor units where every new sheet has a price, else by area.
 */
export const planRings = (input: RingsInput): Result<RingPlan, RingsProblem> => {
  const refused = refuseRings(input)
  if (refused) return failed(refused)
  const priced = input.sheets.every((sheet) => sheet.isOffcut || sheet.offer.priceMinor !== null)
  const groups = groupsOf(input)
  const share = { work: Math.floor(input.budget.work / Math.max(1, groups.length)), stop: input.budget.stop }
  let marked = 0
  const plans: { readonly reuse: CoreReuse; readonly plan: SheetGroupPlan }[] = []
  for (const group of groups) {
    const reuse = coresOf(group.needs, input.setup.webMm)
    const fromSheet = group.needs.map((need) => ({ ...need, count: need.count - servedBy(reuse, need.id) }))
    const plan = planSheetGroup({ ...group, needs: fromSheet, setup: input.setup, priced, budget: share, marked })
    marked += plan.sheets.length
    plans.push({ reuse, plan })
  }
  return ok(assemble(input, plans))
}

/** A plan for a batch without a part from sheet. */
export const EMPTY_RING_PLAN: RingPlan = {
  needs: [],
  plates: [],
  sheets: [],
  fromCores: [],
  coresLeft: [],
  uncut: [],
  perSheet: [],
  leastSheets: 0,
  costMinor: 0,
  value: 0,
  lowerBound: 0,
  proven: true
}

const assemble = (
  input: RingsInput,
  plans: readonly { readonly reuse: CoreReuse; readonly plan: SheetGroupPlan }[]
): RingPlan => {
  const sum = (of: (plan: SheetGroupPlan) => number) => plans.reduce((total, { plan }) => total + of(plan), 0)
  const sheets = plans.flatMap(({ plan }) => plan.sheets)
  return {
    needs: input.needs,
    plates: input.plates,
    sheets,
    fromCores: plans.flatMap(({ reuse }) =>
      reuse.uses.map(({ id, fromId, count, sameSaw }) => ({ needId: id, fromNeedId: fromId, count, sameSaw }))
    ),
    coresLeft: coresLeft(
      input.needs,
      plans.map(({ reuse }) => reuse),
      plans.flatMap(({ plan }) => plan.uncut)
    ),
    uncut: plans.flatMap(({ plan }) => plan.uncut),
    perSheet: perSheet(input),
    leastSheets: sum((plan) => plan.leastSheets),
    costMinor: sheets.some(({ costMinor }) => costMinor === null)
      ? null
      : sheets.reduce((total, { costMinor }) => total + (costMinor ?? 0), 0),
    value: sum((plan) => plan.value),
    lowerBound: sum((plan) => plan.lowerBound),
    proven: plans.every(({ plan }) => plan.proven)
  }
}

interface Group {
  readonly needs: readonly RingNeed[]
  readonly plates: readonly PlateNeed[]
  readonly sheets: readonly SheetStock[]
}

/** Thicknesses that differ by less are one. */
const SAME_THICKNESS_MM = 0.01

const groupsOf = (input: RingsInput): readonly Group[] => {
  const heads: { readonly material: string; readonly thicknessMm: number }[] = []
  const isOf = (head: (typeof heads)[number], part: { readonly material: string; readonly thicknessMm: number }) =>
    part.material === head.material && Math.abs(part.thicknessMm - head.thicknessMm) < SAME_THICKNESS_MM
  for (const part of [...input.needs, ...input.plates]) {
    if (part.count > 0 && !heads.some((head) => isOf(head, part))) heads.push(part)
  }
  return heads.map((head) => ({
    needs: input.needs.filter((need) => need.count > 0 && isOf(head, need)),
    plates: input.plates.filter((plate) => plate.count > 0 && isOf(head, plate)),
    sheets: input.sheets.filter((sheet) => isOf(head, sheet))
  }))
}

const coresOf = (needs: readonly RingNeed[], webMm: number): CoreReuse =>
  reuseCores(
    needs.map((need) => ({
      id: need.id,
      outerMm: need.cutDiameterMm,
      innerMm: need.holeMm,
      count: need.count,
      coreMm: need.coreMm
    })),
    mm(0),
    mm(webMm),
    { sameSaw: true }
  )

const servedBy = (reuse: CoreReuse, needId: string): number =>
  reuse.uses.reduce((sum, use) => sum + (use.id === needId ? use.count : 0), 0)

/** Cores that fall out and serve nothing, the widest first. */
const coresLeft = (
  needs: readonly RingNeed[],
  reuses: readonly CoreReuse[],
  uncut: RingPlan['uncut']
): RingPlan['coresLeft'] => {
  const left = new Map<number, number>()
  for (const need of needs) {
    if (need.coreMm === null) continue
    const used = reuses
      .flatMap(({ uses }) => uses)
      .reduce((sum, use) => sum + (use.fromId === need.id ? use.count : 0), 0)
    const notCut = uncut.reduce((sum, line) => sum + (line.needId === need.id ? line.count : 0), 0)
    const count = Math.max(0, need.count - notCut - used)
    if (count > 0) left.set(need.coreMm, (left.get(need.coreMm) ?? 0) + count)
  }
  return [...left].sort((a, b) => b[0] - a[0]).map(([diameterMm, count]) => ({ diameterMm, count }))
}
