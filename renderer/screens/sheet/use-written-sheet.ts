import { useEffect, useState } from 'react'
import { useServices } from '../../documents/use-documents'
import { wasGivenUp } from '../../plan/plan-worker-client'
import { usePlanState } from '../../plan/use-plan'
import type { SheetWish, WrittenSheet } from '../../workers/plan-worker'

export interface SheetState {
  readonly written: WrittenSheet | null
  readonly working: boolean
  /** How much is drawn, from 0 to 1; null while the pages are laid out. */
  readonly share: number | null
  readonly failed: string | null
  readonly cancel: () => void
  readonly again: () => void
}

/** A short wait gathers several changes of the options into one writing. */
const WAIT_MS = 250

/** The sheet as it will be written, for the last full plan; written anew when the plan or the options change. */
export function useWrittenSheet(wish: SheetWish): SheetState {
  const { paper } = useServices()
  const of = usePlanState((state) => state.fullOf)
  const [turn, setTurn] = useState(0)
  const [state, setState] = useState<Omit<SheetState, 'cancel' | 'again'>>({
    written: null,
    working: false,
    share: null,
    failed: null
  })
  const key = JSON.stringify(wish)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the wish is compared by what it says, and `turn` asks again
  useEffect(() => {
    if (of === null) return
    let mine = true
    const timer = setTimeout(() => {
      setState((before) => ({ ...before, working: true, share: null, failed: null }))
      const tell = (share: number): void => {
        if (mine) setState((before) => (before.working ? { ...before, share } : before))
      }
      paper.write(of.plan, of.design, of.workshop, wish, tell).then(
        (written) => {
          if (mine) setState({ written, working: false, share: null, failed: null })
        },
        (error: unknown) => {
          if (!mine) return
          const failed = wasGivenUp(error) ? 'Stopped.' : `The sheet could not be written: ${String(error)}`
          setState((before) => ({ ...before, working: false, failed }))
        }
      )
    }, WAIT_MS)
    return () => {
      mine = false
      clearTimeout(timer)
    }
  }, [of, key, paper, turn])
  return { ...state, cancel: paper.cancel, again: () => setTurn((before) => before + 1) }
}
