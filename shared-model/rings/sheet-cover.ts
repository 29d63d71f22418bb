/** A sheet kind as the cover sees it: what one costs, how much one holds, how many there are. */
export interface CoverKind {
  readonly cost: number
  readonly holds: number
  /** null: no limit. */
  readonly count: number | null
}

export interface Cover {
  readonly cost: number
  /** How many of each kind. */
  readonly taken: readonly number[]
}

/**
 * The cheapest choice of sheets that together hold `demand` (whole numbers), by dynamic programming over what is still
 * to be held: exact. null: all sheets together do not hold it.
 */
export const leastCover = (kinds: readonly CoverKind[], demand: number): Cover | null => {
  if (demand <= 0) return { cost: 0, taken: kinds.map(() => 0) }
  let costs = new Array<number>(demand + 1).fill(Number.POSITIVE_INFINITY)
  costs[0] = 0
  const choices: Int32Array[] = []
  for (const kind of kinds) {
    const next = [...costs]
    const taken = new Int32Array(demand + 1)
    const holds = Math.floor(kind.holds)
    const enough = holds <= 0 ? 0 : Math.ceil(demand / holds)
    const most = Math.min(kind.count ?? enough, enough)
    if (most === enough && holds > 0) {
      takeAny(next, taken, holds, kind.cost)
      costs = next
      choices.push(taken)
      continue
    }
    for (let held = 1; held <= demand; held++) {
      for (let n = 1; n <= most; n++) {
        const cost = (costs[Math.max(0, held - n * holds)] as number) + n * kind.cost
        if (cost < (next[held] as number)) {
          next[held] = cost
          taken[held] = n
        }
        if (n * holds >= held) break
      }
    }
    costs = next
    choices.push(taken)
  }
  const cost = costs[demand] as number
  if (!Number.isFinite(cost)) return null
  const taken = kinds.map(() => 0)
  let held = demand
  for (let k = kinds.length - 1; k >= 0; k--) {
    const n = (choices[k] as Int32Array)[held] as number
    taken[k] = n
    held = Math.max(0, held - n * Math.floor(kinds[k]?.holds ?? 0))
  }
  return { cost, taken }
}

/** As many of one kind as wished: each holding's cost from the one that lacks a sheet. */
const takeAny = (costs: number[], taken: Int32Array, holds: number, cost: number): void => {
  for (let held = 1; held < costs.length; held++) {
    const from = Math.max(0, held - holds)
    const more = (costs[from] as number) + cost
    if (more >= (costs[held] as number)) continue
    costs[held] = more
    taken[held] = (taken[from] as number) + 1
  }
}
