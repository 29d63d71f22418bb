import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addRatio,
  CURRENCIES,
  CURRENCY_CODES,
  compareRatio,
  divideRatio,
  minorUnitDigits,
  minorUnits,
  multiplyRatio,
  parseDecimal,
  parseMoney,
  ratio,
  ratioFromDecimal,
  ratioToNumber,
  roundRatio,
  showMoney,
  splitTotal,
  subtractRatio
} from '../../shared-model/units'

const SEED = { seed: 4217, numRuns: 500 }

describe('ISO 4217 list one: digits of the minor unit', () => {
  it('gives none to the yen, three to the dinars, four to the Chilean and Uruguayan units', () => {
    const digits = ['JPY', 'KRW', 'ISK', 'XOF', 'UGX', 'USD', 'EUR', 'HUF', 'KWD', 'TND', 'CLF', 'UYW'].map(
      minorUnitDigits
    )
    expect(digits).toEqual([0, 0, 0, 0, 0, 2, 2, 2, 3, 3, 4, 4])
  })

  it('holds three-letter codes, each with a name, and knows no other', () => {
    expect(CURRENCY_CODES.length).toBe(166)
    for (const code of CURRENCY_CODES) expect(code).toMatch(/^[A-Z]{3}$/)
    expect(CURRENCIES.EUR?.name).toBe('Euro')
    expect(minorUnitDigits('XXX')).toBeUndefined()
    expect(minorUnitDigits('constructor')).toBeUndefined()
  })
})

describe('rounding of an exact rational (General Decimal Arithmetic Specification, rounding modes)', () => {
  it('sends midpoints away from zero, to the even neighbour, up or down by name', () => {
    const round = (amount: string, rule: Parameters<typeof roundRatio>[1]): number =>
      roundRatio(ratioFromDecimal(amount), rule)
    expect([round('1234.5', 'half-even'), round('1234.5', 'half-up')]).toEqual([1234, 1235])
    expect([round('-0.5', 'half-even'), round('-0.5', 'half-up'), round('-1.5', 'half-even')]).toEqual([0, -1, -2])
    expect([round('1.01', 'up'), round('1.99', 'down'), round('-1.01', 'up'), round('-1.99', 'down')]).toEqual([
      2, 1, -2, -1
    ])
  })

  it('rounds 428.99 at 8.25 % to 35.39 without a binary fraction on the way', () => {
    const tax = multiplyRatio(ratioFromDecimal(428.99), ratioFromDecimal(0.0825))
    expect(minorUnits(tax, 2)).toBe(3539)
  })

  it('keeps the laws of fractions', () => {
    const any = fc.tuple(fc.bigInt(-1000n, 1000n), fc.bigInt(1n, 1000n)).map(([n, d]) => ratio(n, d))
    fc.assert(
      fc.property(any, any, (a, b) => {
        expect(subtractRatio(addRatio(a, b), b)).toEqual(a)
        if (b.num !== 0n) expect(divideRatio(multiplyRatio(a, b), b)).toEqual(a)
        expect(Math.sign(compareRatio(a, b))).toBe(Math.sign(ratioToNumber(a) - ratioToNumber(b)))
      }),
      SEED
    )
  })

  it('reads a decimal exactly as it is written', () => {
    expect(ratioFromDecimal('0.0825')).toEqual({ num: 33n, den: 400n })
    expect(ratioFromDecimal(1e-7)).toEqual({ num: 1n, den: 10_000_000n })
    expect(ratioFromDecimal(1e21)).toEqual({ num: 10n ** 21n, den: 1n })
    expect(() => ratioFromDecimal(Number.NaN)).toThrow(RangeError)
  })
})

describe('a total split by largest remainder', () => {
  it('is the seats of Contemporary Mathematics, section 11.5 (OpenStax)', () => {
    expect(splitTotal([6, 6, 2], 10)).toEqual([4, 4, 2])
    expect(splitTotal([6, 6, 2], 11)).toEqual([5, 5, 1])
    expect(splitTotal([1, 1, 1], 100)).toEqual([34, 33, 33])
  })

  it('loses no minor unit and keeps every part within one of its quota', () => {
    const weights = fc.array(fc.integer({ min: 0, max: 10_000 }), { minLength: 1, maxLength: 12 })
    fc.assert(
      fc.property(weights, fc.integer({ min: -1_000_000, max: 1_000_000 }), (lines, total) => {
        const parts = splitTotal(lines, total)
        expect(parts.reduce((a, b) => a + b, 0)).toBe(total)
        const sum = lines.reduce((a, b) => a + b, 0)
        for (const [i, part] of sum > 0 ? parts.entries() : []) {
          expect(Math.abs(part - (total * (lines[i] ?? 0)) / sum)).toBeLessThan(1)
        }
      }),
      SEED
    )
  })
})

describe('money as typed and shown', () => {
  it('reads back what it shows, in every currency', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CURRENCY_CODES),
        fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }),
        fc.constantFrom('.' as const, ',' as const),
        (currency, minor, mark) => {
          expect(parseMoney(showMoney(minor, currency, mark), currency, mark)).toEqual({
            ok: true,
            value: minor === 0 ? 0 : minor
          })
        }
      ),
      SEED
    )
  })

  it('shows 1250 cents as 12.50 and 1250 yen as 1250', () => {
    expect(showMoney(1250, 'USD', '.')).toBe('12.50 USD')
    expect(showMoney(1250, 'JPY', '.')).toBe('1250 JPY')
    expect(showMoney(-5, 'EUR', ',')).toBe('-0,05 EUR')
  })

  it('refuses more decimals than the currency has, a currency it does not know, and two readings', () => {
    expect(parseMoney('1.005', 'USD', '.')).toMatchObject({
      problem: { code: 'money-too-fine', figures: { digits: 2 } }
    })
    expect(parseMoney('1', 'ZZZ', '.')).toMatchObject({ problem: { code: 'currency-unknown' } })
    expect(parseMoney('1,500', 'USD', '.')).toMatchObject({ problem: { code: 'entry-two-readings' } })
    expect(parseMoney('9999999999999', 'USD', '.')).toMatchObject({ problem: { code: 'entry-outside' } })
    expect(parseDecimal('abc', '.')).toMatchObject({ problem: { code: 'entry-unreadable' } })
  })
})
