import { useRef, useState } from 'react'
import type { Design, Workshop } from '../../../shared-model/design'
import { useServices } from '../../documents/use-documents'
import { wasGivenUp } from '../../plan/plan-worker-client'
import { useAppStore } from '../../store/use-app'
import type { FitAsk, FoundFits } from '../../workers/plan-worker'

/** A search is ended after this long and says so. */
export const MOST_MS = 30_000

export type FitsState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'searching' }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'found'; readonly found: FoundFits; readonly sill: Design['sill']; readonly workshop: Workshop }

/** Asks the worker for layouts that fit; what it found stays until asked again. */
export function useFits() {
  const { paper } = useServices()
  const store = useAppStore()
  const [state, setState] = useState<FitsState>({ kind: 'idle' })
  const turn = useRef(0)
  const search = async (asks: readonly FitAsk[]): Promise<void> => {
    turn.current += 1
    const mine = turn.current
    const { design, workshop, on } = store.getState()
    setState({ kind: 'searching' })
    try {
      const found = await paper.fits(asks, workshop, on, MOST_MS)
      if (mine === turn.current) setState({ kind: 'found', found, sill: design.sill, workshop })
    } catch (error) {
      if (mine !== turn.current) return
      if (wasGivenUp(error)) setState({ kind: 'idle' })
      else setState({ kind: 'failed', why: error instanceof Error ? error.message : String(error) })
    }
  }
  return { state, search, stop: paper.cancel }
}
