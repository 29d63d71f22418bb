import { failed, ok, type Result } from '../outcome'
import {
  addRatio,
  divideRatio,
  multiplyRatio,
  type Ratio,
  ratio,
  ratioFromDecimal,
  roundRatio,
  splitTotal,
  subtractRatio
} from '../units'
import { firstProblem, MOST_AMOUNT, outside } from './bounds'
import type { PricingFinding, PricingProblem } from './codes'
import { grossFromYield } from './gross-from-yield'
import { learningAverage, learningUnit } from './learning'
import { ONE, shareOf, ZERO } from './percent'
import type { ToolUse, Work } from './price-input'
import type { CostParts, UnitCost } from './price-plan'
import type { PricingSetup } from './selling'
import { toolWear } from './tool-wear'

export interface CostInput {
  readonly quantity: number
  /** What the batch uses of all it bought, at pack share. */
  readonly materialMinor: number
  /** The part of it that a cut list or sheet plan stands for: scrap is never added on top of that. */
  readonly cutListMinor: number
  /** The unused rest of packs and bars. */
  readonly restMinor: number
  readonly work: Work
  readonly tools: readonly ToolUse[]
  readonly setup: Pick<
    PricingSetup,
    'hourlyRateMinor' | 'overheadPerHourMinor' | 'scrapPercent' | 'learning' | 'chargePackRestTo'
  >
}

/**
 * What one unit costs: material at pack share, labour and overhead by the hour, tool wear, scrap, and the rest of packs if it is
 * charged. Each cause is exact for the batch and rounded once, half up; the unit's parts are split by largest remainder.
 *
 * scrap = net / (1 - s) - net, on what is not in a cut list: other material, run labour with its overhead, wear.
 *
 * @source job-cost
 */
export function unitCost(
  input: CostInput
): Result<{ readonly cost: UnitCost; readonly findings: readonly PricingFinding[] }, PricingProblem> {
  const problem = badCostInput(input)
  if (problem !== null) return failed(problem)
  const run = learnedRun(input)
  if (!run.ok) return run
  const wear = wearOf(input.tools)
  if (!wear.ok) return wear
  const runHours = hours(run.value)
  const allHours = addRatio(runHours, hours(input.work.setUpS))
  const rate = ratioFromDecimal(input.setup.hourlyRateMinor)
  const overheadRate = ratioFromDecimal(input.setup.overheadPerHourMinor)
  const hourly = multiplyRatio(runHours, addRatio(rate, overheadRate))
  const loose = ratioFromDecimal(input.materialMinor - input.cutListMinor)
  const net = addRatio(addRatio(loose.num < 0n ? ZERO : loose, hourly), wear.value.charge)
  const gross = grossFromYield(net, subtractRatio(ONE, shareOf(input.setup.scrapPercent)))
  if (!gross.ok) return gross
  const batch: CostParts = {
    materialMinor: input.materialMinor,
    labourMinor: roundRatio(multiplyRatio(allHours, rate), 'half-up'),
    toolWearMinor: roundRatio(wear.value.charge, 'half-up'),
    overheadMinor: roundRatio(multiplyRatio(allHours, overheadRate), 'half-up'),
    scrapMinor: roundRatio(subtractRatio(gross.value, net), 'half-up'),
    packRestMinor: input.setup.chargePackRestTo === 'batch' ? input.restMinor : 0
  }
  const workedS = run.value + input.work.setUpS
  return ok({ cost: costOfOne(batch, input.quantity, workedS), findings: wear.value.findings })
}

function costOfOne(batch: CostParts, quantity: number, workedS: number): UnitCost {
  const weights = PARTS.map((part) => batch[part])
  const batchMinor = weights.reduce((sum, part) => sum + part, 0)
  const totalMinor = roundRatio(divideRatio(ratio(batchMinor), ratio(quantity)), 'half-up')
  const shares = splitTotal(weights, totalMinor)
  const share = (index: number) => shares[index] ?? 0
  return {
    materialMinor: share(0),
    labourMinor: share(1),
    toolWearMinor: share(2),
    overheadMinor: share(3),
    scrapMinor: share(4),
    packRestMinor: share(5),
    totalMinor: batchMinor === 0 ? 0 : totalMinor,
    batchMinor,
    batch,
    workedS
  }
}

