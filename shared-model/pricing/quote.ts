import { failed, ok, type Result } from '../outcome'
import { type Ratio, splitTotal } from '../units'
import { firstProblem, MOST_AMOUNT, outside } from './bounds'
import type { PricingProblem } from './codes'
import { shareOf } from './percent'
import { netFromGross, salesTax } from './sales-tax'
import type { PricingSetup } from './selling'

/** What a buyer is offered. `eachMinor` is the price he sees: with tax inside it, before tax on top, or without. */
export interface QuoteItem {
  readonly what: string
  readonly count: number
  readonly eachMinor: number
}

export interface QuoteInput {
  readonly currency: string
  readonly items: readonly QuoteItem[]
  readonly postageMinor: number
  readonly taxKind: PricingSetup['taxKind']
  readonly taxPercent: number
  /** Bench time of the batch: worked, and waiting (cure, leak test). */
  readonly workedS: number
  readonly waitS: number
  readonly workHoursADay: number
}

export interface Quote {
  readonly currency: string
  readonly rows: readonly {
    readonly what: string
    readonly count: number
    readonly eachMinor: number
    readonly netMinor: number
    readonly taxMinor: number
    readonly totalMinor: number
  }[]
  readonly netMinor: number
  readonly taxMinor: number
  /** What the buyer pays. */
  readonly totalMinor: number
  readonly taxKind: PricingSetup['taxKind']
  readonly taxPercent: number
  /** Days until it is made: worked time in days of so many hours, and waits around the clock, each rounded up. */
  readonly leadDays: number
}

/** A quote for a buyer: what, how many, price, tax, lead time; no cost, margin or supplier. The tax of the whole is split over the rows by largest remainder. */
export function quote(input: QuoteInput): Result<Quote, PricingProblem> {
  const problem = badQuote(input)
  if (problem !== null) return failed(problem)
  const posted = input.postageMinor > 0 ? [{ what: 'Postage', count: 1, eachMinor: input.postageMinor }] : []
  const items = [...input.items, ...posted]
  const amounts = items.map((item) => item.count * item.eachMinor)
  const sum = amounts.reduce((a, b) => a + b, 0)
  const tax = taxOf(input, sum, shareOf(input.taxKind === 'none' ? 0 : input.taxPercent))
  if (!tax.ok) return tax
  const taxes = splitTotal(amounts, tax.value)
  const inside = input.taxKind === 'value-added-inside'
  const rows = items.map((item, index) => {
    const [amount, taxMinor] = [amounts[index] ?? 0, taxes[index] ?? 0]
    const netMinor = inside ? amount - taxMinor : amount
    return { ...item, netMinor, taxMinor, totalMinor: netMinor + taxMinor }
  })
  const netMinor = inside ? sum - tax.value : sum
  return ok({
    currency: input.currency,
    rows,
    netMinor,
    taxMinor: tax.value,
    totalMinor: netMinor + tax.value,
    taxKind: input.taxKind,
    taxPercent: input.taxPercent,
    leadDays: Math.ceil(input.workedS / (input.workHoursADay * 3600)) + Math.ceil(input.waitS / 86_400)
  })
}

function taxOf(input: QuoteInput, sum: number, rate: Ratio): Result<number, PricingProblem> {
  if (input.taxKind !== 'value-added-inside') return salesTax(sum, rate)
  const net = netFromGross(sum, rate)
  return net.ok ? ok(sum - net.value) : net
}

const badQuote = (input: QuoteInput): PricingProblem | null =>
  firstProblem([
    outside('items', input.items.length, 1, 1000),
    ...input.items.map((item) => outside('count', Number.isInteger(item.count) ? item.count : Number.NaN, 1, 10_000)),
    ...input.items.map((item) =>
      outside('eachMinor', Number.isInteger(item.eachMinor) ? item.eachMinor : Number.NaN, 0, 1e9)
    ),
    outside('postageMinor', Number.isInteger(input.postageMinor) ? input.postageMinor : Number.NaN, 0, 1e9),
    outside('taxPercent', input.taxPercent, 0, 100),
    outside('workedS', input.workedS, 0, MOST_AMOUNT),
    outside('waitS', input.waitS, 0, MOST_AMOUNT),
    outside('workHoursADay', input.workHoursADay, 1, 24)
  ])
