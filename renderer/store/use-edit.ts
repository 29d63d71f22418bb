import type { Design, Edited, Workshop } from '../../shared-model/design'
import { problemText } from '../plan/wording'
import { useAppStore } from './use-app'

/** Edits for fields: what cannot be taken comes back as words to stand below the field. */
export function useEdit() {
  const store = useAppStore()
  const words = (problem: Parameters<typeof problemText>[0] | null): string | null => {
    if (problem === null) return null
    store.do.look({ notice: null })
    return problemText(problem, store.getState().workshop.shows)
  }
  return {
    design: (what: string, change: (design: Design) => Edited<Design>): string | null =>
      words(store.do.editDesign(what, change)),
    workshop: (what: string, change: (workshop: Workshop) => Edited<Workshop>): string | null =>
      words(store.do.editWorkshop(what, change))
  }
}
