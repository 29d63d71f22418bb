/** The figures layouts are compared by. `more` is better for plants; less is better for the rest. */
export interface FitFigures {
  readonly plants: number
  /** Of one build; null where a price is missing. */
  readonly costMinor: number | null
  readonly leftOverMm: number
  /** Share of the user's own load limit, or the filled weight in grams where none is given. */
  readonly load: number
}

/**
 * Layouts that no other beats: none has at least as many plants, at most the cost per plant, stock left over and load,
 * and one of them better. Of equal layouts the first stays. Most plants first.
 */
export function notDominated<T extends FitFigures>(layouts: readonly T[]): readonly T[] {
  const kept = layouts.filter(
    (one, at) => !layouts.some((other, index) => index !== at && beats(other, one, index < at))
  )
  return kept.toSorted((a, b) => b.plants - a.plants || costPerPlant(a) - costPerPlant(b))
}

function beats(one: FitFigures, other: FitFigures, first: boolean): boolean {
  const gains = [
    one.plants - other.plants,
    costPerPlant(other) - costPerPlant(one),
    other.leftOverMm - one.leftOverMm,
    other.load - one.load
  ]
  if (gains.some((gain) => gain < 0)) return false
  return first || gains.some((gain) => gain > 0)
}

/** Cost per plant; unknown costs compare as equal. */
function costPerPlant({ costMinor, plants }: FitFigures): number {
  return costMinor === null ? 0 : costMinor / plants
}
