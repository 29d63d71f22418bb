import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { graduationNm, type LengthShows, mm, parseLength, showLength } from '../../shared-model/units'

const inches = { shown: 'in', decimalMark: '.' } as const
const metric = { shown: 'mm', decimalMark: '.' } as const
const comma = { shown: 'mm', decimalMark: ',' } as const

const lengthOf = (text: string, options: Parameters<typeof parseLength>[1]): number | string => {
  const read = parseLength(text, options)
  return read.ok ? read.value : read.problem.code
}

describe('a length as people type it', () => {
  // 1 in = 25.4 mm exactly (NIST Handbook 44, Appendix C); the working stands beside each.
  const cases: readonly (readonly [string, Parameters<typeof parseLength>[1], number])[] = [
    ['7 1/2', inches, 190.5], // 7.5 x 25.4
    ['7-1/2"', inches, 190.5],
    ['7-1/2"', metric, 190.5],
    [`2' 3 1/2"`, metric, 698.5], // 27.5 x 25.4
    ['2 ft 3.5 in', metric, 698.5],
    [`2'-3 1/2"`, metric, 698.5],
    ['190', metric, 190],
    ['190', inches, 4826], // 190 x 25.4
    ['190 mm', inches, 190],
    ['19 cm', inches, 190],
    ['1.2 m', inches, 1200],
    ['1,5 cm', comma, 15],
    ['1,500', comma, 1.5],
    ['3/4 in', metric, 19.05], // 0.75 x 25.4
    ['7\u00bd in', metric, 190.5],
    ['7 1\u20442\u2033', metric, 190.5],
    ['2\u2032 3\u2033', metric, 685.8], // 27 x 25.4
    [' .5 in ', metric, 12.7],
    ['10 FT', metric, 3048],
    ['1/2 cm', metric, 5]
  ]
  for (const [text, options, expected] of cases) {
    it(`reads ${text} in a field that shows ${options.shown}`, () => expect(lengthOf(text, options)).toBe(expected))
  }
})

describe('a length that cannot be read is refused with the reason', () => {
  const cases: readonly (readonly [string, Parameters<typeof parseLength>[1], string])[] = [
    ['', inches, 'entry-empty'],
    ['  ', inches, 'entry-empty'],
    ['1,5', metric, 'entry-wrong-mark'],
    ['1.5', comma, 'entry-wrong-mark'],
    ['7 1/2', metric, 'entry-fraction-needs-inches'],
    ['7 1/0', inches, 'entry-zero-denominator'],
    ['-3', inches, 'entry-negative'],
    ['seven', inches, 'entry-unreadable'],
    ['7 furlongs', inches, 'entry-unreadable'],
    ['1.2.3', inches, 'entry-unreadable'],
    ['7 8', inches, 'entry-unreadable'],
    ['1e9', metric, 'entry-unreadable'],
    ['NaN', metric, 'entry-unreadable'],
    ['2.5\' 3"', inches, 'entry-unreadable']
  ]
  for (const [text, options, code] of cases) {
    it(`refuses "${text}" as ${code}`, () => expect(lengthOf(text, options)).toBe(code))
  }

  it('names both readings of 1,500', () => {
    expect(parseLength('1,500', metric)).toEqual({
      ok: false,
      problem: { code: 'entry-two-readings', figures: { text: '1,500', first: '1500', second: '1.500' } }
    })
  })

  it('names both bounds', () => {
    expect(parseLength('12 m', { ...metric, leastMm: 50, mostMm: 6000 })).toEqual({
      ok: false,
      problem: { code: 'length-outside', figures: { text: '12 m', valueMm: 12000, leastMm: 50, mostMm: 6000 } }
    })
    expect(lengthOf('9'.repeat(400), metric)).toBe('length-outside')
  })

  it('takes a negative position only where it is allowed', () => {
    expect(lengthOf('-7 1/2 in', { ...metric, negative: true })).toBe(-190.5)
  })
})

const SHOWS: readonly LengthShows[] = [
  { units: 'in', inchGraduation: 16, mmGraduation: 1, decimalMark: '.' },
  { units: 'in', inchGraduation: 32, mmGraduation: 1, decimalMark: ',' },
  { units: 'mm', inchGraduation: 16, mmGraduation: 0.5, decimalMark: '.' },
  { units: 'mm', inchGraduation: 16, mmGraduation: 0.5, decimalMark: ',' },
  { units: 'mm', inchGraduation: 16, mmGraduation: 1, decimalMark: '.' }
]

describe('parse(print(x)) = x', () => {
  for (const shows of SHOWS) {
    const step = graduationNm(shows)
    it(`holds on every graduation of ${step} nm from 0 to 6 m, marked, bare and in feet`, () => {
      const field = { shown: shows.units, decimalMark: shows.decimalMark }
      for (let count = 0; count * step <= 6_000_000_000; count += 1) {
        const x = mm((count * step) / 1_000_000)
        for (const options of [{}, { mark: false }, { feet: true }]) {
          const back = parseLength(showLength(x, shows, options), field)
          if (!back.ok || back.value !== x) expect([x, showLength(x, shows, options), back]).toBe('the same length')
        }
      }
    })
  }

  it('never throws and never gives NaN, whatever is typed', () => {
    const typed = fc.stringMatching(/^[-0-9 .,/'"a-z\u00bd\u2033]{0,14}$/)
    fc.assert(
      fc.property(fc.oneof(typed, fc.string()), (text) => {
        const read = parseLength(text, inches)
        return !read.ok || (Number.isFinite(read.value) && read.value >= 0)
      }),
      { seed: 4217, numRuns: 3000 }
    )
  })
})
