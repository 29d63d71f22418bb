export type { RingsFinding, RingsFindingCodes, RingsProblem, RingsProblemCodes } from './codes'
export type { PlateNeed, RingNeed, RingPlan, SheetCut, SheetRectangle } from './ring-plan'
export type { SheetSetup, SheetStock } from './sheet'
