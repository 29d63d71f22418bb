import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Design, Workshop } from '../../shared-model/design'
import type { Plan } from '../../shared-model/plan'
import type { AppStore } from '../store/store'
import { evaluateHere } from './evaluate-here'
import { FIRST_WORK, type HeavyWorker, PROOF_WORK, wasGivenUp } from './plan-worker-client'

/** The plan as it stands: the live part follows the hand, the full one (with cut bars, bill and price) a moment later. */
export interface PlanState {
  /** All but what hangs on the cut plan, for the documents as they are now. */
  readonly live: Plan
  /** The last full plan; null before the first. */
  readonly full: Plan | null
  /** The same with the documents it was worked out for. */
  readonly fullOf: { readonly plan: Plan; readonly design: Design; readonly workshop: Workshop } | null
  /** Whether the full plan is for other documents than those shown. */
  readonly stale: boolean
  readonly working: boolean
  readonly workingSince: number
  readonly failed: string | null
}

/** The hand must have been still for this long before the heavy part is worked out. */
const STILL_MS = 180

export interface PlanStore extends StoreApi<PlanState> {
  /** Stops the search for better cuts; the last full plan stays and is shown as stale. */
  readonly cancel: () => void
  readonly again: () => void
}

export function createPlanStore(app: AppStore, worker: HeavyWorker): PlanStore {
  const { design, workshop, on } = app.getState()
  const store = createStore<PlanState>(() => ({
    live: evaluateHere(design, workshop, on),
    full: null,
    fullOf: null,
    stale: true,
    working: false,
    workingSince: 0,
    failed: null
  }))
  let timer: ReturnType<typeof setTimeout> | null = null
  let turn = 0

  const workOut = async (): Promise<void> => {
    turn += 1
    const mine = turn
    const now = app.getState()
    store.setState({ working: true, workingSince: performance.now(), failed: null })
    try {
      const full = await worker.evaluate(now.design, now.workshop, now.on, FIRST_WORK)
      if (mine !== turn) return
      store.setState({ full, fullOf: { plan: full, design: now.design, workshop: now.workshop }, stale: false })
      if (!full.cuts.every((cut) => cut.proven)) {
        const searched = await worker.evaluate(now.design, now.workshop, now.on, PROOF_WORK)
        if (mine !== turn) return
        store.setState({ full: searched, fullOf: { plan: searched, design: now.design, workshop: now.workshop } })
      }
      store.setState({ working: false })
    } catch (error) {
      if (mine !== turn || wasGivenUp(error)) return
      store.setState({ working: false, failed: error instanceof Error ? error.message : String(error) })
    }
  }
  const cancel = (): void => {
    if (timer !== null) clearTimeout(timer)
    turn += 1
    worker.cancel()
    store.setState({ working: false })
  }
  const soon = (): void => {
    if (timer !== null) clearTimeout(timer)
    timer = setTimeout(() => {
      timer = null
      if (app.getState().history.held === null) void workOut()
      else soon()
    }, STILL_MS)
  }

  app.subscribe((state, before) => {
    if (state.design === before.design && state.workshop === before.workshop && state.on === before.on) return
    if (store.getState().working) cancel()
    store.setState({ live: evaluateHere(state.design, state.workshop, state.on), stale: true })
    soon()
  })
  soon()
  return Object.assign(store, { cancel, again: () => void workOut() })
}
