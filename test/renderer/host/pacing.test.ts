import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { pacing } from '../../../renderer/host/pacing'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

test('twelve acts at once go through in order, the first at once and no eleven within a second', async () => {
  const turn = pacing(120)
  const begun = Date.now()
  const went: { readonly act: number; readonly atMs: number }[] = []
  const all = Array.from({ length: 12 }, (_, act) => turn().then(() => went.push({ act, atMs: Date.now() - begun })))
  await vi.runAllTimersAsync()
  await Promise.all(all)
  expect(went).toEqual(Array.from({ length: 12 }, (_, act) => ({ act, atMs: 120 * act })))
  expect(120 * 10).toBeGreaterThan(1000)
})

test('an act after a rest waits for nothing', async () => {
  const turn = pacing(120)
  await turn()
  await vi.advanceTimersByTimeAsync(500)
  const begun = Date.now()
  await turn()
  expect(Date.now()).toBe(begun)
})
