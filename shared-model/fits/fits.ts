import type { Design, Workshop } from '../design'
import {
  type Channel,
  closureDepthMm,
  type LayoutProblem,
  LEAST_WEB_MM,
  leastEnd,
  leastPitch,
  sillSize
} from '../layout'
import { type Budget, failed, ok, type ProblemOf, type Result } from '../outcome'
import { evaluate, type Plan } from '../plan'
import { mm } from '../units'
import { notDominated } from './not-dominated'
import { type FitRow, rowsThatFit } from './rows'
import { stockForRows } from './stock-for-rows'

export interface FitsProblemCodes {
  /** A part that the wish names is not in the design. */
  readonly 'fits-part-missing': { readonly part: string; readonly id: string }
}

export type FitsProblem = ProblemOf<FitsProblemCodes> | LayoutProblem

/** Which parts of the design the layouts are made of. */
export interface FitWish {
  readonly profileId: string
  readonly turned: boolean
  readonly closureId: string
  readonly seatId: string
  readonly cropId: string
  readonly fillShare: number
  readonly rowGapMm: number
}

/** A layout that fits, with what it comes to; `design` is the whole design with it, ready to take. */
export interface Fit {
  readonly plants: number
  readonly lengthsMm: readonly number[]
  readonly costMinor: number | null
  readonly leftOverMm: number
  /** Filled weight of all channels, g. */
  readonly load: number
  readonly shareOfLimit: number | null
  readonly design: Design
}

/**
 * "What fits my sill?": rows of one profile along the sill that no other layout beats in plants, cost per plant, stock
 * left over and load. Exact over the lengths at which a row's number of sites changes; a layout whose plan has a `stop`
 * finding is never among them. The budget's
 * work is the number of layouts tried at most; the shortest rows are tried first.
 */
export function fits(
  design: Design,
  workshop: Workshop,
  wish: FitWish,
  on: string,
  budget: Budget
): Result<readonly Fit[], FitsProblem> {
  const part = partsOf(design, wish)
  if (!part.ok) return part
  const { profile, closure, crop, holeMm } = part.value
  const sill = sillSize(design.sill)
  if (!sill.ok) return sill
  const clearanceMm = design.sill.clearanceMm
  const acrossMm = (wish.turned ? profile.heightMm : profile.widthMm) + 2 * closure.proudMm
  const leastPitchMm = leastPitch(mm(holeMm), mm(LEAST_WEB_MM))
  const rows = rowsThatFit({
    roomLengthMm: sill.value.lengthMm - 2 * clearanceMm,
    roomDepthMm: sill.value.depthMm - 2 * clearanceMm,
    acrossMm,
    rowGapMm: wish.rowGapMm,
    leastEndMm: leastEnd(mm(closureDepthMm(closure)), mm(LEAST_WEB_MM), mm(holeMm)),
    pitchMm: Math.max(crop.pitchMm?.least ?? crop.canopyMm, leastPitchMm),
    closuresAddMm: 2 * closure.addsLengthMm
  })
  if (!rows.ok) return rows
  const place = { acrossMm, xMm: clearanceMm + closure.addsLengthMm, frontMm: clearanceMm }
  const found: Fit[] = []
  for (const choice of rows.value.slice(0, budget.work)) {
    if (budget.stop()) break
    const fit = fitOf(choice, channelsFor(choice, wish, place), { design, workshop, profileId: profile.id, on, budget })
    if (fit !== null) found.push(fit)
  }
  return ok(notDominated(found))
}

function partsOf(design: Design, wish: FitWish) {
  const profile = design.parts.profiles.find((each) => each.id === wish.profileId)
  if (profile === undefined) return missing('profile', wish.profileId)
  const closure = design.parts.closures.find((each) => each.id === wish.closureId)
  if (closure === undefined) return missing('end closure', wish.closureId)
  const crop = design.crops.find((each) => each.id === wish.cropId)
  if (crop === undefined) return missing('crop', wish.cropId)
  const seat = design.seats.find((each) => each.id === wish.seatId)
  if (seat === undefined) return missing('seat', wish.seatId)
  const saw = design.parts.saws.find((each) => each.id === seat.sawId)
  if (saw === undefined) return missing('saw', seat.sawId)
  return ok({ profile, closure, crop, holeMm: saw.diameterMm + saw.oversizeMm })
}

const missing = (part: string, id: string): { readonly ok: false; readonly problem: ProblemOf<FitsProblemCodes> } =>
  failed({ code: 'fits-part-missing', figures: { part, id } })

interface Setting {
  readonly design: Design
  readonly workshop: Workshop
  readonly profileId: string
  readonly on: string
  readonly budget: Budget
}

function fitOf(rows: readonly FitRow[], channels: readonly Channel[], setting: Setting): Fit | null {
  const { workshop, profileId } = setting
  const lengthsMm = rows.map((row) => row.lengthMm)
  const stock = stockForRows(lengthsMm, {
    profileId,
    stock: workshop.stock.filter((each) => each.profileId === profileId),
    rack: workshop.rack.filter((each) => each.profileId === profileId),
    setup: workshop.cutting,
    stop: setting.budget.stop
  })
  if (stock === null) return null
  const design = { ...setting.design, channels, dimensions: [], notes: [] }
  const plan = evaluate(design, workshop, setting.on, { cuts: 'left-out' })
  if (stops(plan)) return null
  return {
    plants: plan.totals.plants,
    lengthsMm,
    costMinor: stock.costMinor,
    leftOverMm: stock.leftOverMm,
    load: plan.load.filledG,
    shareOfLimit: plan.load.shareOfLimit,
    design
  }
}

/** A price that is missing stops the pricing, not the build. */
function stops(plan: Plan): boolean {
  const built = plan.findings.filter((each) => each.severity === 'stop' && each.code !== 'price-missing')
  return built.length > 0 || plan.problems.length > 0
}

function channelsFor(
  rows: readonly FitRow[],
  wish: FitWish,
  place: { readonly acrossMm: number; readonly xMm: number; readonly frontMm: number }
): readonly Channel[] {
  let sites = 0
  return rows.map((row, at) => ({
    id: `c${at + 1}`,
    name: '',
    profileId: wish.profileId,
    turned: wish.turned,
    xMm: place.xMm,
    yMm: place.frontMm + place.acrossMm / 2 + at * (place.acrossMm + wish.rowGapMm),
    heading: 0,
    lengthMm: row.lengthMm,
    datumClosureId: wish.closureId,
    farClosureId: wish.closureId,
    supports: [],
    openings: [],
    fillShare: wish.fillShare,
    sites: row.sitesAtMm.map((atMm) => {
      sites += 1
      return { id: `s${sites}`, atMm, seatId: wish.seatId, cropId: wish.cropId, locked: false }
    })
  }))
}
