import type { Design, Workshop } from '../../shared-model/design'
import type { FileRef } from '../host/host'
import type { Pair } from './history'

/** Which files the two documents stand in, and what was last written to them. */
export interface FileState {
  readonly designFile: FileRef | null
  readonly workshopFile: FileRef | null
  readonly savedDesign: Design | null
  readonly savedWorkshop: Workshop | null
  /** The design was written by a newer version of the program: shown, never changed or rewritten. */
  readonly readOnly: boolean
  /** The workshop likewise. */
  readonly workshopReadOnly: boolean
}

export const NO_FILES: FileState = {
  designFile: null,
  workshopFile: null,
  savedDesign: null,
  savedWorkshop: null,
  readOnly: false,
  workshopReadOnly: false
}

/** Whether the design differs from what its file holds. */
export const isUnsaved = (state: { readonly design: Design; readonly files: FileState }): boolean =>
  state.design !== state.files.savedDesign

/** Whether the workshop differs from what its file holds. */
export const isWorkshopUnsaved = (state: { readonly workshop: Workshop; readonly files: FileState }): boolean =>
  state.workshop !== state.files.savedWorkshop

/** Which document a change would alter though it is open for reading only; null where it may go ahead. */
export const lockedAgainst = (files: FileState, before: Pair, after: Pair): 'design' | 'workshop' | null => {
  if (files.readOnly && before.design !== after.design) return 'design'
  return files.workshopReadOnly && before.workshop !== after.workshop ? 'workshop' : null
}

/** The step of the history that brings another workshop: a step back over it leaves the file it came from behind. */
export const OPEN_WORKSHOP = 'open a workshop'

/** No file of its own and never saved: whatever stands in the workshop now asks for a name. */
export const NO_WORKSHOP_FILE = { workshopFile: null, savedWorkshop: null, workshopReadOnly: false } as const
