import { useEffect, useState } from 'react'
import type { LadderStep } from '../../../shared-model/pricing'
import { useServices } from '../../documents/use-documents'
import { wasGivenUp } from '../../plan/plan-worker-client'
import { usePlanState } from '../../plan/use-plan'
import { useApp } from '../../store/use-app'

export interface Ladder {
  /** Steps known so far, smallest batch first. */
  readonly steps: readonly LadderStep[]
  readonly working: boolean
  /** Whether it was stopped before its last step. */
  readonly stopped: boolean
  readonly failed: string | null
  readonly stop: () => void
  readonly again: () => void
}

interface Run {
  readonly steps: readonly LadderStep[]
  readonly working: boolean
  readonly stopped: boolean
  readonly failed: string | null
}

const IDLE: Run = { steps: [], working: false, stopped: false, failed: null }

/** The ladder for the documents as they were last planned; a change starts it anew. */
export function useLadder(sizes: readonly number[]): Ladder {
  const { batches } = useServices()
  const of = usePlanState((state) => state.fullOf)
  const on = useApp((state) => state.on)
  const [run, setRun] = useState<Run>(IDLE)
  const [turn, setTurn] = useState(0)
  const design = of?.design
  const workshop = of?.workshop
  // biome-ignore lint/correctness/useExhaustiveDependencies: another turn is asked for by its number
  useEffect(() => {
    if (design === undefined || workshop === undefined || sizes.length === 0) return
    let mine = true
    const tell = (change: (before: Run) => Run): void => {
      if (mine) setRun(change)
    }
    setRun({ ...IDLE, working: true })
    batches
      .ladder(design, workshop, on, sizes, (step) => tell((before) => ({ ...before, steps: [...before.steps, step] })))
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
