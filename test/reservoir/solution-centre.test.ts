import { describe, expect, test } from 'vitest'
import { sectionOf } from '../../shared-model/profile'
import { emptyBasin, solutionCentre } from '../../shared-model/reservoir'
import { PIPE, TUBE } from '../reference/small-build'

describe('where the solution’s mass centre lies', () => {
  test('in a rectangle at half its depth and mid-length', () => {
    expect(solutionCentre(emptyBasin(sectionOf(TUBE, false), 1000), 30)).toEqual({
      alongMm: 500,
      heightMm: expect.closeTo(15, 9)
    })
  })

  test('in a half-full round bore 4 r ÷ 3 π below the surface (centroid of a half circle, handbooks of statics)', () => {
    // bore radius 51.8: 51.8 - 4 × 51.8 / (3 pi) = 29.815; the quadrature is good to 0.1 mm at the vertical tangents
    const centre = solutionCentre(emptyBasin(sectionOf(PIPE, false), 1000), 51.8)
    expect(Math.abs(centre.heightMm - (51.8 - (4 * 51.8) / (3 * Math.PI)))).toBeLessThan(0.1)
  })

  test('on a fall it moves towards the low end: a wedge has its centre a third from its deep end', () => {
    // 20 mm deep at the datum end, rising 20 mm per m: dry after 1000 mm
    const basin = { ...emptyBasin(sectionOf(TUBE, false), 1000), slope: 0.02 }
    expect(solutionCentre(basin, 20).alongMm).toBeCloseTo(1000 / 3, 6)
  })
})
