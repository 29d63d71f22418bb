import type { PackMode } from './pack-modes'

/**
 * How many packs of each offer cover so many steps, least cost first, then least amount: a table over the steps still to cover.
 *
 * f_k(t) = least cost of covering t with the first k offers. Each offer is a set of modes (at least `from` packs, each at one
 * price): m(t) = min(f_(k-1)(t - from * size) + from * price, m(t - size) + price), f_k(t) = min(f_(k-1)(t), m(t)).
 *
 * @source exact-packs
 */
export function coverBySteps(steps: number, offers: readonly (readonly PackMode[])[]): readonly number[] {
  let cost = new Float64Array(steps + 1).fill(Number.POSITIVE_INFINITY)
  let amount = new Float64Array(steps + 1).fill(Number.POSITIVE_INFINITY)
  cost[0] = 0
  amount[0] = 0
  const taken: Int32Array[] = []
  for (const modes of offers) {
    const next = { cost: cost.slice(), amount: amount.slice(), packs: new Int32Array(steps + 1) }
    for (const mode of modes) tryMode(mode, { cost, amount }, next)
    cost = next.cost
    amount = next.amount
    taken.push(next.packs)
  }
  return readBack(steps, offers, taken)
}

interface Best {
  readonly cost: Float64Array
  readonly amount: Float64Array
}

function tryMode(mode: PackMode, before: Best, next: Best & { readonly packs: Int32Array }): void {
  const size = mode.steps
  const last = next.cost.length - 1
  const within = {
    cost: new Float64Array(last + 1),
    amount: new Float64Array(last + 1),
    packs: new Int32Array(last + 1)
  }
  for (let t = 0; t <= last; t += 1) {
    const start = Math.max(0, t - mode.from * size)
    let cost = (before.cost[start] ?? 0) + mode.from * mode.priceMinor
    let amount = (before.amount[start] ?? 0) + mode.from * size
    let packs = mode.from
    if (t > mode.from * size) {
      const more = t - size
      const moreCost = (within.cost[more] ?? 0) + mode.priceMinor
      const moreAmount = (within.amount[more] ?? 0) + size
      if (moreCost < cost || (moreCost === cost && moreAmount < amount)) {
        cost = moreCost
        amount = moreAmount
        packs = (within.packs[more] ?? 0) + 1
      }
    }
    within.cost[t] = cost
    within.amount[t] = amount
    within.packs[t] = packs
    const held = next.cost[t] ?? 0
    if (cost < held || (cost === held && amount < (next.amount[t] ?? 0))) {
      next.cost[t] = cost
      next.amount[t] = amount
      next.packs[t] = packs
    }
  }
}

function readBack(
  steps: number,
  offers: readonly (readonly PackMode[])[],
  taken: readonly Int32Array[]
): readonly number[] {
  const counts = offers.map(() => 0)
  let t = steps
  for (let k = offers.length - 1; k >= 0; k -= 1) {
    const packs = taken[k]?.[t] ?? 0
    counts[k] = packs
    t = Math.max(0, t - packs * (offers[k]?.[0]?.steps ?? 0))
  }
  return counts
}
