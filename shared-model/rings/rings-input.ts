import type { Budget } from '../outcome'
import type { PlateNeed, RingNeed } from './ring-plan'
import type { SheetSetup, SheetStock } from './sheet'

/** All that the sheet plan needs, as plain data. */
export interface RingsInput {
  readonly needs: readonly RingNeed[]
  readonly plates: readonly PlateNeed[]
  readonly sheets: readonly SheetStock[]
  readonly setup: SheetSetup
  /** No work: lattices and corner filling only, at once, for the live plan. */
  readonly budget: Budget
}
