import type { Drawing, Shape } from './drawing'
import { shifted } from './shifted'

const WIDTH_MM = 182

/** Drawings set in rows from the left, each row as high as its highest. */
export const sideBySide = (drawings: readonly Drawing[], alt: string): Drawing => {
  const shapes: Shape[] = []
  let xMm = 0
  let yMm = 0
  let rowMm = 0
  for (const drawing of drawings) {
    if (xMm > 0 && xMm + drawing.widthMm > WIDTH_MM) {
      yMm += rowMm
      xMm = 0
      rowMm = 0
    }
    shapes.push(...drawing.shapes.map((shape) => shifted(shape, xMm, yMm)))
    xMm += drawing.widthMm
    rowMm = Math.max(rowMm, drawing.heightMm)
  }
  return { widthMm: WIDTH_MM, heightMm: yMm + rowMm, scale: drawings[0]?.scale ?? '', alt, shapes }
}
