import type { Bill } from '../bill'
import { ok, type Result } from '../outcome'
import type { PricingFinding, PricingProblem } from './codes'
import type { PriceInput, ToolUse } from './price-input'
import type { UnitCost } from './price-plan'
import { unitCost } from './unit-cost'

export interface InputCost {
  readonly cost: UnitCost
  /** Price less salvage of the tools used: the fixed cost that break-even covers in place of their wear. */
  readonly toolsMinor: number
  readonly findings: readonly PricingFinding[]
}

/** The cost of the bill's batch; null while a price is missing. */
export function costOfInput(input: PriceInput): Result<InputCost, PricingProblem> | null {
  const { bill, setup, work, tools } = input
  if (bill.usedMinor === null) return null
  const cost = unitCost({
    quantity: bill.quantity,
    materialMinor: bill.usedMinor,
    cutListMinor: cutListOf(bill),
    restMinor: packRestOf(bill),
    work,
    tools,
    setup
  })
  if (!cost.ok) return cost
  return ok({ ...cost.value, toolsMinor: tools.reduce((sum, tool) => sum + wornOut(tool), 0) })
}

const isPlanned = (line: Bill['lines'][number]): boolean => line.need === 'stock' || line.need === 'sheet'

const cutListOf = (bill: Bill): number =>
  bill.lines.reduce((sum, line) => sum + (isPlanned(line) ? (line.usedMinor ?? 0) : 0), 0)

/** Rest of packs only: kept offcuts leave at their stated worth and are no rest of a pack. */
const packRestOf = (bill: Bill): number =>
  bill.lines.reduce((sum, line) => sum + (isPlanned(line) ? 0 : (line.restMinor ?? 0)), 0)

const wornOut = (tool: ToolUse): number =>
  tool.uses > 0 && tool.priceMinor !== null ? Math.max(0, tool.priceMinor - tool.salvageMinor) : 0
