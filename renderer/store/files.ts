import type { Design, Workshop } from '../../shared-model/design'
import type { FileRef } from '../host/host'

/** Which files the two documents stand in, and what was last written to them. */
export interface FileState {
  readonly designFile: FileRef | null
  readonly workshopFile: FileRef | null
  readonly savedDesign: Design | null
  readonly savedWorkshop: Workshop | null
  /** Written by a newer version of the program: shown, never rewritten. */
  readonly readOnly: boolean
}

export const NO_FILES: FileState = {
  designFile: null,
  workshopFile: null,
  savedDesign: null,
  savedWorkshop: null,
  readOnly: false
}

/** Whether the design differs from what its file holds. */
export const isUnsaved = (state: { readonly design: Design; readonly files: FileState }): boolean =>
  state.design !== state.files.savedDesign

/** Whether the workshop differs from what its file holds. */
export const isWorkshopUnsaved = (state: { readonly workshop: Workshop; readonly files: FileState }): boolean =>
  state.workshop !== state.files.savedWorkshop
