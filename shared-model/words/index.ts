export { fieldName } from './field-name'
export {
  CLOSURE_NAMES,
  CUT_TOOL_NAMES,
  cautionText,
  FACE_NAMES,
  GRADE_NAMES,
  HOLD_NAMES,
  JOINT_NAMES,
  MATERIAL_NAMES,
  NEED_NAMES,
  OPENING_NAMES,
  OPERATION_NAMES,
  SENSITIVITY_NAMES,
  SEVERITY_NAMES,
  SIGNAL_WORD_MEANINGS,
  STACK_NAMES,
  STAGE_NAMES,
  WINDOW_NAMES,
  YES_NO_NAMES
} from './names'
export type { Say, SayShows } from './say'
export { sayIn } from './say'
export type { Words } from './wording'
export { findingText, problemText, wordsFor } from './words-for'
