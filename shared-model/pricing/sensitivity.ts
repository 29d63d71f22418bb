import { costOfInput } from './cost-of-input'
import { shareOf } from './percent'
import type { PriceInput } from './price-input'
import type { Sensitivity, SensitivityInput, WayPrice } from './price-plan'
import { netFromGross } from './sales-tax'
import type { WayOfSelling } from './selling'
import { wayPrice } from './way-price'

/**
 * What one unit more of each input does to the batch's profit in one way of selling, largest first. Each is worked out again
 * in full with the price the buyer sees held. An input that cannot go up by one (a fee of 100 %) is left out.
 *
 * @param majorMinor minor units in one unit of the currency (100 for two digits)
 */
export function sensitivity(input: PriceInput, now: WayPrice, majorMinor: number): readonly Sensitivity[] {
  const way = input.setup.ways.find((one) => one.id === now.wayId)
  if (way === undefined) return []
  const held: Case = { input, way: { ...way, givenPriceMinor: now.priceMinor } }
  const costNow = costOfInput(input)
  // Most changes leave the cost as it is: it is worked out again only where what it follows from is another.
  const profitOf = ({ input: changed, way: to }: Case) =>
    batchProfit(changed, to, changed === input ? costNow : costOfInput(changed))
  const base = profitOf(held)
  if (base === null) return []
  const rows = changes(held, now, majorMinor).flatMap((change): readonly Sensitivity[] => {
    const profit = profitOf(change.to)
    return profit === null ? [] : [{ input: change.input, by: change.by, changeMinor: profit - base }]
  })
  return rows.sort((a, b) => Math.abs(b.changeMinor) - Math.abs(a.changeMinor))
}

interface Case {
  readonly input: PriceInput
  readonly way: WayOfSelling
}

interface Change {
  readonly input: SensitivityInput
  readonly by: Sensitivity['by']
  readonly to: Case
}

function changes(held: Case, now: WayPrice, major: number): readonly Change[] {
  const { input, way } = held
  const { setup, bill, work } = input
  const money = (name: SensitivityInput, to: Case): Change => ({ input: name, by: 'currency-unit', to })
  const percent = (name: SensitivityInput, to: Case): Change => ({ input: name, by: 'percentage-point', to })
  const withSetup = (part: Partial<PriceInput['setup']>): Case => ({
    way,
    input: { ...input, setup: { ...setup, ...part } }
  })
  const withWay = (part: Partial<WayOfSelling>): Case => ({ input, way: { ...way, ...part } })
  const material = { ...bill, usedMinor: bill.usedMinor === null ? null : bill.usedMinor + major * bill.quantity }
  const minutes = { ...work, runS: work.runS + 60 * bill.quantity }
  const rows: Change[] = [
    money('price', withWay({ givenPriceMinor: now.priceMinor + major })),
    money('material', { way, input: { ...input, bill: material } }),
    money('hourly-rate', withSetup({ hourlyRateMinor: setup.hourlyRateMinor + major })),
    money('overhead-rate', withSetup({ overheadPerHourMinor: setup.overheadPerHourMinor + major })),
    { input: 'work-time', by: 'minute', to: { way, input: { ...input, work: minutes } } },
    percent('fee-share', withWay({ feePercent: way.feePercent + 1 })),
    money('fixed-fee', withWay({ fixedFeeMinor: way.fixedFeeMinor + major })),
    money('postage-cost', withWay({ postageCostMinor: way.postageCostMinor + major })),
    money('postage-charged', withWay({ postageChargedMinor: way.postageChargedMinor + major })),
    percent('scrap-share', withSetup({ scrapPercent: setup.scrapPercent + 1 })),
    money('batch-fee', withWay({ fixedPerBatchMinor: way.fixedPerBatchMinor + major }))
  ]
  return [...rows, ...taxChange(held, now)]
}

/** With tax inside, a higher rate leaves less of the same shown price; on top, the buyer pays it. */
function taxChange({ input, way }: Case, now: WayPrice): readonly Change[] {
  const { setup } = input
  if (setup.taxKind === 'none' || setup.taxPercent + 1 > 100) return []
  const taxPercent = setup.taxPercent + 1
  const net = netFromGross(now.shownMinor, shareOf(setup.taxKind === 'value-added-inside' ? taxPercent : 0))
  if (!net.ok) return []
  const to = { way: { ...way, givenPriceMinor: net.value }, input: { ...input, setup: { ...setup, taxPercent } } }
  return [{ input: 'tax-share', by: 'percentage-point', to }]
}

function batchProfit(input: PriceInput, way: WayOfSelling, cost: ReturnType<typeof costOfInput>): number | null {
  if (cost === null || !cost.ok) return null
  const { setup, bill } = input
  const price = wayPrice({
    way,
    cost: cost.value.cost,
    quantity: bill.quantity,
    toolsMinor: cost.value.toolsMinor,
    setup
  })
  return price.ok ? price.value.batchProfitMinor : null
}
