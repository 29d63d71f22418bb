import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { packCircles } from '../../shared-model/rings'
import { centreField } from '../../shared-model/rings/centre-field'
import { circleBound } from '../../shared-model/rings/circle-bound'
import { worstOverlap } from './check-layout'

interface Case {
  readonly name: string
  readonly widthMm: number
  readonly heightMm: number
  readonly cutDiameterMm: number
  readonly webMm: number
  readonly edgeMm: number
  readonly known: number
  readonly upper: number | null
}

/** Best known counts and proven bounds; each line names its source. */
const CASES: readonly Case[] = readFileSync(new URL('../reference/rings.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line))

const atOnce = { work: 0, stop: () => false }
const SEED = 40_213

const packed = (sheet: Case, work: number) => {
  const result = packCircles(sheet, { work, stop: () => false })
  if (!result.ok) throw new Error(result.problem.code)
  return result.value
}

const expectKnown = (sheet: Case, work: number) => {
  const { count, centres, upperBound } = packed(sheet, work)
  expect(count).toBeGreaterThanOrEqual(sheet.known)
  expect(count).toBeLessThanOrEqual(sheet.upper ?? Number.POSITIVE_INFINITY)
  expect(upperBound).toBeGreaterThanOrEqual(sheet.known)
  expect(centres).toHaveLength(count)
  expect(worstOverlap(sheet, centres)).toBeLessThan(0.01)
}

describe('equal circles on a sheet', () => {
  it.each(CASES.filter(({ name }) => name.startsWith('strip')))(
    '$name holds what the strip theorem says, proven without a search',
    (sheet) => {
      const { count, proven, upperBound } = packed(sheet, 0)
      expect({ count, upperBound, proven }).toEqual({ count: sheet.upper, upperBound: sheet.upper, proven: true })
    }
  )

  it.each(CASES.filter(({ name }) => name.startsWith('sheet')))('$name holds as many as the best known', (sheet) => {
    expectKnown(sheet, 6000)
  })

  it.each(CASES.filter(({ name, known }) => name.startsWith('square') && known <= 34))(
    '$name is packed as tightly as the published record',
    (sheet) => {
      expectKnown(sheet, 150_000)
    }
  )

  it.each(CASES.filter(({ name, known }) => name.startsWith('square') && known > 34))(
    '$name is packed as tightly as the published record, found with more work',
    (sheet) => {
      expectKnown(sheet, 650_000)
    }
  )

  it('gives the same layout for the same sheet and work', () => {
    const sheet = CASES.find(({ name }) => name === 'square-20')
    if (!sheet) throw new Error('no such case')
    expect(packed(sheet, 3000)).toEqual(packed(sheet, 3000))
  })

  it('keeps webs and margins and never passes its own bound', () => {
    const side = fc.double({ min: 60, max: 700, noNaN: true })
    const sheets = fc.record({
      widthMm: side,
      heightMm: side,
      cutDiameterMm: fc.double({ min: 30, max: 110, noNaN: true }),
      webMm: fc.double({ min: 0, max: 8, noNaN: true }),
      edgeMm: fc.double({ min: 0, max: 12, noNaN: true }),
      work: fc.constantFrom(0, 40)
    })
    fc.assert(
      fc.property(sheets, ({ work, ...sheet }) => {
        const result = packCircles(sheet, { work, stop: () => false })
        if (!result.ok) return false
        const { count, centres, upperBound } = result.value
        return count === centres.length && count <= upperBound && worstOverlap(sheet, centres) < 0.0001
      }),
      { seed: SEED, numRuns: 200 }
    )
  })

  it('holds as many when the sheet is turned', () => {
    const side = fc.integer({ min: 60, max: 900 })
    fc.assert(
      fc.property(side, side, fc.integer({ min: 30, max: 110 }), (widthMm, heightMm, cutDiameterMm) => {
        const sheet = { widthMm, heightMm, cutDiameterMm, webMm: 3, edgeMm: 5 }
        const turned = { ...sheet, widthMm: heightMm, heightMm: widthMm }
        const [a, b] = [packCircles(sheet, atOnce), packCircles(turned, atOnce)]
        return a.ok && b.ok && a.value.count === b.value.count
      }),
      { seed: SEED, numRuns: 300 }
    )
  })

  it('bounds a longer sheet no lower', () => {
    const side = fc.integer({ min: 60, max: 900 })
    fc.assert(
      fc.property(side, side, fc.integer({ min: 1, max: 200 }), (widthMm, heightMm, more) => {
        const sheet = { widthMm, heightMm, cutDiameterMm: 51, webMm: 3, edgeMm: 5 }
        const [short, long] = [centreField(sheet), centreField({ ...sheet, widthMm: widthMm + more })]
        return short.ok && long.ok && circleBound(short.value) <= circleBound(long.value)
      }),
      { seed: SEED, numRuns: 300 }
    )
  })

  it('holds nothing, proven, where one circle is wider than the sheet', () => {
    const result = packCircles({ widthMm: 100, heightMm: 40, cutDiameterMm: 51, webMm: 3, edgeMm: 5 }, atOnce)
    expect(result.ok && result.value).toMatchObject({ count: 0, upperBound: 0, proven: true, centres: [] })
  })

  it('refuses a saw of no width and names both bounds', () => {
    const result = packCircles({ widthMm: 100, heightMm: 40, cutDiameterMm: 0, webMm: 3, edgeMm: 5 }, atOnce)
    expect(result).toEqual({
      ok: false,
      problem: {
        code: 'out-of-range',
        figures: { what: 'cutDiameterMm', value: 0, least: 1, most: 100_000 },
        where: { field: 'cutDiameterMm' }
      }
    })
  })

  it('refuses a width that is no number', () => {
    const sheet = { widthMm: Number.NaN, heightMm: 40, cutDiameterMm: 30, webMm: 3, edgeMm: 5 }
    expect(packCircles(sheet, atOnce)).toMatchObject({ ok: false, problem: { code: 'not-finite' } })
  })
})

describe('the bound on a sheet', () => {
  const squares = CASES.filter(({ name, known }) => name.startsWith('square') && known <= 32)

  it.each(squares)('$name is bounded by the optimum proven for a square of that size', (sheet) => {
    const field = centreField(sheet)
    expect(field.ok && circleBound(field.value)).toBe(sheet.upper)
  })

  it.each(squares)('$name holds one fewer, proven, when its circles are a thousandth wider', (sheet) => {
    const field = centreField({ ...sheet, cutDiameterMm: sheet.cutDiameterMm * 1.001 })
    expect(field.ok && circleBound(field.value)).toBe(sheet.known - 1)
  })

  it('leaves room for 35 in the square of the best 33, because 34 and 35 are not proven', () => {
    const sheet = CASES.find(({ name }) => name === 'square-33')
    const field = sheet && centreField(sheet)
    expect(field?.ok && circleBound(field.value)).toBe(35)
  })

  it('is Oler’s: 600 × 400 mm, 76 mm saw, webs 4, edges 6 hold 40 at most', () => {
    // a = (600 − 12 − 76)/80 = 6.4, b = (400 − 12 − 76)/80 = 3.9:
    // (2/√3)·6.4·3.9 + 6.4 + 3.9 + 1 = 28.82 + 11.3 = 40.12 → 40.
    const field = centreField({ widthMm: 600, heightMm: 400, cutDiameterMm: 76, webMm: 4, edgeMm: 6 })
    expect(field.ok && circleBound(field.value)).toBe(40)
  })
})
