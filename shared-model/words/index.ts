export { fieldName } from './field-name'
export {
  BAR_SOURCE_NAMES,
  CUT_TOOL_NAMES,
  cautionText,
  GRADE_NAMES,
  HOLD_NAMES,
  MATERIAL_NAMES,
  NEED_NAMES,
  OPENING_NAMES,
  OPERATION_NAMES,
  PIECE_STATE_NAMES,
  SENSITIVITY_NAMES,
  SEVERITY_NAMES,
  STAGE_NAMES
} from './names'
export { plainOrder, plainOrderIn } from './plain-order'
export type { Say, SayShows } from './say'
export { sayIn } from './say'
export type { Words } from './wording'
export { findingText, problemText, wordsFor } from './words-for'
