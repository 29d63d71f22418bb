import { describe, expect, test } from 'vitest'
import { createAppStore } from '../../../renderer/store/store'
import { DEMOS, type Design, pinDimension } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'

const [demo] = DEMOS
if (demo === undefined) throw new Error('the demo is missing')
const { design, workshop } = demo
const [channel] = design.channels
if (channel === undefined) throw new Error('the demo has no channel')

const opened = () => createAppStore({ design, workshop }, '2026-05-01')
const nowhere = (now: Design) =>
  ok(pinDimension(now, { kind: 'channel', channelId: 'gone', end: 'far' }, { kind: 'sill', edge: 'left' }))

describe('an edit that would make a file nobody can open', () => {
  test('is refused by name and leaves document and history as they were', () => {
    const store = opened()
    expect(store.do.editDesign('pin a dimension', nowhere)).toMatchObject({
      code: 'reference-dangling',
      figures: { id: 'gone', wanted: 'channel' }
    })
    expect(store.getState().design).toBe(design)
    expect(store.getState().history.past).toEqual([])
    expect(store.getState().view.notice).toMatchObject({ problem: { code: 'reference-dangling' } })
    expect(store.do.editWorkshop('drop the currency', (now) => ok({ ...now, currency: 'cowries' }))).not.toBeNull()
    expect(store.getState().workshop).toBe(workshop)
  })

  test('by hand comes to nothing when the hand lets go', () => {
    const store = opened()
    const copies = Array.from({ length: 121 }, (_, k) => ({ ...channel, id: `k${k}` }))
    store.do.drag((now) => ok({ ...now, channels: copies }))
    store.do.drop('copy channels')
    expect(store.getState().design).toBe(design)
    expect(store.getState().history).toEqual({ past: [], future: [], held: null })
    expect(store.getState().view.notice).toMatchObject({
      problem: { code: 'count-out-of-range', figures: { field: 'channels', count: 121, least: 0, most: 120 } }
    })
  })
})
