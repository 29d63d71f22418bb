import { mutatedDesigns, mutatedWorkshops } from './mutated'
import { randomDesigns } from './random-designs'
import type { Tally } from './tally'

/** A proof that is done in shares, each with a seed of its own, so that the outcome does not hang on who does which. */
export interface SharedProof {
  readonly full: number
  readonly shareOf: number
  readonly share: (seed: number, runs: number) => Tally
}

export const SHARED_PROOFS: Readonly<Record<string, SharedProof>> = {
  'mutated-designs': { full: 160_000, shareOf: 1_000, share: mutatedDesigns },
  'mutated-workshops': { full: 40_000, shareOf: 1_000, share: mutatedWorkshops },
  'random-designs': { full: 100_000, shareOf: 500, share: randomDesigns }
}

export interface Share {
  readonly seed: number
  readonly runs: number
}

/** The shares of a proof at so many runs: the first at the seed itself, each next one further by a prime. */
export function sharesOf({ shareOf }: SharedProof, seed: number, runs: number): readonly Share[] {
  return Array.from({ length: Math.ceil(runs / shareOf) }, (_, k) => ({
    seed: (seed + k * 7_919) >>> 0,
    runs: Math.min(shareOf, runs - k * shareOf)
  }))
}
