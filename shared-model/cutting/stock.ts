/** Bars of one profile on offer. */
export interface StockBar {
  readonly id: string
  readonly profileId: string
  readonly lengthMm: number
  readonly offer: PricedOffer
  /** How many there are; null: no limit. */
  readonly count: number | null
}

/** A price with what makes it trustworthy. Amounts are whole minor units of the Workshop's currency. */
export interface PricedOffer {
  readonly priceMinor: number | null
  readonly supplier: string
  /** ISO date; empty: not known. */
  readonly pricedOn: string
  readonly taxInside: boolean
}

/** A bar offcut on the rack. */
export interface Offcut {
  readonly id: string
  readonly profileId: string
  readonly lengthMm: number
  readonly worthMinor: number
  readonly cameFrom: string
  readonly cameOn: string
  /** Bars of one lot were bought together; left out: a lot of its own. */
  readonly lot?: string
}

export type CutToolKind = 'hand_saw' | 'power_mitre' | 'circular' | 'jigsaw' | 'snips' | 'knife' | 'pipe_cutter'

/** How bars are cut in this shop. */
export interface CuttingSetup {
  readonly tool: CutToolKind
  readonly toolName: string
  readonly kerfMm: number
  /** Lost once from the raw end of each new bar, its own cut included. */
  readonly endTrimMm: number
  /** Shortest offcut worth keeping. */
  readonly keepFromMm: number
  /** Worth of a kept offcut as a share of the new price per length, in percent. */
  readonly keptWorthPercent: number
  readonly joinsAllowed: boolean
}
