import type { Drill, OwnedSaw, StepTimes } from '../bench'
import type { PackOffer, ShelfItem } from '../bill'
import type { CuttingSetup, Offcut, StockBar } from '../cutting'
import type { Cup, EndClosure, PlantCollar } from '../parts'
import type { PricingSetup } from '../pricing'
import type { Profile } from '../profile'
import type { SheetSetup, SheetStock } from '../rings'

export const WORKSHOP_SCHEMA = 1

/** Where and how things are made: tools, stock, prices, times, and how lengths are read and printed. */
export interface Workshop {
  readonly schema: typeof WORKSHOP_SCHEMA
  readonly id: string
  readonly title: string
  readonly shows: Shows
  readonly currency: string
  readonly saws: readonly OwnedSaw[]
  readonly drills: readonly Drill[]
  readonly cutting: CuttingSetup
  readonly stock: readonly StockBar[]
  readonly rack: readonly Offcut[]
  readonly sheetSetup: SheetSetup
  readonly sheets: readonly SheetStock[]
  readonly offers: readonly PackOffer[]
  readonly shelf: readonly ShelfItem[]
  readonly times: StepTimes
  /** Which times are the shop's own, and since when (ISO date); the others are starting values from memory. */
  readonly timesMeasured?: Readonly<Partial<Record<keyof StepTimes, string>>>
  readonly pricing: PricingSetup
  /** The shop's own measured or added parts, offered beside the built-in catalogue. */
  readonly parts: {
    readonly profiles: readonly Profile[]
    readonly cups: readonly Cup[]
    readonly closures: readonly EndClosure[]
    readonly plantCollars: readonly PlantCollar[]
  }
}

/** Units and graduation of screen and paper. */
export interface Shows {
  readonly units: 'in' | 'mm'
  /** Inches: the denominator of the smallest fraction; millimetres: the smallest step. */
  readonly inchGraduation: 16 | 32
  readonly mmGraduation: 0.5 | 1
  readonly decimalMark: '.' | ','
  readonly paper: 'letter' | 'a4'
}
