import { expect, test } from 'vitest'
import { readNewer, readNewerWorkshop } from '../../../renderer/documents/read-newer'
import { DEMOS, parseDesignText, parseWorkshopText, printDesign, printWorkshop } from '../../../shared-model/design'

const [demo] = DEMOS
if (demo === undefined) throw new Error('there is no demo')
const read = (value: unknown) => {
  const text = JSON.stringify(value)
  const parsed = parseDesignText(text)
  return readNewer(text, parsed.ok ? [] : parsed.problem)
}
const whole: object = JSON.parse(printDesign(demo.design))

test('a design of a newer schema is read as far as it is known, and what is new in it is left out', () => {
  expect(read({ ...whole, schema: 7, mood: 'new' })).toEqual(demo.design)
})

test('a design of this schema, or of a newer one that does not hold to its bounds, is not', () => {
  expect(read(whole)).toBeNull()
  expect(read({ ...whole, schema: 7, quantity: -1 })).toBeNull()
  expect(read({ schema: 7 })).toBeNull()
})

test('a workshop of a newer schema is read as far as it is known; one of this schema is not', () => {
  const text = JSON.stringify({ ...JSON.parse(printWorkshop(demo.workshop)), schema: 9, mood: 'new' })
  const parsed = parseWorkshopText(text)
  expect(readNewerWorkshop(text, parsed.ok ? [] : parsed.problem)).toEqual(demo.workshop)
  expect(readNewerWorkshop(printWorkshop(demo.workshop), [])).toBeNull()
})
