import type { Say } from '../../shared-model/words'

/** The air gap as a person says it: the gap above the solution, or how deep the cup stands in it; never a negative length. */
export function gapWords(gapMm: number, say: Pick<Say, 'length'>): { readonly name: string; readonly value: string } {
  if (say.length(Math.abs(gapMm)) === say.length(0)) return { name: 'Air gap', value: 'none, the cup touches' }
  if (gapMm < 0) return { name: 'Cup in solution', value: `${say.length(-gapMm)} deep` }
  return { name: 'Air gap', value: say.length(gapMm) }
}

/** The same in a word or two, for a dimension line. */
export const gapMark = (gapMm: number, say: Pick<Say, 'length'>): string =>
  gapMm < 0 ? `${say.length(-gapMm)} deep` : `gap ${say.length(gapMm)}`
