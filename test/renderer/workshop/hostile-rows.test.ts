import fc from 'fast-check'
import { expect, test } from 'vitest'
import { offerRows } from '../../../renderer/screens/workshop/rows/offer-rows'
import { readRows } from '../../../renderer/screens/workshop/rows/read-rows'
import type { RowTable } from '../../../renderer/screens/workshop/rows/row-table'
import { sheetRows } from '../../../renderer/screens/workshop/rows/sheet-rows'
import { splitRows } from '../../../renderer/screens/workshop/rows/split-rows'
import { stockRows } from '../../../renderer/screens/workshop/rows/stock-rows'
import { writeRows } from '../../../renderer/screens/workshop/rows/write-rows'
import { DEMOS, parseWorkshop, type Workshop } from '../../../shared-model/design'
import { CATALOGUE } from '../../../shared-model/parts'

const [demo] = DEMOS
if (demo === undefined) throw new Error('there is no demo')
const { workshop } = demo
const rowsFor = { shows: workshop.shows, currency: workshop.currency, today: '2026-05-01' }

const CELLS = [
  '1e999',
  '-1e999',
  'NaN',
  'Infinity',
  '-0',
  '99999999999999999999',
  '0x10',
  '1e-320',
  '__proto__',
  'constructor',
  '\u0000',
  '\uD800',
  '\uDC00 lone',
  '=1+1',
  '"',
  '""',
  "'",
  '\u202E12',
  '１２',
  '٣',
  '1,500',
  '-1',
  '',
  ' ',
  '🌱',
  'W'.repeat(10_000),
  '2026-02-30',
  '0000-00-00',
  '9'.repeat(400),
  '7 1/0',
  '1/1e999'
]

/** Cells of a written table put out of place or replaced: what is taken must be what the document's own parser takes. */
const spoiltCells = (text: string, hits: readonly (readonly [number, string])[]): string => {
  const rows = (splitRows(text) ?? []).map((row) => [...row])
  const width = rows[0]?.length ?? 1
  for (const [at, cell] of hits) {
    const row = rows[Math.floor(at / width) % Math.max(1, rows.length)]
    if (row !== undefined) row[at % width] = cell
  }
  return rows.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')).join('\r\n')
}

test('hostile cells are refused by row, or taken as a workshop that the parser passes', () => {
  const hits = fc.array(fc.tuple(fc.nat(400), fc.oneof(fc.constantFrom(...CELLS), fc.string({ unit: 'binary' }))), {
    minLength: 1,
    maxLength: 5
  })
  let taken = 0
  fc.assert(
    fc.property(hits, (list) => {
      const refusedOr = <T extends { readonly id: string }>(table: RowTable<T>): Workshop | null => {
        const read = readRows(spoiltCells(writeRows(table, workshop), list), table, workshop, workshop)
        if (read.ok) return read.value.workshop
        expect(read.problem.length).toBeGreaterThan(0)
        for (const words of read.problem) expect(words).not.toMatch(/undefined|\[object/)
        return null
      }
      for (const after of [
        refusedOr(stockRows(workshop, CATALOGUE.profiles, rowsFor)),
        refusedOr(sheetRows(workshop, rowsFor)),
        refusedOr(offerRows(workshop, rowsFor))
      ]) {
        if (after === null) continue
        taken += 1
        const parsed = parseWorkshop(after)
        expect(parsed.ok ? [] : parsed.problem).toEqual([])
      }
      expect(Reflect.get({}, 'polluted')).toBeUndefined()
    }),
    { seed: 20261125, numRuns: 300 }
  )
  expect(taken).toBeGreaterThan(50)
})
