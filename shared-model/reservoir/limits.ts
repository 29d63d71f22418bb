/** Deepest published immersion of a short net pot at planting, mm. @source immersion-at-planting */
export const IMMERSION_MOST_MM = 30

/** Most that solution may come up again on roots that were in the air, mm. @source rise-over-air-roots */
export const RISE_MOST_MM = 20

/**
 * Air left under the face below which a short gap is a warning and no longer a note, mm. Growers fill small channels to
 * three quarters with the cup standing in the solution and lose nothing; brimful they do. Common practice, no source.
 * @source head-under-face
 */
export const HEAD_LEAST_MM = 10

/** Rise from end to end below which a fall is not worth a word, mm. Common practice, no source. @source head-under-face */
export const TILT_TOLD_MM = 2

/** Days a draw-down is worked out for. */
export const DRAW_DOWN_DAYS = 120

/** Most conductivity that is taken for a feed or a water, mS/cm: ten times what any crop here is given. */
export const EC_MOST = 20
