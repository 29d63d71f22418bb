/** Least material left between two holes, or a hole and a closure, mm. Common practice, no source. @source web-least */
export const LEAST_WEB_MM = 10

/** Least flat left beside a hole, on each side of the face, mm. Common practice, no source. @source web-least */
export const LEAST_STRIP_MM = 4
