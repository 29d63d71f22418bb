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

test('a run as wide as a narrow column may be parted between any two signs, and holds them all; a long word is left whole', () => {
  for (const run of ['W'.repeat(200), 'W'.repeat(14), '\u{1F331}'.repeat(40), 'a'.repeat(30)]) {
    const parted = unbroken(run)
    expect(parted.replaceAll('\u200b', '')).toBe(run)
    // No piece is wider than six capitals of the widest kind.
    for (const piece of parted.split('\u200b')) expect([...piece].length).toBeLessThanOrEqual(11)
    expect(parted).not.toMatch(/[\uD800-\uDBFF]\u200b/)
  }
  for (const word of ['non-circulating', 'self-fusing', 'downspout-10ft#2', 'polyvinylchloride', '2026-03-14'])
    expect(unbroken(word)).toBe(word)
})
