import type { Edited } from '../../shared-model/design'
import { problemText } from '../plan/wording'
import type { Pair } from './history'
import { useAppStore } from './use-app'

/** One step of the history that may change both documents; what cannot be taken comes back as words for the field. */
export function useEditBoth(): (what: string, change: (pair: Pair) => Edited<Pair>) => string | null {
  const store = useAppStore()
  return (what, change) => {
    const problem = store.do.edit(what, change)
    if (problem === null) return null
    store.do.look({ notice: null })
    return problemText(problem, store.getState().workshop.shows)
  }
}
