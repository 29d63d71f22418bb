import { expect, test } from 'vitest'
import { askForFullSize } from '../../shared-model/paper'

test('full size is asked for in the preferences that the writer holds open (ISO 32000-1, table 150)', () => {
  const data: Record<string, unknown> = { DisplayDocTitle: true }
  expect(askForFullSize({ _root: { data: { ViewerPreferences: { data } } } })).toBe(true)
  expect(data).toEqual({ DisplayDocTitle: true, PrintScaling: 'None' })
})

test('a writer that keeps them elsewhere is told of, not passed over', () => {
  for (const other of [null, undefined, 'pdf', {}, { _root: null }, { _root: {} }, { _root: { data: {} } }]) {
    expect(askForFullSize(other)).toBe(false)
  }
})
