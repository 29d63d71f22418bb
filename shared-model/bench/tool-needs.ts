import type { DrillWork } from './drill-work'
import { type OrderedVisits, orderedVisits } from './ordered-visits'
import { isInTurn, type PieceKind } from './piece-kinds'

/** Which tools the pieces of a work need, tools a bit each in the order of their numbers. */
export interface ToolNeeds {
  /** One more than the mask of all tools. */
  readonly masks: number
  /** Tools that any piece needs. */
  readonly whole: number
  readonly setMasks: readonly number[]
  /** Pieces with no order of their own and none to wait for, by the tools they need. */
  readonly free: readonly { readonly mask: number; readonly count: number }[]
  readonly ordered: readonly OrderedVisits[]
}

export const toolNeeds = (
  work: DrillWork,
  kinds: readonly PieceKind[],
  sets: readonly (readonly number[])[]
): ToolNeeds => {
  const used = [...new Set(sets.flat())].sort((a, b) => a - b)
  const maskOf = (tools: readonly number[]) => tools.reduce((mask, tool) => mask | (1 << used.indexOf(tool)), 0)
  const counts = new Map<number, number>()
  const ordered: OrderedVisits[] = []
  let whole = 0
  for (const kind of kinds) {
    if (kind.count === 0) continue
    const mask = maskOf(used.filter((tool) => (kind.turns[tool]?.[0] ?? 0) > 0))
    whole |= mask
    if (isInTurn(kind)) ordered.push(orderedVisits(work, kind, sets))
    else counts.set(mask, (counts.get(mask) ?? 0) + kind.count)
  }
  const free = [...counts].map(([mask, count]) => ({ mask, count }))
  return { masks: 1 << used.length, whole, setMasks: sets.map(maskOf), free, ordered }
}

export const bits = (mask: number): number => {
  let count = 0
  for (let rest = mask; rest; rest &= rest - 1) count += 1
  return count
}
