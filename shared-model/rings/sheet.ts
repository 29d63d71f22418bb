import type { PricedOffer } from '../cutting'
import type { MaterialId } from '../materials'

/** A sheet that collars, plant collars and end plates are cut from, on offer or (count 1, from the rack) an offcut. */
export interface SheetStock {
  readonly id: string
  readonly name: string
  readonly material: MaterialId
  readonly widthMm: number
  readonly heightMm: number
  readonly thicknessMm: number
  readonly offer: PricedOffer
  readonly count: number | null
  readonly isOffcut: boolean
}

export interface SheetSetup {
  readonly webMm: number
  readonly edgeMm: number
  /** Shortest side of a rectangular offcut worth keeping; left out: the widest circle of the batch, webs and edges. */
  readonly keepFromMm?: number
  /** Stated worth of a kept offcut, in per cent of its share of the sheet's price by area; left out: none. */
  readonly keptWorthPercent?: number
}
