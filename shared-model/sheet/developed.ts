import { type PointMm, point } from './drawing'

/**
 * What outline does a hole saw that enters a round pipe square to its crown leave on the pipe's unrolled surface?
 * A saw of radius r, its axis through the pipe's, meets the outside of radius R at
 *
 *   along = r · cos t        around = R · asin((r / R) · sin t)        for t from 0 to 2π
 *
 * `along` is parallel to the pipe, `around` is arc length from the crown. Valid for 0 < r ≤ R.
 *
 * @source saddle-development
 */
export const developedSaddle = (
  holeRadiusMm: number,
  pipeRadiusMm: number,
  atMm: number,
  steps = 180
): readonly PointMm[] =>
  Array.from({ length: steps }, (_, index) => {
    const turn = (2 * Math.PI * index) / steps
    const share = Math.max(-1, Math.min(1, (holeRadiusMm / pipeRadiusMm) * Math.sin(turn)))
    return point(atMm + holeRadiusMm * Math.cos(turn), pipeRadiusMm * Math.asin(share))
  })
