import { SHEET_PARTS, type SheetPart } from './sheet-data'

export interface SheetOptions {
  /** Parts to print, in the sheet's own order. */
  readonly parts: readonly SheetPart[]
  /** Prices and costs are left out when false; the buyer's card never has any. */
  readonly cost: boolean
  /** Batch number for the card and the record; empty: a line to write on. */
  readonly batchNumber: string
  /** Print what is done already too; else, once the bench has begun, only the rest. */
  readonly doneToo: boolean
}

export const WHOLE_SHEET: SheetOptions = { parts: SHEET_PARTS, cost: true, batchNumber: '', doneToo: false }
