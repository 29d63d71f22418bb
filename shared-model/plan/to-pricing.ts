import type { BenchPlan, OperationKind } from '../bench'
import type { Bill } from '../bill'
import type { BarsPlanned } from '../cutting'
import type { Workshop } from '../design'
import type { PriceInput, ToolUse, UnitOutside } from '../pricing'
import type { SillLoad } from '../structure'
import type { ChannelPlan } from './plan'

/** What pricing needs to know of a plan so far. */
export const priceInputOf = (
  workshop: Workshop,
  plan: {
    readonly bench: BenchPlan
    readonly bill: Bill
    readonly bars: BarsPlanned
    readonly load: SillLoad
    readonly channels: readonly ChannelPlan[]
  }
): PriceInput => ({
  currency: workshop.currency,
  setup: workshop.pricing,
  bill: plan.bill,
  work: { setUpS: plan.bench.setUpS, runS: plan.bench.runS },
  tools: toolsOf(workshop, plan.bench),
  unit: unitOutside(plan.channels, plan.load)
})

/** Operations in which a hole saw cuts all the way: a score is the first half of one. */
const HOLES: ReadonlySet<OperationKind> = new Set(['saw', 'saw-inner', 'saw-through', 'cut-collar-blank', 'bore-cup'])

const toolsOf = (workshop: Workshop, bench: BenchPlan): readonly ToolUse[] =>
  workshop.saws.flatMap(({ saw, priceMinor, salvageMinor, lifeHoles }): readonly ToolUse[] => {
    const uses = bench.steps
      .filter(({ kind, toolId }) => HOLES.has(kind) && toolId === saw.id)
      .reduce((sum, { count }) => sum + count, 0)
    return uses === 0 ? [] : [{ toolId: saw.id, name: saw.name, priceMinor, salvageMinor, lifeUses: lifeHoles, uses }]
  })

/** One unit as it is packed: its channels side by side, empty. */
const unitOutside = (channels: readonly ChannelPlan[], load: SillLoad): UnitOutside | null => {
  if (channels.length === 0) return null
  const layouts = channels.map(({ layout }) => layout)
  const longMm = Math.max(...layouts.map(({ overallLengthMm }) => overallLengthMm))
  const wideMm = layouts.reduce((sum, { section }) => sum + section.widthMm, 0)
  const highMm = Math.max(...layouts.map(({ section }) => section.heightMm))
  return { sidesMm: [longMm, wideMm, highMm], massG: load.emptyG }
}
