import { expect, test } from 'vitest'
import { readSizes } from '../../../renderer/screens/price/read-sizes'

test('batch sizes are read with commas, spaces or both, each once and the smallest first', () => {
  expect(readSizes('12, 4 1;24,4')).toEqual({ ok: true, value: [1, 4, 12, 24] })
  expect(readSizes('')).toEqual({ ok: true, value: [] })
})

test('what is not a whole number from 1 to 1000 is refused by name', () => {
  for (const [text, word] of [
    ['1, 0', '0'],
    ['2.5', '2.5'],
    ['1001', '1001'],
    ['-3', '-3'],
    ['ten', 'ten']
  ] as const) {
    const read = readSizes(text)
    expect(read.ok ? '' : read.problem).toContain(`“${word}”`)
  }
})
