import { failed, ok, type Result } from '../outcome'
import { addRatio, multiplyRatio, type Ratio, ratio, ratioFromDecimal, ratioToNumber, roundRatio } from '../units'
import { firstProblem, MOST_AMOUNT, outside } from './bounds'
import { breakEven, marginOfSafety } from './break-even'
import type { PricingProblem } from './codes'
import { shareOf, ZERO } from './percent'
import { postingOf } from './posting'
import { feeOnPrice, priceAfterFees } from './price-after-fees'
import type { UnitCost, WayPrice } from './price-plan'
import { netFromGross, salesTax } from './sales-tax'
import type { PricingSetup, WayOfSelling } from './selling'

export interface WayInput {
  readonly way: WayOfSelling
  readonly cost: UnitCost
  readonly quantity: number
  /** Bought or used-up price of the tools that break-even must cover, in place of their wear. */
  readonly toolsMinor: number
  readonly setup: Pick<
    PricingSetup,
    'marginPercent' | 'taxPercent' | 'taxKind' | 'priceEnding' | 'hourlyRateMinor' | 'overheadPerHourMinor'
  >
}

/** All of a way but its crossings, which no other figure hangs on. */
export type PricedWay = Omit<WayPrice, 'crossings'>

/**
 * One way of selling: the price that leaves the wanted margin, or a given price; everything else is worked out again from what
 * the buyer sees. Profit of a unit = price + postage charged - cost - posting - fees; posting is what is paid for it and the
 * time it takes; fees and that time half up to whole minor units.
 *
 * @source price-after-fees
 */
export function wayPrice(input: WayInput): Result<PricedWay, PricingProblem> {
  const problem = badWay(input)
  if (problem !== null) return failed(problem)
  const reached = reach(input)
  if (!reached.ok) return failed(named(input.way, reached.problem))
  return priced(input, reached.value)
}

/** The problem with the field it stands at, and the way's name where no price does. */
function named(way: WayOfSelling, problem: PricingProblem): PricingProblem {
  const where = { field: fieldOf(way, problem) }
  if (problem.code !== 'no-price') return { ...problem, where }
  return { ...problem, figures: { ...problem.figures, way: way.name }, where }
}

interface Reached {
  readonly priceMinor: number
  readonly shownMinor: number
  readonly taxMinor: number
}

function reach(input: WayInput): Result<Reached, PricingProblem> {
  const { way, cost, setup } = input
  const tax = shareOf(setup.taxKind === 'none' ? 0 : setup.taxPercent)
  const inside = setup.taxKind === 'value-added-inside'
  if (way.givenPriceMinor !== null) return fromGiven(way.givenPriceMinor, tax, inside)
  const price = priceAfterFees(
    {
      cost: ratio(cost.totalMinor + way.postageCostMinor + postingOf(input).totalMinor),
      fixedFee: ratio(way.fixedFeeMinor),
      feeShare: shareOf(way.feePercent),
      marginOnPrice: shareOf(setup.marginPercent),
      feeTaxShare: way.feeOnTax ? tax : ZERO,
      postageCharged: ratio(way.postageChargedMinor),
      feeOnPostage: way.feeOnPostage,
      taxInsideShare: inside ? tax : ZERO
    },
    setup.priceEnding
  )
  if (!price.ok) return price
  return inside ? fromShown(price.value.shownMinor, tax) : fromGiven(price.value.shownMinor, tax, false)
}

function fromGiven(priceMinor: number, tax: Ratio, inside: boolean): Result<Reached, PricingProblem> {
  const added = salesTax(priceMinor, tax)
  if (!added.ok) return added
  return ok({ priceMinor, shownMinor: inside ? priceMinor + added.value : priceMinor, taxMinor: added.value })
}

/** With tax inside, what the buyer sees is the amount that is charged, so the tax is the rest of it. */
function fromShown(shownMinor: number, tax: Ratio): Result<Reached, PricingProblem> {
  const net = netFromGross(shownMinor, tax)
  return net.ok ? ok({ priceMinor: net.value, shownMinor, taxMinor: shownMinor - net.value }) : net
}

