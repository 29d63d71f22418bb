import { barSource, type CutBar, type CutPlan } from '../cutting'
import { BAR_SOURCE_NAMES, PIECE_STATE_NAMES } from '../words'
import { type Drawing, line, rect, type Shape, text } from './drawing'
import { textWidthMm } from './lettering'
import type { Printed } from './printed'
import { scaleThatFits } from './scale'

const WIDTH_MM = 182
const LEFT_MM = 12
const ROW_MM = 15
const BAR_MM = 7

/** Bars to scale, each with its pieces, kerfs and what is left; at most some bars to a drawing, so that none is split. */
export const cutBars = (plan: CutPlan, show: Printed, barsEach = 13): readonly Drawing[] => {
  const longest = Math.max(1, ...plan.bars.map((bar) => bar.lengthMm))
  const scale = scaleThatFits(longest, 1, WIDTH_MM - LEFT_MM - 1, 100)
  const drawings: Drawing[] = []
  for (let from = 0; from < plan.bars.length; from += barsEach) {
    const bars = plan.bars.slice(from, from + barsEach)
    drawings.push({
      widthMm: WIDTH_MM,
      heightMm: bars.length * ROW_MM,
      scale: scale.name,
      alt: `Bars ${bars.map((bar) => bar.mark).join(', ')} with their pieces`,
      shapes: bars.flatMap((bar, index) => barShapes(bar, plan.kerfMm, index * ROW_MM, scale.factor, show))
    })
  }
  return drawings
}

const barShapes = (bar: CutBar, kerfMm: number, topMm: number, factor: number, show: Printed): Shape[] => {
  const yMm = topMm + 5
  const x = (realMm: number): number => LEFT_MM + realMm * factor
  const leftStart = bar.lengthMm - bar.leftoverMm
  const stock = BAR_SOURCE_NAMES[barSource(bar)]
  const fate = bar.keep ? 'keep' : 'waste'
  const leftWidth = bar.leftoverMm * factor
  // What is left is always dimensioned: in its place where the words have room, else beside the bar's own length.
  const left = bar.leftoverMm > 0 ? `; ${fate} ${show.length(bar.leftoverMm)}` : ''
  const leftWords = fits(leftWidth, `${fate} ${show.length(bar.leftoverMm)}`, fate)
  return [
    text(0, yMm + 5, bar.mark, { sizePt: 12, bold: true }),
    text(LEFT_MM, yMm - 1.2, `${show.length(bar.lengthMm)}, ${stock}${left}`, { sizePt: 8 }),
    rect(LEFT_MM, yMm, bar.lengthMm * factor, BAR_MM, 'hidden', bar.keep ? 'paper' : 'pale'),
    ...(bar.trimMm > 0 ? [rect(LEFT_MM, yMm, Math.max(0.3, bar.trimMm * factor), BAR_MM, 'none', 'dark')] : []),
    ...bar.pieces.flatMap((piece): Shape[] => {
      const width = piece.lengthMm * factor
      const middle = x(piece.startMm) + width / 2
      const isDone = piece.state !== 'planned'
      const words = isDone
        ? fits(width, `${piece.mark}  ·  ${PIECE_STATE_NAMES[piece.state]}`, piece.mark)
        : fits(width, `${piece.mark}  ·  ${show.length(piece.lengthMm)}`, piece.mark)
      return [
        rect(x(piece.startMm), yMm, width, BAR_MM, isDone ? 'hidden' : 'outline', isDone ? 'paper' : 'tint'),
        ...(words === '' ? [] : [text(middle, yMm + 4.7, words, { sizePt: 8.5, bold: !isDone, anchor: 'middle' })]),
        kerf(x(piece.startMm + piece.lengthMm), kerfMm * factor, yMm, piece.startMm + piece.lengthMm < bar.lengthMm)
      ]
    }),
    ...(bar.leftoverMm > 0 && leftWords !== ''
      ? [text(x(leftStart) + leftWidth / 2, yMm + 4.7, leftWords, { sizePt: 8.5, anchor: 'middle' })]
      : [])
  ]
}

/** A saw cut: drawn at least as wide as a line, so that it is seen at a small scale. */
const kerf = (xMm: number, widthMm: number, yMm: number, cuts: boolean): Shape =>
  cuts
    ? rect(xMm, yMm - 1, Math.max(0.35, widthMm), BAR_MM + 2, 'none', 'ink')
    : line(xMm, yMm, xMm, yMm + BAR_MM, 'outline')

const fits = (roomMm: number, words: string, shorter: string): string =>
  [words, shorter].find((candidate) => textWidthMm(candidate, 8.5, true) + 1.5 <= roomMm) ?? ''
