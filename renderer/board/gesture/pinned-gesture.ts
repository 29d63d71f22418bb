import type { Plan } from '../../../shared-model/plan'
import type { AppState } from '../../store/store'
import type { Gesture } from '../board-store'
import { dimensionLie } from '../pinned/lie'
import type { Point, Scale } from '../scale'

/** The gesture that begins with the hand on a pinned dimension or note. */
export function pinnedGesture(
  id: string,
  from: Point,
  { design }: Pick<AppState, 'design'>,
  { sill }: Pick<Plan, 'sill'>,
  scale: Scale
): Gesture | null {
  const note = design.notes.find((each) => each.id === id)
  if (note !== undefined) return { kind: 'note', noteId: id, from, start: { x: note.xMm, y: note.yMm } }
  const serial = design.dimensions.findIndex((each) => each.id === id)
  const dimension = design.dimensions[serial]
  if (dimension === undefined) return null
  const letters = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16 || 1
  const lie = dimensionLie(design, sill, dimension, serial, scale, letters)
  if (lie === null) return null
  return { kind: 'stand-off', dimensionId: id, upright: lie.upright, from, startMm: lie.offset / scale.pxPerMm }
}
