/** Reductions of ISO 5455 (1, 2, 5, 10 …) and between them those found on scale rules. */
const REDUCTIONS = [1, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100, 200, 500, 1000, 2000, 5000]

export interface DrawingScale {
  /** Paper millimetres for one real millimetre. */
  readonly factor: number
  readonly name: string
}

/** The largest of these scales at which a real size fits the room on paper. Sizes in mm. @source iso-5455 */
export const scaleThatFits = (
  realWidthMm: number,
  realHeightMm: number,
  roomWidthMm: number,
  roomHeightMm: number
): DrawingScale => {
  const fits = (reduction: number): boolean =>
    realWidthMm / reduction <= roomWidthMm && realHeightMm / reduction <= roomHeightMm
  const reduction = REDUCTIONS.find(fits) ?? 10_000
  return { factor: 1 / reduction, name: `1:${reduction}` }
}
