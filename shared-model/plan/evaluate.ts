import { type BarProgress, type BarsPlanned, planBars } from '../cutting'
import type { Design, Workshop } from '../design'
import { betweenChannels, sillSize } from '../layout'
import type { Budget, Result } from '../outcome'
import { firstFill } from '../reservoir'
import { EMPTY_RING_PLAN, ringFindings } from '../rings'
import { seatsInUse } from '../seating'
import { sillLoad } from '../structure'
import { litres } from '../units'
import { adviceFor } from './advice'
import { barsToCut } from './bars-to-cut'
import { type ChannelPart, channelParts, marksOf } from './channel-part'
import type { PlanFinding, PlanProblem } from './codes'
import { EMPTY_FILL } from './empty'
import { keepLast } from './kept'
import { keptRings } from './kept-rings'
import { makingOf, nothingMade } from './making'
import { piecesOf } from './pieces'
import { PLAN_SCHEMA, type Plan } from './plan'
import { ringNeedsOf } from './ring-needs'
import { sharedOf } from './shared'
import { siteTallies } from './site-tally'
import type { Planned } from './to-bench'
import { wholeFindings } from './whole-findings'

export interface EvaluateOptions {
  /** A finished cut plan (from a worker), or `left-out`: bars are then not planned, and the bill has no stock. */
  readonly cuts?: BarsPlanned | 'left-out'
  /** Bench plan, bill, price and cautions, with their findings, are then not worked out: for a board that is drawn first. */
  readonly making?: 'left-out'
  /** Work for the bars and for the sheets each; left out, the work of a plan that follows the hand. */
  readonly budget?: Budget
  /** Told as a profile's cut plan or its bound gets better. */
  readonly report?: (profileId: string, progress: BarProgress) => void
  /** Told all bars as those of a profile get cheaper; as `cuts` of another call they give the plan so far. */
  readonly better?: (bars: BarsPlanned) => void
}

/** Work units of a plan that follows the hand: a unit is about a microsecond. */
const LIVE_WORK = 20_000
const NEVER = () => false
/** Work units that one state of the search for a drilling order counts as. */
const WORK_PER_ORDER = 100
const MOVING_ORDERS = 20

const NO_BARS: BarsPlanned = { cuts: [], findings: [] }
const NOTHING_FILLED = { fill: EMPTY_FILL, findings: [] }
const keptFill = keepLast<ReturnType<typeof firstFill>>()

/**
 * All that follows from a Design and a Workshop on a day (`on`, an ISO date): a pure function of them, which never throws
 * for documents the parser has passed. What cannot be worked out stands in `problems`, and the rest of the plan is whole.
 */
export const evaluate = (design: Design, workshop: Workshop, on: string, options: EvaluateOptions = {}): Plan => {
  const problems: PlanProblem[] = []
  const take = <T>(result: Result<T, PlanProblem>, otherwise: T): T => {
    if (result.ok) return result.value
    problems.push(result.problem)
    return otherwise
  }
  const budget = options.budget ?? { work: LIVE_WORK, stop: NEVER }
  const benchBudget = orderBudget(options)
  const sill = take(sillSize(design.sill), { lengthMm: 0, depthMm: 0 })
  const shared = sharedOf(design, workshop, sill)
  const { index } = shared
  const marks = marksOf(design)

  const tallies = siteTallies(design)
  const planned: Planned[] = []
  const parts: ChannelPart[] = []
  const seated: Parameters<typeof seatsInUse>[0][number][] = []
  channelParts(design, shared).forEach((part, at) => {
    if (!part.ok) {
      problems.push(part.problem)
      return
    }
    const { laid, layout, seats, water, load } = part.value
    const { channel } = laid
    const mark = marks.get(channel.id) ?? ''
    parts.push(part.value)
    planned.push({ id: channel.id, channel, plan: { channelId: channel.id, mark, layout, seats, water, load } })
    seated.push({ section: layout.section, seatIds: tallies[at]?.seats.keys() ?? [] })
  })
  const channels = planned.map(({ plan }) => plan)
  const used = seatsInUse(seated, index)
  const total = channels.reduce((sum, { water }) => sum + water.litres, 0)
  const crops = design.crops.filter(({ id }) => tallies.some(({ cropIds }) => cropIds.has(id)))
  const filled = take(
    keptFill([total, design.water, ...crops], () => firstFill(litres(total), crops, design.water)),
    NOTHING_FILLED
  )

  const pieces = piecesOf(design, workshop.shows)
  const bars =
    options.cuts === 'left-out'
      ? NO_BARS
      : (options.cuts ??
        take(planBars({ ...barsToCut(design, workshop, pieces), budget, ...reporting(options) }), NO_BARS))
  const sheetWork = ringNeedsOf(design, index, tallies)
  problems.push(...sheetWork.problems)
  const { needs, plates } = sheetWork
  const sheetBudget = options.cuts === 'left-out' ? { ...budget, work: 0 } : budget
  const ringsInput = { needs, plates, sheets: workshop.sheets, setup: workshop.sheetSetup, budget: sheetBudget }
  const rings = take(keptRings(ringsInput), EMPTY_RING_PLAN)

  const loaded = sillLoad(
    channels.map(({ load, layout }) => ({ load, overallLengthMm: layout.overallLengthMm })),
    design.sill,
    sill
  )
  const making =
    options.making === 'left-out'
      ? nothingMade(design, workshop)
      : makingOf(design, workshop, on, {
          index,
          planned,
          tallies,
          marks,
          pieces,
          bars,
          rings,
          firstFill: filled.fill,
          load: loaded.load,
          sill,
          benchBudget
        })
  problems.push(...making.problems)
  const findings: readonly PlanFinding[] = [
    ...parts.flatMap((part) => part.findings),
    ...betweenChannels(
      parts.map(({ laid }) => laid),
      design.sill
    ),
    ...filled.findings,
    ...loaded.findings,
    ...bars.findings,
    ...ringFindings(ringsInput, rings),
    ...making.findings,
    ...wholeFindings(design, workshop, tallies)
  ]
  const counted = (severity: PlanFinding['severity']): number =>
    findings.filter((finding) => finding.severity === severity).length
  return {
    schema: PLAN_SCHEMA,
    on,
    designId: design.id,
    quantity: design.quantity,
    sill,
    channels,
    sawAdvice: used.map(({ seat, section }) => adviceFor(seat, section, shared)),
    pieces,
    cuts: bars.cuts,
    rings,
    bench: making.bench,
    rest: making.rest,
    bill: making.bill,
    pricing: making.pricing,
    firstFill: filled.fill,
    load: loaded.load,
    cautions: making.cautions,
    findings,
    problems,
    totals: {
      plants: tallies.reduce((sum, { plants }) => sum + plants, 0),
      litres: total,
      holes: channels.reduce((sum, { layout }) => sum + layout.holes.length, 0),
      stops: counted('stop'),
      warns: counted('warn'),
      notes: counted('note')
    }
  }
}

const reporting = ({ report, better }: EvaluateOptions) => ({
  ...(report === undefined ? {} : { report }),
  ...(better === undefined ? {} : { better })
})

/** States the search for a drilling order may go on from: few while the hand moves, else in step with the work given. */
const orderBudget = ({ cuts, budget }: EvaluateOptions): Budget | undefined => {
  if (budget !== undefined) return { ...budget, work: Math.ceil(budget.work / WORK_PER_ORDER) }
  return cuts === 'left-out' ? { work: MOVING_ORDERS, stop: NEVER } : undefined
}
