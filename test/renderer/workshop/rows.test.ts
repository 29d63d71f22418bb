import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { offerRows } from '../../../renderer/screens/workshop/rows/offer-rows'
import { readRows } from '../../../renderer/screens/workshop/rows/read-rows'
import type { RowsFor } from '../../../renderer/screens/workshop/rows/row-table'
import { sheetRows } from '../../../renderer/screens/workshop/rows/sheet-rows'
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
const sheets = (workshop: Workshop) => sheetRows(workshop, rowsFor(workshop))
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

  test('a byte order mark, rows that end with CR alone, blank rows and a line that names the mark are taken as meant', () => {
    expect(splitRows('\uFEFFa,b\r1,2\r\r3,4\r')).toEqual([['a', 'b'], ['1', '2'], [], ['3', '4']])
    expect(splitRows('sep=;\r\na,1;b\r\n')).toEqual([[], ['a,1', 'b']])
    expect(splitRows('\n\n')).toEqual([])
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
      const foams = readRows(writeRows(sheets(workshop), workshop), sheets(workshop), workshop, workshop)
      expect(foams.ok && foams.value.workshop).toEqual(workshop)
    }
  })

  // OWASP, CSV Injection: =, +, -, @, tab and carriage return at the start of a cell.
  test('a name that would run as a formula is guarded on the way out and whole on the way in', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('=', '+', '-', '@', "'=", "''-", '＝'),
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

  test('rows are counted as the file has them, blank ones too', () => {
    const text = `\uFEFFProfile,Length,Price\r\n\r\n"${profile}",3000,1.50\r\n\r\n"${profile}",-5,1.50\r\n`
    const read = readRows(text, stock(workshop), workshop, workshop)
    expect(read.ok ? [] : read.problem.map((each) => each.split(',')[0])).toEqual(['Row 5'])
  })

  test('an id that stands in two rows is told, and neither is taken', () => {
    const [bar] = workshop.stock
    const text = `Id,Price\n${bar?.id},1.50\n${bar?.id},2.50\n`
    expect(readRows(text, stock(workshop), workshop, workshop)).toMatchObject({
      ok: false,
      problem: [`Row 3, Id: ${bar?.id} stands in row 2 too.`]
    })
  })

  test('a price with a decimal comma is taken where the shop writes commas, and refused by name where it does not', () => {
    const comma = inShows({ decimalMark: ',', units: 'mm' })
    const text = `Profile;Length;Price\n${profile};3000;12,50\n`
    const read = readRows(text, stock(comma), comma, comma)
    expect(read.ok && read.value.workshop.stock.at(-1)?.offer.priceMinor).toBe(1250)
    const other = readRows(text, stock(workshop), workshop, workshop)
    expect(other.ok ? '' : other.problem[0]).toMatch(/^Row 2, Price: /)
  })

  test('a figure outside its bounds is told with its row', () => {
    const read = readRows(`${profile}\t30000000`, stock(workshop), workshop, workshop)
    expect(read.ok ? [] : read.problem).toHaveLength(1)
    expect(read.ok ? '' : read.problem[0]).toMatch(/^Row 1/)
  })
})

