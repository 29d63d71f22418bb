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

export interface SheetCut {
  readonly mark: string
  readonly sheetId: string
  readonly widthMm: number
  readonly heightMm: number
  readonly circles: readonly {
    readonly needId: string
    readonly xMm: number
    readonly yMm: number
    readonly diameterMm: number
  }[]
  readonly costMinor: number | null
}

export interface RingPlan {
  readonly needs: readonly RingNeed[]
  readonly sheets: readonly SheetCut[]
  /** Collars cut from another collar's core. */
  readonly fromCores: readonly { readonly needId: string; readonly fromNeedId: string; readonly count: number }[]
  readonly coresLeft: readonly { readonly diameterMm: number; readonly count: number }[]
  /** Most circles the sheets could hold by a proven bound; the count that the plan holds. */
  readonly uncut: readonly { readonly needId: string; readonly count: number }[]
  readonly leastSheets: number
  readonly proven: boolean
}
