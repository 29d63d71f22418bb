import { useEffect, useState } from 'react'
import type { LadderStep } from '../../../shared-model/pricing'
import { useServices } from '../../documents/use-documents'
import { wasGivenUp } from '../../plan/plan-worker-client'
import { useApp } from '../../store/use-app'

export interface Ladder {
  /** Steps known so far, smallest batch first. */
  readonly steps: readonly LadderStep[]
  readonly working: boolean
  /** Steps of this run known so far. */
  readonly known: number
  /** Whether it was stopped before its last step. */
  readonly stopped: boolean
  readonly failed: string | null
  readonly stop: () => void
  readonly again: () => void
}

interface Run {
  readonly steps: readonly LadderStep[]
  readonly working: boolean
  readonly known: number
  readonly stopped: boolean
  readonly failed: string | null
}

const IDLE: Run = { steps: [], working: false, known: 0, stopped: false, failed: null }

/** The ladder for the documents as they are now; a change starts it anew, while the last steps stay until the first new one. */
export function useLadder(sizes: readonly number[]): Ladder {
  const { batches } = useServices()
  const design = useApp((state) => state.design)
  const workshop = useApp((state) => state.workshop)
  const on = useApp((state) => state.on)
  const [run, setRun] = useState<Run>(IDLE)
  const [turn, setTurn] = useState(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: another turn is asked for by its number
  useEffect(() => {
    if (sizes.length === 0) return
    let mine = true
    const tell = (change: (before: Run) => Run): void => {
      if (mine) setRun(change)
    }
    let first = true
    setRun((before) => ({ ...before, working: true, stopped: false, failed: null, known: 0 }))
    batches
      .ladder(design, workshop, on, sizes, (step) => {
        const fresh = first
        first = false
        tell((before) => ({ ...before, steps: [...(fresh ? [] : before.steps), step], known: before.known + 1 }))
      })
      .then(() => tell((before) => ({ ...before, working: false })))
      .catch((error: unknown) =>
        tell((before) => ({
          ...before,
          working: false,
          stopped: wasGivenUp(error),
          failed: wasGivenUp(error) ? null : error instanceof Error ? error.message : String(error)
        }))
      )
    return () => {
      mine = false
      batches.cancel()
    }
  }, [batches, design, workshop, on, sizes, turn])
  return { ...run, stop: batches.cancel, again: () => setTurn((before) => before + 1) }
}
