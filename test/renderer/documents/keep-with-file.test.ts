import { describe, expect, test } from 'vitest'
import { keptWithFile, type Written } from '../../../renderer/documents/keep-with-file'
import { NO_FILES } from '../../../renderer/store/files'
import { createAppStore } from '../../../renderer/store/store'
import { addOffcut, DEMOS, parseWorkshopText } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'

const [demo] = DEMOS
if (demo === undefined) throw new Error('the demo is missing')
const { design, workshop } = demo
const file = { id: 'shop', name: 'shop.workshop.json' }

const opened = (own = workshop) => {
  const store = createAppStore({ design, workshop: own }, '2026-05-01')
  store.do.load({ design, workshop: own }, { ...NO_FILES, workshopFile: file, savedDesign: design, savedWorkshop: own })
  return store
}
const build = (pair: { readonly design: typeof design; readonly workshop: typeof workshop }) => {
  const made = addOffcut(pair.workshop, { profileId: design.channels[0]?.profileId ?? '', lengthMm: 400 })
  return made.ok ? ok({ ...pair, workshop: made.value }) : made
}
const keepNothing = { keepWorkshop: () => Promise.resolve(false) }
const keep = (store: ReturnType<typeof opened>, written: Written) =>
  keptWithFile(store, keepNothing, written, ({ code }) => `${code}.`, 'mark as built', build)

describe('what is built', () => {
  test('is written to the workshop’s file first, and then stands as one step that can be undone', async () => {
    const store = opened()
    let text = ''
    const said = await keep(store, async (wish) => {
      text = wish.text
      expect(store.getState().workshop).toBe(workshop)
      return { ok: true, value: file }
    })
    expect(said).toBeNull()
    const state = store.getState()
    const read = parseWorkshopText(text)
    expect(read.ok && read.value.rack).toEqual(state.workshop.rack)
    expect(state.workshop.rack).toHaveLength(workshop.rack.length + 1)
    expect(state.files.savedWorkshop).toBe(state.workshop)
    store.do.undo()
    expect(store.getState().workshop).toBe(workshop)
  })

  test('does not happen where the file cannot be written', async () => {
    const store = opened()
    const said = await keep(store, async () => ({
      ok: false,
      problem: { code: 'file-failed', name: file.name, detail: 'the disk is full' }
    }))
    expect(said).toContain('file-failed. The workshop was not saved, so nothing is changed.')
    expect(store.getState()).toMatchObject({ workshop, design, history: { past: [] } })
  })

  test('does not happen where this machine does not keep a workshop without a file', async () => {
    const own = { ...workshop, id: 'own' }
    const store = opened(own)
    store.do.setFiles({ workshopFile: null })
    expect(await keep(store, async () => ({ ok: true, value: file }))).toContain('nothing is changed')
    expect(store.getState().workshop).toBe(own)
  })
})