describe('price breaks as columns', () => {
  const market = DEMOS.find(({ id }) => id === 'market-batch')
  if (market === undefined) throw new Error('there is no such demo')
  const { workshop } = market
  const box = workshop.offers.find(({ id }) => id === 'box')

  test('every break goes out and comes in again, into a workshop with fewer columns too', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 2, max: 5000 }), { maxLength: 20 }),
        fc.integer({ min: 1, max: 9_999 }),
        (counts, priceMinor) => {
          const breaks = counts.toSorted((a, b) => a - b).map((fromPacks) => ({ fromPacks, priceMinor }))
          const full = {
            ...workshop,
            offers: workshop.offers.map((each) => (each === box ? { ...each, breaks } : each))
          }
          const text = writeRows(offers(full), full)
          const read = readRows(text, offers(workshop), workshop, workshop)
          expect(read.ok && read.value.workshop).toEqual(full)
        }
      ),
      { seed: 20_250_501, numRuns: 40 }
    )
  })

  test('breaks stand in order, however they were entered, and an emptied pair takes its break away', () => {
    const read = (text: string) => readRows(text, offers(workshop), workshop, workshop)
    const swapped = read('Id,From packs 1,Price then 1,From packs 2,Price then 2\nbox,50,3.10,25,3.40')
    const breaksOf = (got: typeof swapped) => got.ok && got.value.workshop.offers.find(({ id }) => id === 'box')?.breaks
    expect(breaksOf(swapped)).toEqual([
      { fromPacks: 25, priceMinor: 340 },
      { fromPacks: 50, priceMinor: 310 }
    ])
    expect(breaksOf(read('Id,From packs 1,Price then 1\nbox,,'))).toEqual([])
  })

  test('half a break, a broken count and a price below nought are refused with their column', () => {
    const why = (text: string) => {
      const read = readRows(text, offers(workshop), workshop, workshop)
      return read.ok ? [] : read.problem
    }
    expect(why('Id,From packs 2,Price then 2\nbox,50,')).toEqual([
      'Row 2, Price then 2: the price from 50 packs on is missing.'
    ])
    expect(why('Id,From packs 2,Price then 2\nbox,,3')).toEqual([
      'Row 2, From packs 2: from how many packs on this price counts is missing.'
    ])
    expect(why('Id,From packs 1\nbox,2.5')).toEqual([
      'Row 2, From packs 1: “2.5” is not a whole number of packs from 1 on.'
    ])
    expect(why('Id,Price then 1\nbox,-3')).toHaveLength(1)
  })
})

describe('cells pasted into a table', () => {
  const market = DEMOS.find(({ id }) => id === 'market-batch')
  if (market === undefined) throw new Error('there is no such demo')
  const { workshop } = market
  const at = (head: string): number => offers(workshop).columns.findIndex((column) => column.head === head)
  const paste = (text: string, row: number, head: string) =>
    readRows(text, offers(workshop), workshop, workshop, { row, column: at(head) })

  test('go over the cells from the focused one on, rows and columns in their places', () => {
    const read = paste('27.00\tRiver yard\n2.80\tRiver yard\r\n', 0, 'Price')
    expect(read).toMatchObject({ ok: true, value: { changed: 2, added: 0 } })
    const made = read.ok ? read.value.workshop.offers : []
    expect(made.slice(0, 2).map(({ offer }) => [offer.priceMinor, offer.supplier])).toEqual([
      [2700, 'River yard'],
      [280, 'River yard']
    ])
    expect(made.slice(2)).toEqual(workshop.offers.slice(2))
  })

  test('a blank row on the clipboard keeps the rows below it in their places', () => {
    const read = paste('1.11\n\n3.33\n', 0, 'Price')
    const made = read.ok ? read.value.workshop.offers.map(({ offer }) => offer.priceMinor) : []
    expect(made.slice(0, 3)).toEqual([111, workshop.offers[1]?.offer.priceMinor, 333])
  })

  test('rows past the last are added, and refused while they lack what a row needs', () => {
    const last = workshop.offers.length
    const added = paste('Labels\tSmall labels\t50\t1\t6.00', last, 'For')
    expect(added).toMatchObject({ ok: true, value: { changed: 0, added: 1 } })
    const short = paste('1.00\n2.00', last - 1, 'Price')
    expect(short).toMatchObject({ ok: false, problem: ['Row 2, For: it is needed.', 'Row 2, Name: it is needed.'] })
  })

  test('a cell that cannot be read leaves every cell as it was, with its row and column', () => {
    expect(paste('1.00\ndear', 0, 'Price')).toMatchObject({
      ok: false,
      problem: [expect.stringMatching(/^Row 2, Price: /)]
    })
  })
})
