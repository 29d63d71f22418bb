export type { Anchor, Design, PartsUsed, PinnedDimension, PinnedNote, Place, YesNo } from './design'
export { DESIGN_SCHEMA } from './design'
export type { Shows, Workshop } from './workshop'
export { WORKSHOP_SCHEMA } from './workshop'
