import type { Obstacle, Sill } from '../../layout'
import { failed, ok, type Result } from '../../outcome'
import type { WaterPlan } from '../../reservoir'
import { checkAgainst } from '../checked'
import type { Anchor, Design, Place } from '../design'
import { placeSchema, sillSchema, waterSchema } from '../design-schema'
import { nextId } from '../ids'
import type { DocumentProblem } from '../problem'
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
