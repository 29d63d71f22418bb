/** Familiar share of a span that a member may sag. @source sag-limit-240 */
export const SAG_SHARE = 240

/** Least sag that the air gap is held to, mm: a gap with nothing to spare must not forbid every span. @source sag-gap-least */
export const GAP_SAG_LEAST_MM = 2

/** A closure that stands less proud than this lies on the sill with its channel, mm. @source sag-gap-least */
export const PROUD_LEAST_MM = 0.5

/** Least angle to tip that passes without a word, degrees; from memory of furniture tests on a slope. @source tip-least */
export const TIP_LEAST_DEG = 10

/** Warming between a cold night and a sunny day at a window, °C. Common practice, no source. @source window-warming */
export const WINDOW_RISE_C = 25

/** Most that the lifting equation lets anyone lift, lb. @source niosh-lifting */
export const LIFT_CONSTANT_LB = 51

/** The reach over a sill by the same equation gives 21.9 lb, shown as 20. @source niosh-lifting */
export const LIFT_OVER_SILL_LB = 20

/** A channel longer than this and heavier than the next is never carried filled. Common practice, no source. @source carry-filled */
export const CARRY_LONG_IN = 24
export const CARRY_HEAVY_LB = 10
