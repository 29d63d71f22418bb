import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { breakEven, breakEvenCrossings, marginOfSafety } from '../../shared-model/pricing'
import { ratio } from '../../shared-model/units'

const SEED = 20_250_611
const amount = (most: number) => fc.integer({ min: 1, max: most })

describe('break-even', () => {
  it('makes no loss at that many units and a loss at one fewer, for a constant contribution', () => {
    fc.assert(
      fc.property(amount(10_000), amount(10_000), amount(10_000_000), (contribution, variable, fixed) => {
        const even = breakEven({
          price: ratio(variable + contribution),
          variableCost: ratio(variable),
          fixedCost: ratio(fixed),
          targetProfit: ratio(0)
        })
        const units = even.ok ? even.value.units : Number.NaN
        expect(units * contribution - fixed).toBeGreaterThanOrEqual(0)
        expect((units - 1) * contribution - fixed).toBeLessThan(0)
      }),
      { seed: SEED, numRuns: 300 }
    )
  })

  it('is a problem where a unit brings nothing', () => {
    const even = breakEven({ price: ratio(150), variableCost: ratio(150), fixedCost: ratio(1), targetProfit: ratio(0) })
    expect(even).toMatchObject({
      ok: false,
      problem: { code: 'contribution-not-positive', figures: { contributionMinor: 0 } }
    })
  })

  it('lists every crossing where costs go up in steps', () => {
    // 10 a unit; 25 fixed, and 30 more for each further stall day of 8 units:
    // profit 10 n - 25 - 30 floor((n - 1) / 8): n = 3 first in profit (5); n = 9: 90 - 55 = 35, and stays so.
    const mild = breakEvenCrossings((n) => 10 * n - 25 - 30 * Math.floor(Math.max(0, n - 1) / 8))
    expect(mild).toEqual({ ok: true, value: [{ units: 3, direction: 'into-profit' }] })
    // 60 a further day of 8: n = 9: 90 - 85 = 5; n = 17: 170 - 145 = 25. 75 a day: n = 9: 90 - 100 = -10; n = 10: 0;
    // n = 17: 170 - 175 = -5; n = 18: 5; n = 25: 250 - 250 = 0, and from there on it gains 5 a day.
    const steep = breakEvenCrossings((n) => 10 * n - 25 - 75 * Math.floor(Math.max(0, n - 1) / 8), 40)
    expect(steep.ok && steep.value).toEqual([
      { units: 3, direction: 'into-profit' },
      { units: 9, direction: 'into-loss' },
      { units: 10, direction: 'into-profit' },
      { units: 17, direction: 'into-loss' },
      { units: 18, direction: 'into-profit' }
    ])
  })

  it('keeps a margin of safety that is nil at break-even and negative below it', () => {
    const safety = (sold: number, even: number) => {
      const margin = marginOfSafety(sold, even)
      return margin.ok ? margin.value : margin.problem.code
    }
    expect([safety(20, 15), safety(15, 15), safety(10, 15), safety(0, 15)]).toEqual([0.25, 0, -0.5, 'out-of-range'])
  })
})
