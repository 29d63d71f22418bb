/** Least land of a rim on the edge it hangs on, mm. Common practice, no source. @source rim-land-least */
export const LAND_LEAST_MM = 1.5

/** How far a flexible wall gives on its diameter when pressed home by hand, mm; from memory. @source taper-press */
export const PRESS_INTERFERENCE_MM = 0.5

/** Widest parallel wall over its opening that still goes in by hand, mm on the diameter; from memory. @source push-fit-limit */
export const PUSH_FIT_MOST_MM = 0.5

/** Plastic on plastic, dry: the angle at which one begins to slide on the other, degrees; from memory. @source friction-angle */
export const FRICTION_DEG = 11
export const FRICTION_TANGENT = Math.tan((FRICTION_DEG * Math.PI) / 180)

/** Least strip of round pipe beside a hole, seen from above, mm. Common practice, no source. @source pipe-strip-least */
export const PIPE_STRIP_LEAST_MM = 6

/** How much deeper than the place where it wedges a riser is cut, mm: it needs wall below the edge. @source riser-cut-margin */
export const RISER_CUT_MARGIN_MM = 3
