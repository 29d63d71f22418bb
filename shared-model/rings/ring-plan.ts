/** A round part cut from sheet with one or two concentric hole saws, and how many the batch needs. */
export interface RingNeed {
  readonly id: string
  readonly name: string
  readonly outerSawId: string
  readonly innerSawId: string | null
  /** Outer saw's diameter: the circle taken out of the sheet. */
  readonly cutDiameterMm: number
  readonly outsideMm: number
  readonly holeMm: number | null
  readonly coreMm: number | null
  readonly count: number
  readonly material: string
  readonly thicknessMm: number
}

/** A rectangle cut from sheet (glued end plates); it may be turned by a quarter. */
export interface PlateNeed {
  readonly id: string
  readonly name: string
  readonly widthMm: number
  readonly heightMm: number
  readonly count: number
  readonly material: string
  readonly thicknessMm: number
}

/** Lower left corner and size, from the sheet's datum corner. */
interface SheetRectangle {
  readonly xMm: number
  readonly yMm: number
  readonly widthMm: number
  readonly heightMm: number
}

export interface SheetCut {
  readonly mark: string
  readonly sheetId: string
  readonly isOffcut: boolean
  readonly widthMm: number
  readonly heightMm: number
  /** Centres in running dimensions from the sheet's datum corner (lower left). */
  readonly circles: readonly {
    readonly needId: string
    readonly xMm: number
    readonly yMm: number
    readonly diameterMm: number
  }[]
  readonly plates: readonly (SheetRectangle & { readonly needId: string })[]
  /** Whole rectangles that are left over, the largest first: what goes back on the rack. */
  readonly offcuts: readonly SheetRectangle[]
  readonly costMinor: number | null
}

export interface RingPlan {
  readonly needs: readonly RingNeed[]
  readonly plates: readonly PlateNeed[]
  readonly sheets: readonly SheetCut[]
  /** Collars cut from another collar's core. */
  readonly fromCores: readonly {
    readonly needId: string
    readonly fromNeedId: string
    readonly count: number
    /** The core already is the blank: inner saw of the one, outer saw of the other; no outer cut. */
    readonly sameSaw: boolean
  }[]
  readonly coresLeft: readonly { readonly diameterMm: number; readonly count: number }[]
  /** Circles and plates for which the sheets do not suffice. */
  readonly uncut: readonly { readonly needId: string; readonly count: number }[]
  /** As many of one need as one sheet holds in the best layout found, and a bound that no layout goes over. */
  readonly perSheet: readonly {
    readonly needId: string
    readonly sheetId: string
    readonly count: number
    readonly upperBound: number
  }[]
  readonly leastSheets: number
  /** null: a price is missing. */
  readonly costMinor: number | null
  /** In what the sheets are compared by: minor units where priced, else area in mm². */
  readonly value: number
  readonly lowerBound: number
  readonly proven: boolean
}
