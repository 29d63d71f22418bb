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
import { fittingsToTry } from './fittings'
import { everyChoice, rowBars } from './longer-rows'
import { notDominated } from './not-dominated'
import { type FitRow, rowRoom, rowsThatFit } from './rows'
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

/** What a search came to, and whether it was whole. */
export interface FitsFound {
  readonly fits: readonly Fit[]
  /** Layouts tried, of so many that the sill has room for. */
  readonly tried: number
  readonly possible: number
  /** Whether the sill has room for more rows, or more sites in a row, than are tried. */
  readonly capped: boolean
}

/**
 * "What fits my sill?": rows of one profile along the sill that no other layout beats in plants, cost per plant, stock
 * left over and load. Exact over the lengths at which a row's number of sites changes, and over those at which the bars
 * change that one row, or equal rows together, are cut from, as long as all that are possible were tried; a layout whose plan has a `stop` finding is never among them. Rows take the supports and openings of the
 * design's channel of that profile where they stop nothing. The budget's work is the number of layouts tried at most; the
 * shortest rows are tried first, those made longer to fill a bar last.
 */
export function fits(
  design: Design,
  workshop: Workshop,
  wish: FitWish,
  on: string,
  budget: Budget
): Result<FitsFound, FitsProblem> {
  const part = partsOf(design, wish)
  if (!part.ok) return part
  const { profile, closure, crop, holeMm } = part.value
  const sill = sillSize(design.sill)
  if (!sill.ok) return sill
  const clearanceMm = design.sill.clearanceMm
  const acrossMm = (wish.turned ? profile.heightMm : profile.widthMm) + 2 * closure.proudMm
  const leastPitchMm = leastPitch(mm(holeMm), mm(LEAST_WEB_MM))
  const wanted = {
    roomLengthMm: sill.value.lengthMm - 2 * clearanceMm,
    roomDepthMm: sill.value.depthMm - 2 * clearanceMm,
    acrossMm,
    rowGapMm: wish.rowGapMm,
    leastEndMm: leastEnd(mm(closureDepthMm(closure)), mm(LEAST_WEB_MM), mm(holeMm)),
    pitchMm: Math.max(crop.pitchMm?.least ?? crop.canopyMm, leastPitchMm),
    closuresAddMm: 2 * closure.addsLengthMm
  }
  const room = rowRoom(wanted)
  if (!room.ok) return room
  const rows = rowsThatFit(wanted)
  if (!rows.ok) return rows
  const firstSerial = 1 + highestSerial(design)
  const place = { acrossMm, xMm: clearanceMm + closure.addsLengthMm, frontMm: clearanceMm, firstSerial }
  const found: Fit[] = []
  let [tried, possible] = [0, 0]
  for (const choice of everyChoice(rows.value, wanted, rowBars(workshop, profile.id))) {
    possible += 1
    if (possible > budget.work || budget.stop()) continue
    const fit = fitOf(choice, channelsFor(choice, wish, place), { design, workshop, profileId: profile.id, on, budget })
    tried += 1
    if (fit !== null) found.push(fit)
  }
  return ok({ fits: notDominated(found), tried, possible, capped: room.value.capped })
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
  const made = withFittings(channels, setting)
  if (made === null) return null
  const { design, plan } = made
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

/** The layout with the first fittings that stop nothing; null where each stops something. */
function withFittings(channels: readonly Channel[], { design, workshop, profileId, on }: Setting) {
  const each = channels.map((channel) => fittingsToTry(design, profileId, channel.lengthMm))
  const tries = Math.max(0, ...each.map((list) => list.length))
  for (let k = 0; k < tries; k += 1) {
    const fitted = channels.map((channel, at) => ({ ...channel, ...each[at]?.[k] }))
    const made = { ...design, channels: fitted, dimensions: [], notes: [] }
    const plan = evaluate(made, workshop, on, { cuts: 'left-out' })
    if (!stops(plan)) return { design: made, plan }
  }
  return null
}

/** The highest number in the ids of the design's channels, and in what the bench still names: new rows are new channels. */
function highestSerial({ channels, atBench }: Design): number {
  const bench = [...(atBench?.pins ?? []), ...(atBench?.bars ?? []).flatMap(({ pieces }) => pieces)]
  const ids = [...channels.map(({ id }) => id), ...bench.map(({ pieceId }) => pieceId)]
  return Math.max(0, ...ids.map((id) => Number(/^c(\d+)/.exec(id)?.[1] ?? 0)))
}

/** A price that is missing stops the pricing, not the build. */
function stops(plan: Plan): boolean {
  const built = plan.findings.filter((each) => each.severity === 'stop' && each.code !== 'price-missing')
  return built.length > 0 || plan.problems.length > 0
}

function channelsFor(
  rows: readonly FitRow[],
  wish: FitWish,
  place: {
    readonly acrossMm: number
    readonly xMm: number
    readonly frontMm: number
    readonly firstSerial: number
  }
): readonly Channel[] {
  let sites = 0
  return rows.map((row, at) => ({
    id: `c${place.firstSerial + at}`,
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
