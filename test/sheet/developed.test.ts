import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { developedSaddle } from '../../shared-model/sheet/developed'

const span = (values: readonly number[]): number => Math.max(...values) - Math.min(...values)

describe('a hole on the unrolled surface of a pipe', () => {
  // No published table was found; worked by hand. R = 55 mm, r = 38 mm: half the arc is R asin(38/55). For x = 0.762745
  // the sine is x - x³/6 + x⁵/120 - x⁷/5040 = 0.762745 - 0.073957 + 0.002151 - 0.000030 = 0.690909 = 38/55, so the arc is
  // 2 · 55 · 0.762745 = 83.902 mm around, and 76 mm along.
  test('of 76 mm in a pipe of 110 mm is 76 mm along and 83.90 mm around', () => {
    const outline = developedSaddle(38, 55, 200)
    expect(span(outline.map((one) => one.xMm))).toBeCloseTo(76, 6)
    expect(span(outline.map((one) => one.yMm))).toBeCloseTo(83.902, 2)
  })

  // Two equal cylinders: the outline reaches a quarter turn to each side, π/2 · R = 86.394 mm at R = 55 mm.
  test('as wide as the pipe reaches a quarter turn to each side', () => {
    expect(span(developedSaddle(55, 55, 0).map((one) => one.yMm))).toBeCloseTo(Math.PI * 55, 6)
  })

  test('of a small saw is nearly round: the arc exceeds its chord by the share (r/R)²/6', () => {
    // asin(u) = u + u³/6 + …: at r/R = 0.1 the width around is 1.00167 of the diameter.
    expect(span(developedSaddle(5.5, 55, 0).map((one) => one.yMm)) / 11).toBeCloseTo(1.00167, 4)
  })

  test('is the same on both sides of the crown, and rolled up again lies on the saw', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (r, ratio) => {
          const pipe = r * ratio
          for (const { xMm, yMm } of developedSaddle(r, pipe, 0)) {
            const acrossMm = pipe * Math.sin(yMm / pipe)
            expect(Math.hypot(xMm, acrossMm)).toBeCloseTo(r, 6)
          }
        }
      ),
      { seed: 20260314, numRuns: 100 }
    )
  })
})
