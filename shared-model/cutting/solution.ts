import type { BoundCertificate } from './certificate'
import type { Grown } from './grown'
import type { CutPattern } from './instance'
import type { BarsFound, Pattern } from './pattern'

/** A plan for an instance with what is known about how good it is. */
export interface BarSolution {
  readonly patterns: readonly CutPattern[]
  /** Cost of the bars less the worth of what is left of them. */
  readonly cost: number
  /** No plan costs less. */
  readonly lowerBound: number
  readonly proven: boolean
  /** How the bound is shown: by the certificate alone, or by a search through all plans that could beat it. */
  readonly shownBy: 'certificate' | 'search'
  readonly certificate: BoundCertificate | null
  /** Demand that the counted stock does not reach. */
  readonly uncut: readonly { readonly demand: number; readonly qty: number }[]
}

/** A plan in the instance's terms: pieces of one size are dealt to its demands in order. */
export const toCutPatterns = (grown: Grown, found: BarsFound, demandQty: readonly number[]): CutPattern[] => {
  const left = [...demandQty]
  const plan: CutPattern[] = []
  for (const { pattern, times } of found.patterns) {
    for (let run = 1, bar = 0; bar < times; bar += run) {
      run = Math.max(1, alike(grown, pattern, left, times - bar))
      const pieces: { demand: number; qty: number }[] = []
      pattern.kinds.forEach((kind, j) => {
        let need = pattern.counts[j] ?? 0
        for (const demand of grown.demands[kind] ?? []) {
          const qty = Math.min(need, left[demand] ?? 0)
          if (qty === 0) continue
          pieces.push({ demand, qty })
          left[demand] = (left[demand] ?? 0) - qty * run
          need -= qty
        }
      })
      const last = plan.at(-1)
      const stock = grown.stock[pattern.stock]?.index ?? 0
      if (last && last.stock === stock && samePieces(last.pieces, pieces)) {
        plan[plan.length - 1] = { ...last, times: last.times + run }
      } else plan.push({ stock, times: run, pieces })
    }
  }
  return plan
}

/** How many of the next bars take each size from the one demand that is next. */
const alike = (grown: Grown, pattern: Pattern, left: readonly number[], most: number): number => {
  let run = most
  pattern.kinds.forEach((kind, j) => {
    const next = grown.demands[kind]?.find((demand) => (left[demand] ?? 0) > 0)
    run = next === undefined ? 0 : Math.min(run, Math.floor((left[next] ?? 0) / (pattern.counts[j] ?? 1)))
  })
  return run
}

const samePieces = (a: CutPattern['pieces'], b: CutPattern['pieces']): boolean =>
  a.length === b.length && a.every((piece, j) => piece.demand === b[j]?.demand && piece.qty === b[j]?.qty)
