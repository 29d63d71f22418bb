export interface MassCentre {
  readonly xMm: number
  readonly yMm: number
  readonly zMm: number
}

export interface Sag {
  readonly spanMm: number
  readonly overhangMm: number
  readonly shortTermMm: number
  readonly longTermMm: number
  readonly limitMm: number
  /** Longest span that keeps both limits. */
  readonly spacingNeededMm: number
}

export interface ChannelLoad {
  readonly channelId: string
  readonly emptyG: number
  readonly filledG: number
  readonly grownG: number
  readonly centre: MassCentre
  /** Load per length of sill, filled and grown. */
  readonly newtonsPerMetre: number
  /** null where the sill carries it along its length. */
  readonly sag: Sag | null
  readonly tipDeg: { readonly empty: number; readonly filled: number; readonly grown: number }
  readonly thermalGrowthMm: number
}

export interface SillLoad {
  readonly emptyG: number
  readonly filledG: number
  readonly grownG: number
  readonly centre: MassCentre
  readonly newtonsPerMetre: number
  /** Share of the user's own limit; null when none was given. */
  readonly shareOfLimit: number | null
  readonly lift: {
    readonly recommendedG: number
    readonly heaviestFilledG: number
    readonly carryFilled: 'yes' | 'fill-in-place' | 'not-by-one-person'
  }
}
