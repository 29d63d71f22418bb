export type { RingNeed, RingPlan, SheetCut } from './ring-plan'
export type { SheetSetup, SheetStock } from './sheet'
