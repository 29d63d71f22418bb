import type { Stage } from './stage'

export interface SiteWater {
  readonly siteId: string
  /** Level at this site above the inside floor there (a fall tilts it). */
  readonly levelMm: number
  /** The same at the front and back walls, seen as the channel runs from its datum end (a fall across it turns the surface). */
  readonly frontLevelMm: number
  readonly backLevelMm: number
  /** From the surface up to the low edge of the cup's underside; negative when it stands in the solution. */
  readonly gapMm: number
  readonly wetted: boolean
}

export interface StageWater {
  readonly stage: Stage
  readonly wantedGapMm: number
  readonly safeLevelMm: number
  readonly safeFillShare: number
  readonly litres: number
  readonly gapMm: number
  readonly wetted: boolean
  readonly reachable: boolean
}

/** How a lift for one stage is got from the cups on hand. */
export interface Rung {
  readonly stage: Stage
  readonly liftMm: number
  readonly how:
    | { readonly kind: 'none-needed' }
    | { readonly kind: 'riser'; readonly cupId: string; readonly cutBelowRimMm: number; readonly openingMm: number }
    | { readonly kind: 'other-saw'; readonly openingMm: number; readonly cupId: string }
    | { readonly kind: 'no-cup-reaches'; readonly mostMm: number }
}

export interface DrawDownDay {
  readonly day: number
  readonly litres: number
  readonly levelMm: number
  readonly gapMm: number
}

export interface DrawDown {
  readonly dailyMl: number
  readonly days: readonly DrawDownDay[]
  /** First day on which the end level is reached; null: not within the days worked out. */
  readonly endDay: number | null
  readonly refillDay: number | null
}

/** What levels a channel under one support, or one end: the thickness under its high side, and under its low one. */
export interface Shim {
  readonly atMm: number
  readonly shimMm: number
  /** Side that wants more, as the channel runs from its datum end; null where the sill is level across it. */
  readonly lowSide: 'front' | 'back' | null
  readonly lowSideMm: number
}

export interface ChannelWater {
  readonly channelId: string
  readonly insideHeightMm: number
  /** Fill line above the inside floor at the deepest point, after any overflow's cap. */
  readonly levelMm: number
  /** Fill line below the top of the upper face, to mark from outside. */
  readonly fromTopMm: number
  readonly fillShare: number
  readonly volumeShare: number
  readonly litres: number
  readonly fullLitres: number
  readonly displacedLitres: number
  readonly cappedByOverflow: boolean
  readonly sites: readonly SiteWater[]
  readonly leastGapMm: number | null
  readonly greatestGapMm: number | null
  readonly litresPerPlant: number | null
  readonly endLevelMm: number
  readonly stages: readonly StageWater[]
  readonly ladder: readonly Rung[]
  readonly drawDown: DrawDown | null
  readonly shims: readonly Shim[]
}

export interface FirstFill {
  readonly litres: number
  readonly ec: { readonly least: number; readonly most: number } | null
  readonly ecConflicts: readonly string[]
  readonly concentrateMl: number | null
  readonly expectedEcMsPerCm: number | null
  readonly salts: readonly { readonly name: string; readonly grams: number }[]
  readonly ppm: Readonly<Record<string, number>>
}
