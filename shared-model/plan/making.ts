import {
  type BenchFinding,
  type BenchInput,
  type BenchPlan,
  type BenchProblem,
  benchFindings,
  benchPlan
} from '../bench'
import { type Bill, type BillFinding, type BillProblem, billOf } from '../bill'
import { type Caution, cautionFacts, cautionsFor, withCautions } from '../cautions'
import type { BarsPlanned, Piece } from '../cutting'
import type { Design, Workshop } from '../design'
import type { SillSize } from '../layout'
import { type Budget, ok, type Result } from '../outcome'
import { type Priced, type PricePlan, pricePlan } from '../pricing'
import type { FirstFill } from '../reservoir'
import type { RingPlan } from '../rings'
import type { PartIndex } from '../seating'
import type { SillLoad } from '../structure'
import { minorUnitDigits } from '../units'
import type { PlanFinding, PlanProblem } from './codes'
import { emptyBench, emptyBill } from './empty'
import { keepLast } from './kept'
import { type RestPlan, restOf } from './rest'
import type { SiteTally } from './site-tally'
import { benchInputOf, type Planned } from './to-bench'
import { billInputOf, billShopOf } from './to-bill'
import { priceInputOf } from './to-pricing'

/** What is known of a plan when its making is worked out. */
export interface ToMake {
  readonly index: PartIndex
  readonly planned: readonly Planned[]
  readonly tallies: readonly SiteTally[]
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
  readonly rest: RestPlan | null
  readonly bill: Bill
  readonly pricing: PricePlan
  readonly cautions: readonly Caution[]
  readonly findings: readonly PlanFinding[]
  readonly problems: readonly PlanProblem[]
}

interface Benched {
  readonly bench: BenchPlan
  readonly findings: readonly BenchFinding[]
}

interface Billed {
  readonly bill: Bill
  readonly findings: readonly BillFinding[]
}

const keptBench = keepLast<Result<Benched, BenchProblem>>()
const keptBill = keepLast<Result<Billed, BillProblem>>()
const keptPrice = keepLast<Priced>()
const keptRest = keepLast<RestPlan | null>()

/**
 * Bench plan, bill, price and cautions: what follows from the pieces, the sheets and the channels. The first three are kept
 * as long as what they follow from: moving a channel along the sill changes none of it.
 */
export const makingOf = (design: Design, workshop: Workshop, on: string, plan: ToMake): Making => {
  const problems: PlanProblem[] = []
  const findings: PlanFinding[] = []
  const { bars, planned } = plan
  const benchInput = benchInputOf(design, workshop, plan.index, { ...plan, cuts: bars.cuts })
  const worked = benchOf(benchInput, plan.benchBudget)
  if (worked.ok) findings.push(...worked.value.findings)
  else problems.push(worked.problem)
  const benched = worked.ok ? worked.value.bench : emptyBench(workshop)
  const billed = billedOf(design, workshop, on, plan)
  if (billed.ok) findings.push(...billed.value.findings)
  else problems.push(billed.problem)
  const bill = billed.ok ? billed.value.bill : emptyBill(workshop.currency, design.quantity)
  const channels = planned.map((each) => each.plan)
  const priceInput = priceInputOf(workshop, { bench: benched, bill, bars, load: plan.load, channels })
  const { bill: _, setup, ...figures } = priceInput
  const priced = keptPrice([bill, setup, JSON.stringify(figures)], () => pricePlan(priceInput))
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
  const left = keptRest(
    [design.atBench, plan.pieces, benchInput, plan.benchBudget?.work],
    () => restOf(design, plan.pieces, benchInput, plan.benchBudget),
    goesOn(plan.benchBudget)
  )
  const rest = left && { ...left, bench: { ...left.bench, steps: withCautions(left.bench.steps, cautions) } }
  return { bench, rest, bill, pricing: priced.plan, cautions, findings, problems }
}

const benchOf = (input: BenchInput, budget: Budget | undefined): Result<Benched, BenchProblem> => {
  const work = (): Result<Benched, BenchProblem> => {
    const worked = benchPlan(input, budget)
    return worked.ok ? ok({ bench: worked.value, findings: benchFindings(input, worked.value) }) : worked
  }
  return keptBench([input, budget?.work], work, goesOn(budget))
}

/** Whether a search was let go to its end. */
const goesOn = (budget: Budget | undefined) => (): boolean => budget === undefined || !budget.stop()

const billedOf = (design: Design, workshop: Workshop, on: string, plan: ToMake): Result<Billed, BillProblem> => {
  const input = billInputOf(design, workshop, plan.index, plan)
  const { channels, cuts, rings, ...figures } = input
  const inputs = [workshop, on, channels, cuts, rings, JSON.stringify(figures)]
  return keptBill(inputs, () => billOf(input, billShopOf(workshop, on)))
}

/** What is made of a plan whose making is left out: nothing, and nothing to say of it. */
export const nothingMade = (design: Design, workshop: Workshop): Making => ({
  bench: emptyBench(workshop),
  rest: null,
  bill: emptyBill(workshop.currency, design.quantity),
  pricing: {
    currency: workshop.currency,
    digits: minorUnitDigits(workshop.currency) ?? 0,
    cost: null,
    ways: [],
    ladder: [],
    sensitivity: [],
    parcel: null
  },
  cautions: [],
  findings: [],
  problems: []
})
