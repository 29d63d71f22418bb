import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { createAppStore } from '../../../renderer/store/store'
import { defaultWorkshop, editShows, editSill, newDesign, setDesignField } from '../../../shared-model/design'

const store = () => createAppStore({ design: newDesign('d1'), workshop: defaultWorkshop() }, '2026-01-15')

describe('the history of a design and its workshop', () => {
  it('goes back to the very first document and forth to the very last, edit by edit', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 100, max: 3000 }), { minLength: 1, maxLength: 30 }), (lengths) => {
        const app = store()
        const first = app.getState().design
        for (const lengthMm of lengths) {
          app.do.editDesign('measure the sill', (design) => editSill(design, { lengthsMm: [lengthMm] }))
        }
        const last = app.getState().design
        for (const _ of lengths) app.do.undo()
        expect(app.getState().design).toBe(first)
        for (const _ of lengths) app.do.redo()
        expect(app.getState().design).toBe(last)
      }),
      { seed: 5, numRuns: 30 }
    )
  })

  it('makes one step of a gesture, however often the hand moved', () => {
    const app = store()
    for (const lengthMm of [1000, 1001, 1002]) {
      app.do.drag((design) => editSill(design, { lengthsMm: [lengthMm] }))
    }
    app.do.drop('measure the sill')
    expect(app.getState().history.past).toHaveLength(1)
    expect(app.getState().design.sill.lengthsMm).toEqual([1002])
    app.do.undo()
    expect(app.getState().design.sill.lengthsMm).toEqual([1200])
  })

  it('forgets a gesture that is called off', () => {
    const app = store()
    const before = app.getState().design
    app.do.drag((design) => editSill(design, { lengthsMm: [900] }))
    app.do.cancelDrag()
    expect(app.getState().design).toBe(before)
    expect(app.getState().history.past).toHaveLength(0)
  })

  it('changes nothing when an edit cannot be made, and says why', () => {
    const app = store()
    const before = app.getState().design
    const problem = app.do.editDesign('measure the sill', (design) => editSill(design, { clearHeightMm: Number.NaN }))
    expect(problem).not.toBeNull()
    expect(app.getState().design).toBe(before)
    expect(app.getState().history.past).toHaveLength(0)
  })

  it('undoes workshop edits in the same history', () => {
    const app = store()
    app.do.editDesign('name', (design) => setDesignField(design, 'title', 'Kitchen'))
    app.do.editWorkshop('change the units', (workshop) => editShows(workshop, { units: 'in' }))
    app.do.undo()
    expect(app.getState().workshop.shows.units).toBe('mm')
    expect(app.getState().design.title).toBe('Kitchen')
  })

  it('is not cleared by saving', () => {
    const app = store()
    app.do.editDesign('name', (design) => setDesignField(design, 'title', 'Kitchen'))
    app.do.setFiles({ savedDesign: app.getState().design, designFile: { id: 'f1', name: 'kitchen.design.json' } })
    expect(app.getState().history.past).toHaveLength(1)
  })
})
