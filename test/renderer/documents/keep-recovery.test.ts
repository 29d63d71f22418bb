import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { keepRecovery } from '../../../renderer/documents/keep-recovery'
import type { Host } from '../../../renderer/host/host'
import { NO_FILES } from '../../../renderer/store/files'
import { createAppStore } from '../../../renderer/store/store'
import { DEMOS, parseDesignText, setDesignField } from '../../../shared-model/design'

/** What may pass between a change and its copy for recovery. */
const AT_THE_MOST_MS = 2000

const [demo] = DEMOS
if (demo === undefined) throw new Error('the demo is missing')
const { design, workshop } = demo

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

/** A window with the demo open as saved, and the quantities that were kept for recovery, in order. */
function opened() {
  const store = createAppStore({ design, workshop }, '2026-05-01')
  store.do.load({ design, workshop }, { ...NO_FILES, savedDesign: design, savedWorkshop: workshop })
  const kept: (number | 'dropped')[] = []
  const host: Partial<Host> = {
    setUnsaved: () => {},
    keepRecovery: async (work) => {
      const read = parseDesignText(work.design)
      if (read.ok) kept.push(read.value.quantity)
    },
    dropRecovery: async () => {
      kept.push('dropped')
    },
    keepWorkshop: async () => true
  }
  const stop = keepRecovery(store, host as Host)
  const make = (quantity: number) =>
    store.do.edit('change how many', (pair) => {
      const made = setDesignField(pair.design, 'quantity', quantity)
      return made.ok ? { ok: true, value: { ...pair, design: made.value } } : made
    })
  return { store, kept, make, stop }
}

test('a change is kept for recovery within two seconds, and a row of changes is too, however long it goes on', async () => {
  const { kept, make, stop } = opened()
  make(5)
  expect(kept).toEqual([])
  await vi.advanceTimersByTimeAsync(AT_THE_MOST_MS)
  expect(kept).toEqual([5])
  for (let more = 6; more < 14; more += 1) {
    make(more)
    await vi.advanceTimersByTimeAsync(500)
  }
  expect(kept.length).toBeGreaterThanOrEqual(2)
  await vi.advanceTimersByTimeAsync(AT_THE_MOST_MS)
  expect(kept.at(-1)).toBe(13)
  stop()
})

test('a change that was taken back leaves nothing for recovery', async () => {
  const { store, kept, make, stop } = opened()
  make(5)
  await vi.advanceTimersByTimeAsync(AT_THE_MOST_MS)
  store.do.undo()
  await vi.advanceTimersByTimeAsync(AT_THE_MOST_MS)
  expect(kept).toEqual([5, 'dropped'])
  stop()
})

test('nothing more is kept once the window stops', async () => {
  const { kept, make, stop } = opened()
  make(5)
  stop()
  await vi.advanceTimersByTimeAsync(10 * AT_THE_MOST_MS)
  expect(kept).toEqual([])
})
