import { type Obstacle, type Sill, sillSize } from '../../layout'
import { failed, ok, type Result } from '../../outcome'
import type { WaterPlan } from '../../reservoir'
import { checkAgainst } from '../checked'
import type { Anchor, Design, PinnedDimension, PinnedNote, Place } from '../design'
import { placeSchema, sillSchema, waterSchema } from '../design-schema'
import { changed, nextId } from '../ids'
import { pinnedSpan } from '../pinned-span'
import type { DocumentProblem } from '../problem'
import { standOffWithin } from '../stand-off'
import { type Edited, notFound } from './edit'

/** Sets fields of the sill. */
export const editSill = (design: Design, changes: Partial<Sill>): Edited<Design> => {
  const sill = { ...design.sill, ...changes }
  return first(checkAgainst(sillSchema, sill, 'sill'), { ...design, sill })
}

/** Something that stands on the sill already; the last of the list. */
export const addObstacle = (design: Design, obstacle: Omit<Obstacle, 'id'>): Edited<Design> =>
  editSill(design, {
    obstacles: [...design.sill.obstacles, { ...obstacle, id: nextId('x', design.sill.obstacles) }]
  })

export const editObstacle = (design: Design, id: string, changes: Partial<Omit<Obstacle, 'id'>>): Edited<Design> =>
  design.sill.obstacles.some((each) => each.id === id)
    ? editSill(design, {
        obstacles: design.sill.obstacles.map((each) => (each.id === id ? { ...each, ...changes } : each))
      })
    : notFound('obstacle', id)

export const deleteObstacle = (design: Design, id: string): Edited<Design> =>
  design.sill.obstacles.some((each) => each.id === id)
    ? ok({
        ...design,
        sill: { ...design.sill, obstacles: design.sill.obstacles.filter((each) => each.id !== id) }
      })
    : notFound('obstacle', id)

/** Sets what is known of the place. */
export const editPlace = (design: Design, changes: Partial<Place>): Edited<Design> => {
  const place = { ...design.place, ...changes }
  return first(checkAgainst(placeSchema, place, 'place'), { ...design, place })
}

/** Sets the stage, the wanted gaps, the feed and what else belongs to the water. */
export const editWater = (design: Design, changes: Partial<WaterPlan>): Edited<Design> => {
  const water = { ...design.water, ...changes }
  return first(checkAgainst(waterSchema, water, 'water'), { ...design, water })
}

/** A dimension between two places that stays and prints. */
export const pinDimension = (design: Design, from: Anchor, to: Anchor): Design => ({
  ...design,
  dimensions: [...design.dimensions, { id: nextId('d', design.dimensions), from, to }]
})

/** A note at a place on the sill that stays and prints. */
export const pinNote = (design: Design, xMm: number, yMm: number, text: string): Design => ({
  ...design,
  notes: [...design.notes, { id: nextId('n', design.notes), xMm, yMm, text }]
})

/** Puts a note elsewhere or changes its words; a note that is not there is left alone. */
export const editNote = (design: Design, id: string, changes: Partial<Omit<PinnedNote, 'id'>>): Design => ({
  ...design,
  notes: changed(design.notes, id, (note) => ({ ...note, ...changes }))
})

/** Draws the line of a pinned dimension this far from what it measures, as far as it stays in sight of the sill. */
export function standOff(design: Design, id: string, offMm: number): Design {
  const size = sillSize(design.sill)
  const within = (dimension: PinnedDimension): number => {
    const span = size.ok ? pinnedSpan(design, size.value, dimension) : null
    return size.ok && span !== null ? standOffWithin(span, size.value, offMm) : offMm
  }
  return {
    ...design,
    dimensions: changed(design.dimensions, id, (dimension) => ({ ...dimension, offMm: within(dimension) }))
  }
}

export const deletePinned = (design: Design, id: string): Design => ({
  ...design,
  dimensions: design.dimensions.filter((each) => each.id !== id),
  notes: design.notes.filter((each) => each.id !== id)
})

const first = (checked: Result<unknown, readonly DocumentProblem[]>, made: Design): Edited<Design> => {
  if (checked.ok) return ok(made)
  const [problem] = checked.problem
  return problem === undefined ? ok(made) : failed(problem)
}