const PARTS = ['materialMinor', 'labourMinor', 'toolWearMinor', 'overheadMinor', 'scrapMinor', 'packRestMinor'] as const

/** Run time of the batch; the learning curve starts at the pace of the first unit. */
function learnedRun(input: CostInput): Result<number, PricingProblem> {
  const { model, ratePercent } = input.setup.learning
  if (model === 'none') return ok(input.work.runS)
  const curve = model === 'unit' ? learningUnit : learningAverage
  const learned = curve(input.work.runS / input.quantity, ratePercent / 100, input.quantity)
  // To the millisecond: a power is not rational, the amount it is charged at is.
  return learned.ok ? ok(Math.round(learned.value.total * 1000) / 1000) : learned
}

function wearOf(
  tools: readonly ToolUse[]
): Result<{ readonly charge: Ratio; readonly findings: readonly PricingFinding[] }, PricingProblem> {
  let charge = ZERO
  const findings: PricingFinding[] = []
  for (const tool of tools.filter((one) => one.uses > 0)) {
    if (tool.priceMinor === null || tool.lifeUses === null) {
      const where = { partId: tool.toolId, field: `saws.${tool.toolId}.priceMinor` }
      findings.push({ code: 'tool-wear-unknown', severity: 'note', figures: { toolName: tool.name }, where })
      continue
    }
    const worn = toolWear({
      cost: ratioFromDecimal(tool.priceMinor),
      salvage: ratioFromDecimal(tool.salvageMinor),
      lifeUnits: ratioFromDecimal(tool.lifeUses),
      used: ratioFromDecimal(tool.uses)
    })
    if (!worn.ok) return failed({ ...worn.problem, where: { partId: tool.toolId, field: `saws.${tool.toolId}` } })
    charge = addRatio(charge, worn.value.charge)
  }
  return ok({ charge, findings })
}

const hours = (seconds: number): Ratio => divideRatio(ratioFromDecimal(seconds), ratio(3600))

function badCostInput(input: CostInput): PricingProblem | null {
  const { setup, work } = input
  return firstProblem([
    outside(
      'quantity',
      Number.isFinite(input.quantity) && !Number.isInteger(input.quantity) ? 0 : input.quantity,
      1,
      10_000
    ),
    outside('materialMinor', input.materialMinor, 0, MOST_AMOUNT),
    outside('cutListMinor', input.cutListMinor, 0, MOST_AMOUNT),
    outside('restMinor', input.restMinor, 0, MOST_AMOUNT),
    outside('work.setUpS', work.setUpS, 0, MOST_SECONDS),
    outside('work.runS', work.runS, 0, MOST_SECONDS),
    outside('pricing.hourlyRateMinor', setup.hourlyRateMinor, 0, MOST_AMOUNT),
    outside('pricing.overheadPerHourMinor', setup.overheadPerHourMinor, 0, MOST_AMOUNT),
    outside('pricing.scrapPercent', setup.scrapPercent, 0, 99),
    setup.learning.model === 'none'
      ? null
      : outside('pricing.learning.ratePercent', setup.learning.ratePercent, 50, 100),
    ...input.tools.map((tool) => outside(`saws.${tool.toolId}.uses`, tool.uses, 0, MOST_AMOUNT)),
    ...input.tools.map((tool) => outside(`saws.${tool.toolId}.priceMinor`, tool.priceMinor ?? 0, 0, MOST_AMOUNT)),
    ...input.tools.map((tool) => outside(`saws.${tool.toolId}.salvageMinor`, tool.salvageMinor, 0, MOST_AMOUNT)),
    ...input.tools.map((tool) => outside(`saws.${tool.toolId}.lifeHoles`, tool.lifeUses ?? 1, 1, MOST_AMOUNT))
  ])
}

const MOST_SECONDS = 1e10
