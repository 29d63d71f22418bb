import type { Design, Workshop } from '../../shared-model/design'
import type { Budget } from '../../shared-model/outcome'
import { evaluate, type Plan } from '../../shared-model/plan'
import type { Bought, LadderEvaluation } from '../../shared-model/pricing'

/** What a batch of so many comes to, its bars, packs, drilling order and price worked out anew for that size. */
export const batchAt =
  (design: Design, workshop: Workshop, on: string, budget: Budget) =>
  (units: number): LadderEvaluation =>
    batchOf(evaluate({ ...design, quantity: units }, workshop, on, { budget }))

/** A plan's row of the ladder; the price is that of the first way of selling, before tax. */
export const batchOf = ({ pricing, cuts, bill, bench }: Plan): LadderEvaluation => ({
  unitCostMinor: pricing.cost?.totalMinor ?? null,
  priceMinor: pricing.ways[0]?.priceMinor ?? null,
  bars: cuts.reduce((sum, { bars }) => sum + bars.filter(({ isOffcut }) => !isOffcut).length, 0),
  packs: bill.lines
    .filter(({ need }) => need !== 'stock')
    .flatMap(({ packs }) => packs)
    .reduce((sum, { packs }) => sum + packs, 0),
  bought: bill.lines.flatMap(boughtOf),
  toolChanges: bench.toolChanges,
  workedS: pricing.cost?.workedS ?? bench.workedS
})

const boughtOf = ({ need, name, packs }: Plan['bill']['lines'][number]): readonly Bought[] =>
  packs.map((pack) => ({
    offerId: pack.offerId,
    kind: need === 'stock' ? 'bar' : 'pack',
    name: pack.name === '' ? name : pack.name,
    size: pack.packSize,
    count: pack.packs
  }))
