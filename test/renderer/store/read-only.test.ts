import { describe, expect, test } from 'vitest'
import { NO_FILES } from '../../../renderer/store/files'
import { createAppStore } from '../../../renderer/store/store'
import { DEMOS } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'

const [demo, other] = DEMOS
if (demo === undefined || other === undefined) throw new Error('the demos are missing')
const { design, workshop } = demo

const opened = (files: Partial<typeof NO_FILES>) => {
  const store = createAppStore({ design, workshop }, '2026-05-01')
  store.do.load({ design, workshop }, { ...NO_FILES, savedDesign: design, savedWorkshop: workshop, ...files })
  return store
}
const refused = (document: 'design' | 'workshop') => ({ code: 'edit-read-only', figures: { document } })

describe('a design that is open for reading only', () => {
  test('takes no edit, by field, by key or by hand, and says why', () => {
    const store = opened({ readOnly: true })
    expect(store.do.editDesign('rename', (now) => ok({ ...now, title: 'other' }))).toEqual(refused('design'))
    expect(store.do.edit('both', (now) => ok({ ...now, design: { ...now.design, quantity: 2 } }))).toEqual(
      refused('design')
    )
    store.do.look({ notice: null })
    store.do.drag((now) => ok({ ...now, title: 'dragged' }))
    expect(store.getState().view.notice).toEqual({ problem: refused('design') })
    store.do.drop('drag')
    expect(store.getState().design).toBe(design)
    expect(store.getState().history.past).toEqual([])
  })

  test('leaves the workshop free to be changed and taken back', () => {
    const store = opened({ readOnly: true })
    expect(store.do.editWorkshop('rename', (now) => ok({ ...now, title: 'other' }))).toBeNull()
    store.do.undo()
    expect(store.getState().workshop).toBe(workshop)
  })
})

describe('a workshop that is open for reading only', () => {
  test('takes no edit, not the one that marks as built either', () => {
    const store = opened({ workshopReadOnly: true })
    expect(store.do.editWorkshop('mark as built', (now) => ok({ ...now, rack: [] }))).toEqual(refused('workshop'))
    expect(store.getState().workshop).toBe(workshop)
    expect(store.do.editDesign('rename', (now) => ok({ ...now, title: 'other' }))).toBeNull()
  })

  test('leaves its file and its lock behind when opening it is taken back', () => {
    const store = opened({})
    store.do.editWorkshop('open a workshop', () => ok(other.workshop))
    store.do.setFiles({ workshopFile: { id: 'f2', name: 'market.json' }, workshopReadOnly: true })
    store.do.undo()
    expect(store.getState()).toMatchObject({
      workshop: { id: workshop.id },
      files: { workshopFile: null, workshopReadOnly: false }
    })
  })
})
