import type { BarProgress, CutPlan } from '../../../shared-model/cutting'

export interface ProofState {
  readonly proven: boolean
  readonly words: string
}

/**
 * How good the cut plan that is shown is, and whether better is still looked for. `progress` is how far the search for a
 * proof has come: its bound holds for the plan shown too.
 */
export function proofState(
  cut: CutPlan,
  progress: BarProgress | undefined,
  isProving: boolean,
  money: (minor: number) => string
): ProofState {
  const bound = Math.max(cut.lowerBound, progress?.lowerBound ?? 0)
  if (cut.proven || cut.value <= bound) return { proven: true, words: 'Proven least' }
  const gap = cut.value - bound
  const above = bound > 0 ? `${barsIn(gap, cut)} above least` : 'not proven yet'
  const priced = bound > 0 && cut.costMinor !== null ? ` (${money(Math.round(gap))})` : ''
  if (!isProving) return { proven: false, words: `Stopped; ${above}${priced}` }
  return { proven: false, words: `${above.charAt(0).toUpperCase()}${above.slice(1)}${priced}, still proving` }
}

const COUNTED = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']

/** The gap in whole bars of the dearest new kind that is used: a plan cannot be further off than these cost. */
const barsIn = (gap: number, cut: CutPlan): string => {
  const dearest = Math.max(
    1,
    ...cut.bars.filter(({ isOffcut }) => !isOffcut).map(({ costMinor, lengthMm }) => costMinor ?? Math.ceil(lengthMm))
  )
  const bars = Math.max(1, Math.ceil(gap / dearest))
  return `at most ${COUNTED[bars] ?? bars} bar${bars === 1 ? '' : 's'}`
}
