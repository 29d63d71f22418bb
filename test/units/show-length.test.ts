import { describe, expect, it } from 'vitest'
import { exactNm, graduationNm, type LengthShows, mm, setOnGraduation, showLength } from '../../shared-model/units'

const inch16: LengthShows = { units: 'in', inchGraduation: 16, mmGraduation: 1, decimalMark: '.' }
const inch32: LengthShows = { ...inch16, inchGraduation: 32 }
const half: LengthShows = { ...inch16, units: 'mm', mmGraduation: 0.5 }

describe('a length as it is printed', () => {
  it('is a whole and a fraction in lowest terms, with its mark', () => {
    expect(showLength(mm(190.5), inch16)).toBe('7 1/2 in')
    expect(showLength(mm(0), inch16)).toBe('0 in')
    expect(showLength(mm(1.5875), inch16, { mark: false })).toBe('1/16')
    expect(showLength(mm(0.79375), inch32)).toBe('1/32 in')
    expect(showLength(mm(190.5), half)).toBe('190.5 mm')
    expect(showLength(mm(190.5), { ...half, decimalMark: ',' })).toBe('190,5 mm')
    expect(showLength(mm(-190.5), inch16)).toBe('-7 1/2 in')
  })

  it('takes feet only where they are asked for, from 2 ft on', () => {
    expect(showLength(mm(698.5), inch16)).toBe('27 1/2 in')
    expect(showLength(mm(698.5), inch16, { feet: true })).toBe('2 ft 3 1/2 in')
    expect(showLength(mm(609.6), inch16, { feet: true })).toBe('2 ft')
    expect(showLength(mm(584.2), inch16, { feet: true })).toBe('23 in')
  })

  it('goes to the even graduation at an exact midpoint', () => {
    // 1/32 in lies midway between 0 and 1/16; 3/32 in between 1/16 and 2/16.
    expect(showLength(mm(0.79375), inch16)).toBe('0 in')
    expect(showLength(mm(2.38125), inch16)).toBe('1/8 in')
    expect(showLength(mm(0.25), half)).toBe('0 mm')
    expect(showLength(mm(0.75), half)).toBe('1 mm')
    expect(showLength(mm(0.750001), half)).toBe('1 mm')
    expect(showLength(mm(0.249999), half)).toBe('0 mm')
  })

  it('throws on a length that is none: a bug, not an entry', () => {
    expect(() => showLength(mm(Number.NaN), inch16)).toThrow(RangeError)
  })
})

describe('a length set on the graduation', () => {
  it('is worked in whole nanometres: 1/16 in is 1 587 500 of them', () => {
    expect(graduationNm(inch16)).toBe(1_587_500)
    expect(graduationNm(inch32)).toBe(793_750)
    expect(graduationNm(half)).toBe(500_000)
    expect(exactNm(mm(0.396875))).toBe(396_875)
  })

  it('goes down where it must fit between two faces, and stays where it is on the graduation', () => {
    expect(setOnGraduation(mm(190.49), graduationNm(half), 'down')).toBe(190)
    expect(setOnGraduation(mm(190.01), graduationNm(half), 'up')).toBe(190.5)
    expect(setOnGraduation(mm(3 * 25.4), graduationNm(inch16), 'down')).toBe(76.2)
    expect(setOnGraduation(mm(0.1 + 0.2 + 0.2), graduationNm(half), 'down')).toBe(0.5)
  })
})
