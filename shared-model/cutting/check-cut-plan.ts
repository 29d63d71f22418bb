/**
 * Checks a plan against its instance piece by piece, with nothing of the solver's: every piece once, every bar long
 * enough with its kerfs and trim, no more bars than there are, one-lot groups from one lot; and works the cost out again.
 */
import { type CutInstance, type CutPattern, worthLeft } from './instance'

export interface PlanCheck {
  readonly valid: boolean
  /** Cost of the bars less the worth of what is left of them, worked out here. */
  readonly cost: number
  readonly bars: number
  /** What is wrong; empty when valid. */
  readonly faults: readonly PlanFault[]
}

export interface PlanFault {
  readonly kind: 'bar-too-full' | 'too-many-bars' | 'pieces-missing' | 'pieces-too-many' | 'lots-mixed' | 'not-whole'
  /** Place of the bar's pattern, the stock, the demand or the group that is at fault. */
  readonly at: number
  readonly amount: number
}

export const checkCutPlan = (instance: CutInstance, patterns: readonly CutPattern[]): PlanCheck => {
  const faults: PlanFault[] = []
  const cut = instance.demand.map(() => 0)
  const used = instance.stock.map(() => 0)
  const lots = new Map<number, number>()
  let cost = 0
  let bars = 0
  patterns.forEach((pattern, at) => {
    const bar = instance.stock[pattern.stock]
    if (!bar || !Number.isSafeInteger(pattern.times) || pattern.times < 1) {
      faults.push({ kind: 'not-whole', at, amount: pattern.times })
      return
    }
    let room = bar.length - bar.trim
    let left = room
    for (const { demand, qty } of pattern.pieces) {
      const piece = instance.demand[demand]
      if (!piece || !Number.isSafeInteger(qty) || qty < 0) {
        faults.push({ kind: 'not-whole', at, amount: qty })
        continue
      }
      cut[demand] = (cut[demand] ?? 0) + qty * pattern.times
      for (let n = 0; n < qty; n++) {
        // Each piece comes off what is left; the cut after it takes a kerf, or what remains when that is less.
        if (piece.length > room) faults.push({ kind: 'bar-too-full', at, amount: piece.length - room })
        room = Math.max(0, room - piece.length - instance.kerf)
        left -= piece.length + instance.kerf
      }
      if (piece.lotGroup !== null && qty > 0) {
        const lot = lots.get(piece.lotGroup) ?? bar.lot
        if (lot !== bar.lot) faults.push({ kind: 'lots-mixed', at: piece.lotGroup, amount: bar.lot })
        lots.set(piece.lotGroup, lot)
      }
    }
    used[pattern.stock] = (used[pattern.stock] ?? 0) + pattern.times
    bars += pattern.times
    cost += pattern.times * (bar.cost - worthLeft(bar.keep, Math.max(0, left)))
  })
  instance.demand.forEach(({ qty }, at) => {
    const missing = qty - (cut[at] ?? 0)
    if (missing > 0) faults.push({ kind: 'pieces-missing', at, amount: missing })
    if (missing < 0) faults.push({ kind: 'pieces-too-many', at, amount: -missing })
  })
  instance.stock.forEach(({ count }, at) => {
    const beyond = count === null ? 0 : (used[at] ?? 0) - count
    if (beyond > 0) faults.push({ kind: 'too-many-bars', at, amount: beyond })
  })
  return { valid: faults.length === 0, cost, bars, faults }
}
