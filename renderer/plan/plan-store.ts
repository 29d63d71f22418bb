import { createStore, type StoreApi } from 'zustand/vanilla'
import type { BarProgress } from '../../shared-model/cutting'
import type { Design, Workshop } from '../../shared-model/design'
import type { Plan } from '../../shared-model/plan'
import type { AppStore } from '../store/store'
import { boardOf, evaluateHere } from './evaluate-here'
import { FIRST_WORK, type HeavyWorker, PROOF_WORK, wasGivenUp } from './plan-worker-client'

/** The plan as it stands: the live part follows the hand, the full one (with cut bars, bill and price) a moment later. */
export interface PlanState {
  /**
   * All but what hangs on the cut plan, for the documents as they are now. Of a design that was just opened the board is
   * drawn before what is made of it is worked out.
   */
  readonly live: Plan
  /** The last full plan; null before the first. */
  readonly full: Plan | null
  /** The same with the documents it was worked out for. */
  readonly fullOf: { readonly plan: Plan; readonly design: Design; readonly workshop: Workshop } | null
  /** Whether the full plan is for other documents than those shown. */
  readonly stale: boolean
  readonly working: boolean
  /** Whether a proof for the full plan is looked for. */
  readonly proving: boolean
  /** How far the proof for the full plan has come, by profile; kept when the search is stopped. */
  readonly progress: Readonly<Record<string, BarProgress>>
  readonly workingSince: number
  readonly failed: string | null
}

/** The hand must have been still for this long, with what it did on the window, before the heavy part is worked out. */
const STILL_MS = 180
/** A window that just came up has nothing to work out: whoever opens a design at once is not held up by its worker. */
const IDLE_MS = 1500

export interface PlanStore extends StoreApi<PlanState> {
  /** Stops the search for better cuts; the best plan found so far stays. */
  readonly cancel: () => void
  readonly again: () => void
  /** Goes on looking for a proof for the full plan that is shown, with much more work. */
  readonly searchLonger: () => void
}

interface Documents {
  readonly design: Design
  readonly workshop: Workshop
  readonly on: string
}

/** A search that is asked for gets so many times the work of the one that starts by itself. */
const LONGER = 8

/** `painted` does something once what changed is on the window, and gives how to call it off. */
export function createPlanStore(
  app: AppStore,
  worker: HeavyWorker,
  painted: (act: () => void) => () => void
): PlanStore {
  const { design, workshop, on } = app.getState()
  const store = createStore<PlanState>(() => ({
    live: boardOf(design, workshop, on),
    full: null,
    fullOf: null,
    stale: true,
    working: false,
    proving: false,
    progress: {},
    workingSince: 0,
    failed: null
  }))
  let callOff = (): void => {}
  let turn = 0

  const begin = (part: Partial<PlanState>): number => {
    turn += 1
    store.setState({ working: true, workingSince: performance.now(), failed: null, ...part })
    return turn
  }
  const asked = async (mine: number, question: () => Promise<void>): Promise<void> => {
    try {
      await question()
      if (mine === turn) store.setState({ working: false, proving: false })
    } catch (error) {
      if (mine !== turn || wasGivenUp(error)) return
      const said = error instanceof Error ? error.message : String(error)
      store.setState({ working: false, proving: false, failed: said })
    }
  }
  const prove = async (mine: number, of: Documents, work: number): Promise<void> => {
    store.setState({ proving: true })
    const show = (plan: Plan): void => {
      if (mine === turn) store.setState({ full: plan, fullOf: { plan, design: of.design, workshop: of.workshop } })
    }
    const tell = (profileId: string, progress: BarProgress): void => {
      if (mine === turn) store.setState((now) => ({ progress: { ...now.progress, [profileId]: progress } }))
    }
    let ended = false
    const tellBetter = (plan: Plan): void => {
      if (!ended) show(plan)
    }
    const plan = await worker.prove(of.design, of.workshop, of.on, work, tell, tellBetter)
    // Another door brings what is told on the way: it may come in after the end.
    ended = true
    show(plan)
  }
  const workOut = (): Promise<void> => {
    const { design: ofDesign, workshop: ofWorkshop, on: ofDay } = app.getState()
    const of = { design: ofDesign, workshop: ofWorkshop, on: ofDay }
    const mine = begin({ proving: false })
    return asked(mine, async () => {
      const plan = await worker.evaluate(of.design, of.workshop, of.on, FIRST_WORK)
      if (mine !== turn) return
      store.setState({
        full: plan,
        fullOf: { plan, design: of.design, workshop: of.workshop },
        progress: {},
        stale: false
      })
      if (!plan.cuts.every((cut) => cut.proven)) await prove(mine, of, PROOF_WORK)
    })
  }
  const searchLonger = (): Promise<void> => {
    const { fullOf } = store.getState()
    if (fullOf === null) return Promise.resolve()
    const mine = begin({ proving: true })
    return asked(mine, () => prove(mine, { ...fullOf, on: fullOf.plan.on }, PROOF_WORK * LONGER))
  }
  const cancel = (): void => {
    callOff()
    turn += 1
    worker.cancel()
    store.setState({ working: false, proving: false })
  }
  const wait = (ms: number): void => {
    const timer = setTimeout(() => {
      if (app.getState().history.held === null) void workOut()
      else wait(STILL_MS)
    }, ms)
    callOff = () => clearTimeout(timer)
  }

  /** Once the board is drawn: the rest of its live plan, and when the hand is still the full one. */
  const afterBoard = (waitMs: () => number): void => {
    callOff = painted(() => {
      const { design: ofDesign, workshop: ofWorkshop, on: ofDay } = app.getState()
      store.setState({ live: evaluateHere(ofDesign, ofWorkshop, ofDay) })
      wait(waitMs())
    })
  }

  app.subscribe((state, before) => {
    if (state.design === before.design && state.workshop === before.workshop && state.on === before.on) return
    if (store.getState().working) cancel()
    callOff()
    if (state.design.id !== before.design.id) {
      store.setState({ live: boardOf(state.design, state.workshop, state.on), stale: true })
      afterBoard(() => STILL_MS)
    } else {
      store.setState({ live: evaluateHere(state.design, state.workshop, state.on), stale: true })
      callOff = painted(() => wait(STILL_MS))
    }
  })
  afterBoard(() => (app.getState().view.started ? STILL_MS : IDLE_MS))
  return Object.assign(store, { cancel, again: () => void workOut(), searchLonger: () => void searchLonger() })
}
