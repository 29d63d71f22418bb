import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rulerMarks } from '../../../renderer/board/ruler-marks'
import { LEAST_SCALE, MOST_SCALE } from '../../../renderer/board/scale'

const scales = fc.double({ min: LEAST_SCALE, max: MOST_SCALE, noNaN: true })
const units = fc.constantFrom('in' as const, 'mm' as const)

const leastGapMm = (marks: readonly { readonly atMm: number }[]): number =>
  Math.min(...marks.slice(1).map((mark, index) => mark.atMm - (marks[index]?.atMm ?? 0)))

describe('the rulers', () => {
  it('have marks that can be told apart and labels that do not touch', () => {
    fc.assert(
      fc.property(scales, units, (pxPerMm, unit) => {
        const marks = rulerMarks(-200, 1200, pxPerMm, unit)
        const labelled = marks.filter((mark) => mark.label !== null)
        expect(leastGapMm(marks) * pxPerMm).toBeGreaterThan(4)
        expect(leastGapMm(labelled) * pxPerMm).toBeGreaterThan(40)
      }),
      { seed: 3 }
    )
  })

  it('label whole inches where inches are shown', () => {
    // 1:5, about 0.756 px to the millimetre: six inches are 115 px apart, two are 38 and would touch.
    const labelled = rulerMarks(0, 1000, 96 / 25.4 / 5, 'in').filter((mark) => mark.label !== null)
    expect(labelled.map((mark) => mark.label).slice(0, 4)).toEqual(['0', '6', '12', '18'])
    expect(labelled[1]?.atMm).toBeCloseTo(152.4, 9)
  })

  it('have nought at the sill’s corner', () => {
    expect(rulerMarks(-100, 100, 1, 'mm').find((mark) => mark.label === '0')?.atMm).toBeCloseTo(0, 12)
  })
})
