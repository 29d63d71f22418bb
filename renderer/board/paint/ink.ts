/** The colours and the lettering of the drawing, read from the style sheet's tokens so that light, dark and forced colours all reach it. */
const NAMES = [
  'room',
  'sill',
  'sill-edge',
  'grid',
  'glass',
  'glass-edge',
  'channel',
  'channel-edge',
  'closure',
  'hole',
  'rim',
  'canopy',
  'water',
  'dimension',
  'text',
  'obstacle',
  'support',
  'mass',
  'select',
  'snap',
  'stop',
  'warn'
] as const

export type InkName = (typeof NAMES)[number]
export type Ink = Readonly<Record<InkName, string>> & { readonly face: string; readonly size: number }

export function readInk(element: Element): Ink {
  const style = getComputedStyle(element)
  const colours = Object.fromEntries(NAMES.map((name) => [name, style.getPropertyValue(`--board-${name}`).trim()]))
  const size = Number.parseFloat(style.fontSize) / 16 || 1
  return {
    ...(colours as Record<InkName, string>),
    face: style.getPropertyValue('--face').trim() || 'sans-serif',
    size
  }
}

/** Lettering on the board grows with the reader's text size. */
export const lettering = (ink: Pick<Ink, 'face' | 'size'>, px: number, weight = 400): string =>
  `${weight} ${px * ink.size}px ${ink.face}`