function priced(input: WayInput, reached: Reached): Result<PricedWay, PricingProblem> {
  const { way, cost, quantity } = input
  const { priceMinor } = reached
  const feesMinor = feesOf(input, priceMinor)
  const posting = postingOf(input)
  const postedMinor = way.postageCostMinor + posting.totalMinor
  const spentMinor = cost.totalMinor + postedMinor
  const profitMinor = priceMinor + way.postageChargedMinor - spentMinor - feesMinor
  // The batch's own cost, not the rounded unit's times its number: no minor unit is lost or made.
  const takenMinor = priceMinor + way.postageChargedMinor - postedMinor - feesMinor
  const batchProfitMinor = takenMinor * quantity - cost.batchMinor - way.fixedPerBatchMinor
  const contributionMinor = profitMinor + cost.toolWearMinor
  const fixedMinor = way.fixedPerBatchMinor + input.toolsMinor
  const units = unitsToPay(fixedMinor, contributionMinor)
  const workedS = cost.workedS + (way.postPerUnitS ?? 0) * quantity
  const safety = units === null ? null : marginOfSafety(quantity, units)
  return ok({
    wayId: way.id,
    name: way.name,
    ...reached,
    feesMinor,
    postingMinor: posting.totalMinor,
    profitMinor,
    batchProfitMinor,
    ...keptShares(profitMinor, priceMinor, spentMinor),
    profitPerHourMinor: perHour(batchProfitMinor, workedS),
    earningPerHourMinor: perHour(batchProfitMinor + cost.batch.labourMinor + posting.labourMinor * quantity, workedS),
    breakEvenUnits: units,
    feeBreakEvenUnits: unitsToPay(way.fixedPerBatchMinor, profitMinor),
    fixedMinor,
    toolsMinor: input.toolsMinor,
    contributionMinor,
    safetyShare: safety?.ok === true ? safety.value : null
  })
}

/** Profit as a share of the price and of what was spent. */
const keptShares = (profit: number, price: number, spent: number): Pick<WayPrice, 'marginShare' | 'markupShare'> => ({
  marginShare: ratioToNumber(ratio(profit, price)),
  markupShare: spent === 0 ? null : ratioToNumber(ratio(profit, spent))
})

/** Fees of one sale: the share on the price (and on postage and tax where the place of sale takes it so) and the fixed fee. */
function feesOf({ way, setup }: WayInput, priceMinor: number): number {
  const tax = shareOf(way.feeOnTax && setup.taxKind !== 'none' ? setup.taxPercent : 0)
  const share = feeOnPrice({ feeShare: shareOf(way.feePercent), feeTaxShare: tax })
  const base = ratio(priceMinor + (way.feeOnPostage ? way.postageChargedMinor : 0))
  return roundRatio(addRatio(multiplyRatio(share, base), ratio(way.fixedFeeMinor)), 'half-up')
}

/** Units that pay for a fixed cost; null where each brings nothing towards it. */
function unitsToPay(fixedMinor: number, eachMinor: number): number | null {
  const price = ratio(Math.max(0, eachMinor))
  const even = breakEven({ price, variableCost: ZERO, fixedCost: ratio(fixedMinor), targetProfit: ZERO })
  return even.ok ? even.value.units : null
}

const perHour = (minor: number, seconds: number): number | null =>
  seconds > 0 ? roundRatio(multiplyRatio(ratio(minor), perSecond(seconds)), 'half-up') : null

const perSecond = (seconds: number): Ratio => {
  const time = ratioFromDecimal(seconds)
  return ratio(3600n * time.den, time.num)
}

function fieldOf(way: WayOfSelling, problem: PricingProblem): string {
  const field = problem.where?.field ?? 'feePercent'
  return field === 'marginPercent' ? 'pricing.marginPercent' : `pricing.ways.${way.id}.${field}`
}

function badWay({ way, setup, quantity, toolsMinor }: WayInput): PricingProblem | null {
  const at = (field: string) => `pricing.ways.${way.id}.${field}`
  const amounts = ['fixedFeeMinor', 'postageChargedMinor', 'postageCostMinor', 'fixedPerBatchMinor'] as const
  return firstProblem([
    outside('quantity', quantity, 1, 10_000),
    outside('toolsMinor', toolsMinor, 0, MOST_AMOUNT),
    outside(at('feePercent'), way.feePercent, 0, 100),
    outside(at('postPerUnitS'), way.postPerUnitS ?? 0, 0, 1_000_000),
    ...amounts.map((field) => outsideWhole(at(field), way[field], 0)),
    outsideWhole(at('givenPriceMinor'), way.givenPriceMinor ?? 1, 1),
    outside('pricing.marginPercent', setup.marginPercent, 0, 100),
    outside('pricing.taxPercent', setup.taxPercent, 0, 100),
    outsideWhole('pricing.priceEnding.everyMinor', setup.priceEnding.everyMinor, 1),
    outsideWhole('pricing.priceEnding.endsWithMinor', setup.priceEnding.endsWithMinor, 0)
  ])
}

/** A whole number of minor units; a broken one is out of range, with the bounds of what is asked. */
function outsideWhole(field: string, value: number, least: number): PricingProblem | null {
  const off = outside(field, value, least, MOST_AMOUNT)
  if (off !== null || Number.isInteger(value)) return off
  const figures = { what: field, value, least: Math.floor(value), most: Math.ceil(value) }
  return { code: 'out-of-range', figures, where: { field } }
}
