import { expect, test } from 'vitest'
import { gapMark, gapWords } from '../../../renderer/section/gap-words'
import { defaultWorkshop } from '../../../shared-model/design'
import { sayIn } from '../../../shared-model/words'

const say = sayIn(defaultWorkshop({ units: 'mm' }).shows, 'EUR')

test('a cup that stands in the solution is said by how deep it stands, never by a negative gap', () => {
  expect(gapWords(-17.1, say)).toEqual({ name: 'Cup in solution', value: '17 mm deep' })
  expect(gapMark(-17.1, say)).toBe('17 mm deep')
})

test('a cup above the solution is said by its gap, on the graduation', () => {
  expect(gapWords(12.2, say)).toEqual({ name: 'Air gap', value: '12 mm' })
  expect(gapMark(12.2, say)).toBe('gap 12 mm')
})

test('a cup within half a graduation of the solution touches it', () => {
  expect(gapWords(-0.2, say).value).toBe('none, the cup touches')
})
