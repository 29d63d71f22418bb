import { defaultWorkshop, type Workshop } from '../../shared-model/design'

/** The workshop of a first start: every catalogue saw, no prices; inches where the language's people use them. */
export const firstWorkshop = (language = navigator.language): Workshop =>
  /-(US|LR|MM)$/i.test(language) ? defaultWorkshop({ units: 'in', paper: 'letter' }, 'USD') : defaultWorkshop()
