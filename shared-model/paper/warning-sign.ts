import { circle, type Drawing, line, point, polygon } from '../sheet'

/**
 * The panel's sign, drawn by us: a triangle with a stroke and a dot for the words that tell of injury, a plain square
 * bar for the others (ANSI Z535.4 keeps the triangle for injury).
 */
export const cautionSign = (signalWord: string, onBlack: boolean): Drawing => {
  const injury = signalWord === 'DANGER' || signalWord === 'WARNING' || signalWord === 'CAUTION'
  const ground = onBlack ? 'paper' : 'ink'
  const mark = onBlack ? 'ink' : 'paper'
  return {
    widthMm: 6.5,
    heightMm: 6,
    scale: 'not to scale',
    alt: injury ? 'Safety alert' : 'Notice',
    shapes: injury
      ? [
          polygon([point(3.25, 0.2), point(6.4, 5.7), point(0.1, 5.7)], 'none', ground),
          polygon([point(2.9, 1.9), point(3.6, 1.9), point(3.42, 4.0), point(3.08, 4.0)], 'none', mark),
          circle(3.25, 4.75, 0.36, 'none', mark)
        ]
      : [line(1.2, 3, 5.3, 3, 'cut'), line(1.2, 4.8, 5.3, 4.8, 'cut'), line(1.2, 1.2, 5.3, 1.2, 'cut')]
  }
}
