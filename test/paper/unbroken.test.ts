import { expect, test } from 'vitest'
import { unbroken } from '../../shared-model/paper/unbroken'

test('a figure and its unit, and a whole number and its fraction, stay on one line', () => {
  expect(unbroken('cut 7 1/2 in off')).toBe('cut 7\u00a01/2\u00a0in off')
  expect(unbroken('Ø 52 mm at 130 mm')).toBe('Ø\u00a052\u00a0mm at 130\u00a0mm')
  expect(unbroken('1 h 50 min, 42 % of 0.71 US gal')).toBe('1\u00a0h 50\u00a0min, 42\u00a0% of 0.71\u00a0US gal')
})

test('words that only begin like a unit are left alone', () => {
  for (const words of ['3 inside', '2 grommets', '4 holes', '5 mint plants', 'sheet 1 of 3'])
    expect(unbroken(words)).toBe(words)
})
