import type { Design, Workshop } from '../../shared-model/design'

/** What undo and redo go back and forth over. Unchanged parts are shared between pairs, so a step costs what it changed. */
export interface Pair {
  readonly design: Design
  readonly workshop: Workshop
}

/** A step back or forth, with the words for what it undoes or does again. */
interface Step {
  readonly pair: Pair
  readonly what: string
}

export interface History {
  readonly past: readonly Step[]
  readonly future: readonly Step[]
  /** Open while a hand holds something: the pair before the gesture. */
  readonly held: Pair | null
}

export const NO_HISTORY: History = { past: [], future: [], held: null }

export const samePair = (a: Pair, b: Pair): boolean => a.design === b.design && a.workshop === b.workshop

/** The history after an edit from `before`; the steps ahead are gone. */
export const pushed = (history: History, before: Pair, what: string): History => ({
  past: [...history.past, { pair: before, what }],
  future: [],
  held: null
})

/** One step back: the pair to show and the history then; null when there is none. */
export function steppedBack(history: History, now: Pair): { readonly pair: Pair; readonly history: History } | null {
  const step = history.past.at(-1)
  if (step === undefined) return null
  return {
    pair: step.pair,
    history: {
      past: history.past.slice(0, -1),
      future: [...history.future, { pair: now, what: step.what }],
      held: null
    }
  }
}

/** One step forward again. */
export function steppedForth(history: History, now: Pair): { readonly pair: Pair; readonly history: History } | null {
  const step = history.future.at(-1)
  if (step === undefined) return null
  return {
    pair: step.pair,
    history: {
      past: [...history.past, { pair: now, what: step.what }],
      future: history.future.slice(0, -1),
      held: null
    }
  }
}

/** The gesture's first change: keeps the pair from before it. */
export const takenHold = (history: History, before: Pair): History =>
  history.held === null ? { ...history, held: before } : history

/** The gesture's end: one step, or none when nothing came of it. */
export function letGo(history: History, now: Pair, what: string): History {
  if (history.held === null) return history
  if (samePair(history.held, now)) return { ...history, held: null }
  return pushed(history, history.held, what)
}
