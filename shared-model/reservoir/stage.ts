export const STAGES = ['unrooted', 'rooting', 'rooted', 'full'] as const
export type Stage = (typeof STAGES)[number]

/** Air gap wanted at each stage; negative: the cup stands that deep in the solution. */
export type StageGaps = Readonly<Record<Stage, number>>

/**
 * Gaps to start from, mm. Unrooted: pots 13 to 30 mm in the solution, 20 in the middle. Rooting: the pot's bottom at the
 * surface. Rooted: 1 in for young plants. Full: 2 in for larger ones. The grower may change them.
 * @source immersion-at-planting
 * @source air-gap-water-culture
 */
export const DEFAULT_STAGE_GAPS: StageGaps = { unrooted: -20, rooting: 0, rooted: 25.4, full: 50.8 }

/** Share of the start volume left at the end of a crop: under 10 % by one source, 17 % by a trial. @source end-of-crop */
export const DEFAULT_END_SHARE = 0.15

/**
 * A cup's growing medium, wet through, g to the litre of cup: stone wool and coir hold their own volume in water nearly
 * whole, fired clay half. From memory; weigh your own. @source medium-wet
 */
export const DEFAULT_MEDIUM_G_PER_L = 800

export interface WaterPlan {
  readonly stage: Stage
  readonly stageGapsMm: StageGaps
  readonly celsius: number
  /** Conductivity of the source water; null: not measured. */
  readonly sourceEcMsPerCm: number | null
  /** Share of the start volume left at the end level. */
  readonly endShare: number
  readonly feed: Feed
  /** Growing medium as it hangs in the cup, wet, grams to the litre; left out: `DEFAULT_MEDIUM_G_PER_L`. */
  readonly mediumGPerL?: number
}

/** What goes into the first fill. */
export type Feed =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'concentrate'
      readonly name: string
      readonly doseMlPerL: number
      readonly doseEcMsPerCm: number
      readonly targetEcMsPerCm: number
    }
  | { readonly kind: 'salts'; readonly salts: readonly Salt[] }

/** A dry salt by its label, percent by mass; P and K as the label prints them (P2O5, K2O). */
export interface Salt {
  readonly name: string
  readonly gPerL: number
  readonly percent: Readonly<Partial<Record<'N' | 'P2O5' | 'K2O' | 'Ca' | 'Mg' | 'S', number>>>
}
