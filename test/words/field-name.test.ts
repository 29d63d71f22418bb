import { describe, expect, it } from 'vitest'
import { problemText } from '../../shared-model/words'
import { fieldName, fieldPlace } from '../../shared-model/words/field-name'

const shows = { units: 'mm', inchGraduation: 16, mmGraduation: 1, decimalMark: '.' } as const

describe('the name of a field', () => {
  it('loses its unit and its capitals', () => {
    expect(fieldName('rimOutsideMm')).toBe('rim outside')
    expect(fieldName('channels.c1.lengthMm')).toBe('length')
  })

  it('says where it stands, from the whole to the part', () => {
    expect(fieldPlace('channels.c1.lengthMm')).toBe('length (channel c1)')
    expect(fieldPlace('channels.c1.sites.s2.atMm')).toBe('at (channel c1, site s2)')
    expect(fieldPlace('pricing.feePercent')).toBe('fee (pricing)')
    expect(fieldPlace('position along the sill')).toBe('position along the sill')
  })
})

describe('a length that is out of range', () => {
  it('is said by its name, with its value and both bounds in the shown unit', () => {
    const figures = { what: 'channels.c1.lengthMm', value: 0, least: 20, most: 12_000 }
    expect(problemText({ code: 'out-of-range', figures }, shows)).toMatch(
      /Length \(channel c1\) is out of range.*0 mm.*20 mm to 12000 mm/s
    )
  })
})
