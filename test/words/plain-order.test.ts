import fc from 'fast-check'
import { expect, test } from 'vitest'
import { plainOrder, plainOrderIn } from '../../shared-model/words'

// Unicode Standard Annex 9, 2.1 to 2.4: LRE, RLE, PDF, LRO, RLO are U+202A to U+202E, LRI, RLI, FSI, PDI U+2066 to U+2069.
const TURNS = ['\u202A', '\u202B', '\u202C', '\u202D', '\u202E', '\u2066', '\u2067', '\u2068', '\u2069']

test('a sign that turns the order of writing is shown as a mark, and nothing else is changed', () => {
  for (const sign of TURNS) expect(plainOrder(`12 ${sign}mm`)).toBe('12 \uFFFDmm')
  for (const words of ['שורה 12 mm', 'رديف', '🌱👩‍🌾', 'e\u0301', '7 1/2 in', '\uD800'])
    expect(plainOrder(words)).toBe(words)
})

test('a value without such signs is given back itself, any other with as many letters and the same figures', () => {
  const turning = fc.string({ unit: fc.constantFrom(...TURNS, 'a', '1', 'ש') })
  fc.assert(
    fc.property(fc.array(fc.record({ name: turning, lengthMm: fc.double() })), (list) => {
      const plain = plainOrderIn(list)
      if (!TURNS.some((sign) => JSON.stringify(list).includes(sign))) expect(plain).toBe(list)
      expect(plain.map(({ lengthMm }) => lengthMm)).toEqual(list.map(({ lengthMm }) => lengthMm))
      expect(plain.map(({ name }) => name.length)).toEqual(list.map(({ name }) => name.length))
      for (const { name } of plain) for (const sign of TURNS) expect(name).not.toContain(sign)
    }),
    { seed: 20261125 }
  )
})
