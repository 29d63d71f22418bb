import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { offerRows } from '../../../renderer/screens/workshop/rows/offer-rows'
import { readRows } from '../../../renderer/screens/workshop/rows/read-rows'
import type { RowsFor } from '../../../renderer/screens/workshop/rows/row-table'
import { splitRows } from '../../../renderer/screens/workshop/rows/split-rows'
import { stockRows } from '../../../renderer/screens/workshop/rows/stock-rows'
import { writeRows } from '../../../renderer/screens/workshop/rows/write-rows'
import { addOffer, DEMOS, editShows, type Workshop } from '../../../shared-model/design'
import { CATALOGUE } from '../../../shared-model/parts'

const [demo] = DEMOS
if (demo === undefined) throw new Error('there is no demo')
const rowsFor = (workshop: Workshop): RowsFor => ({
  shows: workshop.shows,
  currency: workshop.currency,
  today: '2025-05-01'
})
const inShows = (changes: Parameters<typeof editShows>[1]): Workshop => {
  const made = editShows(demo.workshop, changes)
  if (!made.ok) throw new Error(made.problem.code)
  return made.value
}
const stock = (workshop: Workshop) => stockRows(workshop, CATALOGUE.profiles, rowsFor(workshop))
const offers = (workshop: Workshop) => offerRows(workshop, rowsFor(workshop))

describe('cells of pasted and imported text', () => {
  // RFC 4180, section 2: CRLF between records, quotes doubled inside quotes, separators and breaks inside quotes kept.
  test('quotes, doubled quotes and breaks inside them are read as RFC 4180 says', () => {
    expect(splitRows('a,"b ""c"", d","e\r\nf"\r\n1,2,3\r\n')).toEqual([
      ['a', 'b "c", d', 'e\r\nf'],
      ['1', '2', '3']
    ])
  })

  test('tabs part cells before semicolons, and those before commas', () => {
    expect(splitRows('a\t1,5\tb;c')).toEqual([['a', '1,5', 'b;c']])
    expect(splitRows('a;1,5\n"x;y";2')).toEqual([
      ['a', '1,5'],
      ['x;y', '2']
    ])
  })

  test('a quotation mark that is never closed is told', () => {
    expect(splitRows('a,"b\nc')).toBeNull()
  })
})

describe('prices out and in again', () => {
  test.each(['.', ','] as const)('what is written with the mark %s is read back the same', (decimalMark) => {
    for (const units of ['mm', 'in'] as const) {
      const workshop = inShows({ decimalMark, units })
      const read = readRows(writeRows(stock(workshop), workshop), stock(workshop), workshop, workshop)
      expect(read).toMatchObject({ ok: true, value: { added: 0, changed: workshop.stock.length } })
      expect(read.ok && read.value.workshop).toEqual(workshop)
      const packs = readRows(writeRows(offers(workshop), workshop), offers(workshop), workshop, workshop)
      expect(packs.ok && packs.value.workshop).toEqual(workshop)
    }
  })

  // OWASP, CSV Injection: =, +, -, @, tab and carriage return at the start of a cell.
  test('a name that would run as a formula is guarded on the way out and whole on the way in', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('=', '+', '-', '@'),
        fc.stringMatching(/^[A-Za-z(;,"][ -~]{0,20}[A-Za-z)]$/),
        (sign, rest) => {
          const made = addOffer(demo.workshop, {
            need: 'packing',
            partId: '',
            name: `${sign}${rest}`,
            packSize: 1,
            leastPacks: 1,
            breaks: [],
            offer: { priceMinor: 100, supplier: '', pricedOn: '2025-05-01', taxInside: false }
          })
          if (!made.ok) throw new Error(made.problem.code)
          const text = writeRows(offers(made.value), made.value)
          expect(text).toContain(`'${sign}`)
          const read = readRows(text, offers(made.value), made.value, made.value)
          expect(read.ok && read.value.workshop).toEqual(made.value)
        }
      ),
      { seed: 20250501, numRuns: 100 }
    )
  })
})

describe('rows pasted from a spreadsheet', () => {
  const workshop = inShows({ decimalMark: '.', units: 'mm' })
  const profile = CATALOGUE.profiles[0]?.name ?? ''

  test('rows without heads stand in the order of the screen and are added; the price has today’s date', () => {
    const read = readRows(`${profile}\t3000\t\t12.50\tYard\n`, stock(workshop), workshop, workshop)
    expect(read).toMatchObject({ ok: true, value: { added: 1, changed: 0 } })
    expect(read.ok && read.value.workshop.stock.at(-1)).toMatchObject({
      lengthMm: 3000,
      count: null,
      offer: { priceMinor: 1250, supplier: 'Yard', pricedOn: '2025-05-01', taxInside: false }
    })
    expect(read.ok && read.value.workshop.stock.slice(0, -1)).toEqual(workshop.stock)
  })

  test('every error is told by row and column, and one error takes nothing', () => {
    const text = `Profile,Length,Price,Colour\n${profile},3000,12.50,\nno such,-5,twelve,red\n,2000,1,\n`
    const read = readRows(text, stock(workshop), workshop, workshop)
    const errors = read.ok ? [] : read.problem
    expect(errors[0]).toContain('Row 1, column 4')
    for (const at of ['Row 3, Profile', 'Row 3, Length (mm)', 'Row 3, Price', 'Row 4, Profile']) {
      expect(errors.some((error) => error.startsWith(at))).toBe(true)
    }
  })

  test('a figure outside its bounds is told with its row', () => {
    const read = readRows(`${profile}\t30000000`, stock(workshop), workshop, workshop)
    expect(read.ok ? [] : read.problem).toHaveLength(1)
    expect(read.ok ? '' : read.problem[0]).toMatch(/^Row 1/)
  })
})
