import { createStore, type StoreApi } from 'zustand/vanilla'
import { type Design, designFault, type Edited, type Workshop, workshopFault } from '../../shared-model/design'
import { failed, ok } from '../../shared-model/outcome'
import type { PlanProblem } from '../../shared-model/plan'
import { type FileState, lockedAgainst, NO_FILES, NO_WORKSHOP_FILE, OPEN_WORKSHOP } from './files'
import {
  type History,
  letGo,
  NO_HISTORY,
  type Pair,
  pushed,
  samePair,
  steppedBack,
  steppedForth,
  takenHold
} from './history'
import { NOTHING, type Selection, stillThere } from './selection'
import { FIRST_VIEW, type View } from './view'

/** Everything the window keeps. All else is worked out from it. */
export interface AppState {
  readonly design: Design
  readonly workshop: Workshop
  readonly history: History
  readonly selection: Selection
  readonly view: View
  readonly files: FileState
  /** The day the plan is for, ISO. */
  readonly on: string
}

export interface Actions {
  /**
   * One step of the history: both documents may change in it. What cannot be done changes nothing and is given back, so
   * that the field can say it; without a field it is said at the foot of the window.
   */
  readonly edit: (what: string, change: (pair: Pair) => Edited<Pair>) => PlanProblem | null
  readonly editDesign: (what: string, change: (design: Design) => Edited<Design>) => PlanProblem | null
  readonly editWorkshop: (what: string, change: (workshop: Workshop) => Edited<Workshop>) => PlanProblem | null
  /**
   * Edits made in `act` under the same name as the step before it, with nothing else in between, belong to that step: so
   * that a figure that is taken while it is typed is one step.
   */
  readonly asOne: <T>(name: string, act: () => T) => T
  /** While a hand holds something: shows the change made to the pair from before the gesture. */
  readonly drag: (change: (design: Design) => Edited<Design>) => void
  readonly drop: (what: string) => void
  readonly cancelDrag: () => void
  readonly undo: () => void
  readonly redo: () => void
  readonly select: (selection: Selection) => void
  readonly look: (part: Partial<View>) => void
  /** Another document: starts a new history. */
  readonly load: (pair: Pair, files: FileState) => void
  readonly setFiles: (part: Partial<FileState>) => void
}

export interface AppStore extends StoreApi<AppState> {
  readonly do: Actions
}

export function createAppStore(first: Pair, on: string): AppStore {
  const store = createStore<AppState>(() => ({
    ...first,
    history: NO_HISTORY,
    selection: NOTHING,
    view: FIRST_VIEW,
    files: { ...NO_FILES, savedDesign: first.design, savedWorkshop: first.workshop },
    on
  }))
  const { getState, setState } = store
  const pairOf = ({ design, workshop }: AppState): Pair => ({ design, workshop })
  const show = (pair: Pair, history: History): void =>
    setState((state) => ({ ...pair, history, selection: stillThere(state.selection, pair.design) }))
  const tell = (said: string): void => setState((state) => ({ view: { ...state.view, said } }))

  /** The name under which edits are made now, and the last step that was made under one. */
  let naming: string | null = null
  let last: { readonly name: string; readonly history: History } | null = null

  const edit: Actions['edit'] = (what, change) => {
    const state = getState()
    const before = pairOf(state)
    const after = lasting(before, allowed(state.files, before, change(before)))
    if (!after.ok) {
      actions.look({ notice: { problem: after.problem } })
      return after.problem
    }
    if (samePair(before, after.value)) return null
    const goesOn = naming !== null && last?.name === naming && last.history === state.history
    const history = goesOn ? state.history : pushed(state.history, before, what)
    last = naming === null ? null : { name: naming, history }
    show(after.value, history)
    return null
  }
  const step = (way: typeof steppedBack, said: string): void => {
    const state = getState()
    if (state.history.held !== null) return
    const next = way(state.history, pairOf(state))
    if (next === null) return
    show(next.pair, next.history)
    const undone = next.history.future.length > state.history.future.length
    const what = (undone ? next.history.future : next.history.past).at(-1)?.what ?? ''
    if (what === OPEN_WORKSHOP) actions.setFiles(NO_WORKSHOP_FILE)
    tell(`${said}: ${what}`)
  }

  const actions: Actions = {
    edit,
    editDesign: (what, change) =>
      edit(what, (pair) => {
        const made = change(pair.design)
        return made.ok ? ok({ ...pair, design: made.value }) : made
      }),
    editWorkshop: (what, change) =>
      edit(what, (pair) => {
        const made = change(pair.workshop)
        return made.ok ? ok({ ...pair, workshop: made.value }) : made
      }),
    asOne: (name, act) => {
      naming = name
      try {
        return act()
      } finally {
        naming = null
      }
    },
    drag: (change) => {
      const state = getState()
      const before = state.history.held ?? pairOf(state)
      const changed = change(before.design)
      const made = allowed(state.files, before, changed.ok ? ok({ ...before, design: changed.value }) : changed)
      if (!made.ok && made.problem.code === 'edit-read-only') actions.look({ notice: { problem: made.problem } })
      if (made.ok) show(made.value, takenHold(state.history, before))
    },
    drop: (what) => {
      const state = getState()
      const { held } = state.history
      const made = held === null ? ok(pairOf(state)) : lasting(held, ok(pairOf(state)))
      if (made.ok) return setState({ history: letGo(state.history, made.value, what) })
      actions.cancelDrag()
      actions.look({ notice: { problem: made.problem } })
    },
    cancelDrag: () => {
      const { history } = getState()
      if (history.held !== null) show(history.held, { ...history, held: null })
    },
    undo: () => step(steppedBack, 'Undone'),
    redo: () => step(steppedForth, 'Done again'),
    select: (selection) => setState({ selection }),
    look: (part) => setState((state) => ({ view: { ...state.view, ...part } })),
    load: (pair, files) => {
      setState((state) => ({
        ...pair,
        history: NO_HISTORY,
        selection: NOTHING,
        files,
        view: { ...state.view, started: true, tool: 'choose', notice: null }
      }))
    },
    setFiles: (part) => setState((state) => ({ files: { ...state.files, ...part } }))
  }
  return Object.assign(store, { do: actions })
}

/** The change, or why it may not be made to a document that is open for reading only. */
function allowed(files: FileState, before: Pair, after: Edited<Pair>): Edited<Pair> {
  const document = after.ok ? lockedAgainst(files, before, after.value) : null
  return document === null ? after : failed({ code: 'edit-read-only', figures: { document } })
}

/** The change, or why what it makes could not be opened again from its file: nothing of the kind is ever saved. */
function lasting(before: Pair, after: Edited<Pair>): Edited<Pair> {
  if (!after.ok) return after
  const { design, workshop } = after.value
  const fault =
    (design === before.design ? null : designFault(design)) ??
    (workshop === before.workshop ? null : workshopFault(workshop))
  return fault === null ? after : failed(fault)
}
