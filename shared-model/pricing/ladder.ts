import { failed, ok, type Result } from '../outcome'
import { firstProblem, outside } from './bounds'
import type { PricingProblem } from './codes'
import type { Bought, LadderStep } from './price-plan'

/** What a batch of one size comes to, re-solved from its cut plan to its price. */
export type LadderEvaluation = Omit<LadderStep, 'units' | 'opens' | 'opensStock' | 'opensPack'>

/** Batch sizes when the grower names none. */
export const LADDER_SIZES: readonly number[] = [1, 2, 4, 6, 8, 12, 24]

/**
 * The steps of a ladder of batch sizes, one at a time as they are asked for, so that a host can show the first at once and stop
 * between two. Sizes go up, each once.
 */
export function* ladderSteps(
  sizes: readonly number[],
  evaluateAt: (units: number) => LadderEvaluation
): Generator<LadderStep, void, undefined> {
  let before: LadderEvaluation | null = null
  for (const units of [...new Set(sizes)].sort((a, b) => a - b)) {
    const now = evaluateAt(units)
    yield ladderStep(units, now, before)
    before = now
  }
}

/** All steps of the ladder; sizes are whole numbers from 1 to 10 000, at most 100 of them. */
export function ladder(
  sizes: readonly number[],
  evaluateAt: (units: number) => LadderEvaluation
): Result<readonly LadderStep[], PricingProblem> {
  const problem = ladderProblem(sizes)
  return problem === null ? ok([...ladderSteps(sizes, evaluateAt)]) : failed(problem)
}

/** The first size that cannot be used; null: none. */
export const ladderProblem = (sizes: readonly number[]): PricingProblem | null =>
  firstProblem([
    outside('pricing.ladder', sizes.length, 0, 100),
    ...sizes.map((size, index) =>
      outside(`pricing.ladder.${index}`, Number.isInteger(size) ? size : Number.NaN, 1, 10_000)
    )
  ])

/** One step beside the one before it: which bars and packs it opens. The first opens nothing. */
const ladderStep = (units: number, now: LadderEvaluation, before: LadderEvaluation | null): LadderStep => {
  const opens = before === null ? [] : now.bought.flatMap((offer) => moreOf(offer, before.bought))
  const any = (kind: Bought['kind']): boolean => opens.some((offer) => offer.kind === kind)
  return { units, ...now, opens, opensStock: any('bar'), opensPack: any('pack') }
}

function moreOf(offer: Bought, before: readonly Bought[]): readonly Bought[] {
  const had = before.find(({ kind, offerId }) => kind === offer.kind && offerId === offer.offerId)?.count ?? 0
  return offer.count > had ? [{ ...offer, count: offer.count - had }] : []
}
