import { type BenchPlan, benchFindings, benchPlan } from '../bench'
import { type Bill, billOf } from '../bill'
import { type Caution, cautionFacts, cautionsFor, withCautions } from '../cautions'
import type { BarsPlanned, Piece } from '../cutting'
import type { Design, Workshop } from '../design'
import type { SillSize } from '../layout'
import type { Budget } from '../outcome'
import { type PricePlan, pricePlan } from '../pricing'
import type { FirstFill } from '../reservoir'
import type { RingPlan } from '../rings'
import type { PartIndex } from '../seating'
import type { SillLoad } from '../structure'
import type { PlanFinding, PlanProblem } from './codes'
import { emptyBench, emptyBill } from './empty'
import type { ChannelPlan } from './plan'
import { benchInputOf } from './to-bench'
import { billInputOf, billShopOf } from './to-bill'
import { priceInputOf } from './to-pricing'

/** What is known of a plan when its making is worked out. */
export interface ToMake {
  readonly index: PartIndex
  readonly channels: readonly ChannelPlan[]
  readonly marks: ReadonlyMap<string, string>
  readonly pieces: readonly Piece[]
  readonly bars: BarsPlanned
  readonly rings: RingPlan
  readonly firstFill: FirstFill
  readonly load: SillLoad
  readonly sill: SillSize
  /** States the search for a drilling order may go on from; left out, those of a live plan. */
  readonly benchBudget: Budget | undefined
}

export interface Making {
  readonly bench: BenchPlan
  readonly bill: Bill
  readonly pricing: PricePlan
  readonly cautions: readonly Caution[]
  readonly findings: readonly PlanFinding[]
  readonly problems: readonly PlanProblem[]
}

/** Bench plan, bill, price and cautions: what follows from the pieces, the sheets and the channels. */
export const makingOf = (design: Design, workshop: Workshop, on: string, plan: ToMake): Making => {
  const problems: PlanProblem[] = []
  const findings: PlanFinding[] = []
  const { bars, channels } = plan
  const benchInput = benchInputOf(design, workshop, plan.index, { ...plan, cuts: bars.cuts })
  const worked = benchPlan(benchInput, plan.benchBudget)
  if (worked.ok) findings.push(...benchFindings(benchInput, worked.value))
  else problems.push(worked.problem)
  const benched = worked.ok ? worked.value : emptyBench(workshop)
  const billed = billOf(billInputOf(design, workshop, plan.index, plan), billShopOf(workshop, on))
  if (billed.ok) findings.push(...billed.value.findings)
  else problems.push(billed.problem)
  const bill = billed.ok ? billed.value.bill : emptyBill(workshop.currency, design.quantity)
  const priced = pricePlan(priceInputOf(workshop, { bench: benched, bill, bars, load: plan.load, channels }))
  findings.push(...priced.findings)
  problems.push(...priced.problems)
  const facts = cautionFacts(design, workshop, {
    sillDepthMm: plan.sill.depthMm,
    channels,
    pieceLengthsMm: plan.pieces.map(({ lengthMm }) => lengthMm),
    billNeeds: bill.lines
  })
  const cautions = cautionsFor(facts, {
    heaviestFilledG: Math.max(0, ...channels.map(({ load }) => load.filledG)),
    sillLoadG: plan.load.grownG
  })
  const bench = { ...benched, steps: withCautions(benched.steps, cautions) }
  return { bench, bill, pricing: priced.plan, cautions, findings, problems }
}
