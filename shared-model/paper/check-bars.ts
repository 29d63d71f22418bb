import { line, rect, type Shape, text } from '../sheet'

/** 6 in and 1 in, exactly (1 in = 25.4 mm). */
export const SIX_INCHES_MM = 152.4
const BAR_MM = 150
const SQUARE_MM = 25.4

/** A bar of the length with end strokes, along or down the page, and what a rule must read on it. */
const checkBar = (xMm: number, yMm: number, lengthMm: number, words: string, down: boolean): Shape[] => {
  const end = (along: number): Shape =>
    down
      ? line(xMm - 2, yMm + along, xMm + 2, yMm + along, 'thin')
      : line(xMm + along, yMm - 2, xMm + along, yMm + 2, 'thin')
  return [
    down ? line(xMm, yMm, xMm, yMm + lengthMm, 'thin') : line(xMm, yMm, xMm + lengthMm, yMm, 'thin'),
    end(0),
    end(lengthMm),
    down
      ? text(xMm - 1, yMm + lengthMm / 2, words, { sizePt: 8, anchor: 'middle', turned: true })
      : text(xMm + lengthMm / 2, yMm - 1, words, { sizePt: 8, anchor: 'middle' })
  ]
}

/** Both bars along and a square to lay a rule on. */
export const barsAlong = (xMm: number, yMm: number): Shape[] => [
  ...checkBar(xMm, yMm, SIX_INCHES_MM, '6 in', false),
  ...checkBar(xMm, yMm + 8, BAR_MM, '150 mm', false)
]

export const barsDown = (xMm: number, yMm: number): Shape[] => [
  ...checkBar(xMm, yMm, SIX_INCHES_MM, '6 in', true),
  ...checkBar(xMm + 8, yMm, BAR_MM, '150 mm', true)
]

export const inchSquare = (xMm: number, yMm: number): Shape[] => [
  rect(xMm, yMm, SQUARE_MM, SQUARE_MM, 'thin'),
  text(xMm + SQUARE_MM / 2, yMm + SQUARE_MM / 2 + 1, '1 in square', { sizePt: 8, anchor: 'middle' })
]
