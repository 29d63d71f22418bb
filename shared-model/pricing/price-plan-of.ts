import { minorUnitDigits } from '../units'
import type { PricingFinding, PricingProblem } from './codes'
import { costOfInput, type InputCost } from './cost-of-input'
import { parcelOf } from './parcel'
import type { PriceInput } from './price-input'
import type { ParcelSize, PricePlan, WayPrice } from './price-plan'
import { sensitivity } from './sensitivity'
import { batchCrossings } from './stepped-profit'
import { wayPrice } from './way-price'

export interface Priced {
  readonly plan: PricePlan
  readonly findings: readonly PricingFinding[]
  readonly problems: readonly PricingProblem[]
}

/**
 * The whole of pricing for one batch: cost of a unit, every way of selling side by side, sensitivity, parcel. What cannot be
 * worked out is null or left out and stands among the problems; a bill with a missing price leaves the cost null.
 */
export function pricePlan(input: PriceInput): Priced {
  const findings: PricingFinding[] = []
  const problems: PricingProblem[] = []
  const parcel = parcelIn(input, findings, problems)
  const digits = minorUnitDigits(input.currency)
  const money = moneyProblem(input, digits)
  if (money !== null) return { plan: empty(input, digits ?? 0, parcel), findings, problems: [...problems, money] }
  const cost = costOfInput(input)
  if (cost === null) return { plan: empty(input, digits ?? 0, parcel), findings, problems }
  if (!cost.ok) return { plan: empty(input, digits ?? 0, parcel), findings, problems: [...problems, cost.problem] }
  findings.push(...cost.value.findings)
  const ways = waysOf(input, cost.value, findings, problems)
  const first = ways[0]
  const plan: PricePlan = {
    ...empty(input, digits ?? 0, parcel),
    cost: cost.value.cost,
    ways,
    sensitivity: first === undefined ? [] : sensitivity(input, first, 10 ** (digits ?? 0))
  }
  return { plan, findings, problems }
}

function waysOf(
  input: PriceInput,
  { cost, toolsMinor }: InputCost,
  findings: PricingFinding[],
  problems: PricingProblem[]
): readonly WayPrice[] {
  const { setup, bill } = input
  return setup.ways.flatMap((way) => {
    const price = wayPrice({ way, cost, quantity: bill.quantity, toolsMinor, setup })
    const where = { field: `pricing.ways.${way.id}.givenPriceMinor` }
    if (!price.ok) {
      problems.push(price.problem)
      return []
    }
    const { profitMinor, contributionMinor, breakEvenUnits } = price.value
    if (breakEvenUnits === null) {
      problems.push({ code: 'contribution-not-positive', figures: { what: way.name, contributionMinor }, where })
    }
    if (profitMinor < 0) {
      const figures = { way: way.name, lossMinor: -profitMinor }
      findings.push({ code: 'sells-at-a-loss', severity: 'warn', figures, where })
    }
    const stepped = { way, price: price.value, cost, quantity: bill.quantity }
    return [{ ...price.value, crossings: batchCrossings(stepped) }]
  })
}

function parcelIn(input: PriceInput, findings: PricingFinding[], problems: PricingProblem[]): ParcelSize | null {
  if (input.unit === null) return null
  const parcel = parcelOf(input.unit, input.setup.parcel)
  if (parcel.ok) findings.push(...parcel.value.findings)
  else problems.push(parcel.problem)
  return parcel.ok ? parcel.value.parcel : null
}

function moneyProblem(input: PriceInput, digits: number | undefined): PricingProblem | null {
  const { currency, bill } = input
  const where = { field: 'currency' }
  if (digits === undefined) return { code: 'currency-unknown', figures: { currency }, where }
  if (bill.currency === currency) return null
  return { code: 'currency-differs', figures: { found: bill.currency, wanted: currency }, where }
}

const empty = (input: PriceInput, digits: number, parcel: ParcelSize | null): PricePlan => ({
  currency: input.currency,
  digits,
  cost: null,
  ways: [],
  ladder: [],
  sensitivity: [],
  parcel
})
