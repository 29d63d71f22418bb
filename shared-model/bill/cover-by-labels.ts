import type { PackMode } from './pack-modes'

/** Most part covers held at a time. */
export const MOST_LABELS = 200_000

/**
 * The same cover as `coverBySteps`, for few large packs of sizes with a fine common step (pounds beside kilograms): the part
 * covers that the offers so far can make, without those that cover less for more. Least cost first, then least amount.
 *
 * A part cover is dropped only where another covers at least as much for strictly less, so that ties still end on the least
 * amount. null where more than `MOST_LABELS` would have to be held.
 *
 * @source exact-packs
 */
export function coverByLabels(steps: number, offers: readonly (readonly PackMode[])[]): readonly number[] | null {
  if (offers.some((modes) => steps / (modes[0]?.steps ?? 1) > MOST_LABELS)) return null
  let labels: readonly Label[] = [{ amount: 0, cost: 0, packs: 0, before: null }]
  for (const modes of offers) {
    const more: Label[] = []
    for (const label of labels) {
      more.push({ ...label, packs: 0, before: label })
      for (const packs of countsOf(modes, steps - label.amount)) {
        const amount = label.amount + packs * (modes[0]?.steps ?? 0)
        more.push({ amount, cost: label.cost + packs * priceOf(modes, packs), packs, before: label })
        if (more.length > MOST_LABELS * 10) return null
      }
    }
    labels = undominated(more, steps)
    if (labels.length > MOST_LABELS) return null
  }
  const best = labels.find((label) => label.amount >= steps)
  return best === undefined ? null : countsBack(best)
}

interface Label {
  readonly amount: number
  readonly cost: number
  /** Packs of the offer last looked at. */
  readonly packs: number
  readonly before: Label | null
}

/** Numbers of packs worth a try: from the least order until the rest is covered, and the starts of price breaks above that. */
function countsOf(modes: readonly PackMode[], rest: number): readonly number[] {
  const size = modes[0]?.steps ?? 0
  if (rest <= 0 || size === 0) return []
  const least = Math.min(...modes.map((mode) => mode.from))
  const most = Math.max(least, Math.ceil(rest / size))
  const upTo = Array.from({ length: most - least + 1 }, (_, index) => least + index)
  return [...upTo, ...modes.map((mode) => mode.from).filter((from) => from > most)]
}

const priceOf = (modes: readonly PackMode[], packs: number): number =>
  Math.min(...modes.filter((mode) => mode.from <= packs).map((mode) => mode.priceMinor))

/** The one best full cover and the part covers that nothing beats, largest amount first. */
function undominated(labels: readonly Label[], steps: number): readonly Label[] {
  const sorted = [...labels].sort((a, b) => b.amount - a.amount || a.cost - b.cost)
  let full: Label | null = null
  for (const label of sorted) {
    const better = full === null || label.cost < full.cost || (label.cost === full.cost && label.amount < full.amount)
    if (label.amount >= steps && better) full = label
  }
  const kept: Label[] = full === null ? [] : [full]
  let cheapest = full?.cost ?? Number.POSITIVE_INFINITY
  let last = -1
  for (const label of sorted) {
    if (label.amount >= steps || label.amount === last || label.cost > cheapest) continue
    kept.push(label)
    cheapest = Math.min(cheapest, label.cost)
    last = label.amount
  }
  return kept
}

function countsBack(label: Label): readonly number[] {
  const counts: number[] = []
  for (let at: Label | null = label; at?.before != null; at = at.before) counts.unshift(at.packs)
  return counts
}
