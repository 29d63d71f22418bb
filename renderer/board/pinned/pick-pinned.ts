import type { Design } from '../../../shared-model/design'
import { lettering } from '../paint/ink'
import type { Point, Scale } from '../scale'
import { dimensionLie, lineOf, noteLie } from './lie'

/** How near to a dimension's line or a note's place the pointer has to be: 24 px in all. */
const REACH_PX = 12
/** The line itself is answered more narrowly, so that it does not hide what lies under it. */
const LINE_REACH_PX = 6

interface PinnedOn {
  readonly design: Pick<Design, 'channels' | 'dimensions' | 'notes'>
  readonly sill: { readonly lengthMm: number; readonly depthMm: number }
  readonly scale: Scale
  readonly pictureWidth: number
}

/** The pinned dimension or note under the pointer, the topmost first; null with none there. */
export function pickPinned({ design, sill, scale, pictureWidth }: PinnedOn, at: Point): string | null {
  if (design.notes.length + design.dimensions.length === 0) return null
  const style = getComputedStyle(document.documentElement)
  const letters = Number.parseFloat(style.fontSize) / 16 || 1
  const measure = wordsMeasured(
    lettering({ face: style.getPropertyValue('--face').trim() || 'sans-serif', size: letters }, 12)
  )
  for (const note of [...design.notes].reverse()) {
    const lie = noteLie(note, measure(note.text), scale, letters, pictureWidth)
    const inBox = at.x >= lie.left && at.x <= lie.left + lie.width && Math.abs(at.y - lie.middle) <= REACH_PX
    if (inBox || Math.hypot(at.x - lie.at.x, at.y - lie.at.y) <= REACH_PX) return note.id
  }
  const serials = design.dimensions.map((dimension, serial) => ({ dimension, serial })).reverse()
  for (const { dimension, serial } of serials) {
    const lie = dimensionLie(design, sill, dimension, serial, scale, letters)
    if (lie === null) continue
    const [a, b] = lineOf(lie)
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
    if (Math.hypot(at.x - middle.x, at.y - middle.y) <= REACH_PX || offLine(at, a, b) <= LINE_REACH_PX)
      return dimension.id
  }
  return null
}

/** How far a place is from a line that runs along one of the axes. */
const offLine = (at: Point, a: Point, b: Point): number => {
  const held = (value: number, one: number, other: number): number =>
    Math.min(Math.max(one, other), Math.max(Math.min(one, other), value))
  return Math.hypot(at.x - held(at.x, a.x, b.x), at.y - held(at.y, a.y, b.y))
}

function wordsMeasured(font: string): (words: string) => number {
  const context = document.createElement('canvas').getContext('2d')
  if (context === null) return () => 0
  context.font = font
  return (words) => context.measureText(words).width
}
