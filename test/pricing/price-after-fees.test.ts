import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type PriceAsked, priceAfterFees, priceOnEnding } from '../../shared-model/pricing'
import { compareRatio, multiplyRatio, ratio, ratioFromDecimal, ratioToNumber } from '../../shared-model/units'

const SEED = 20_250_611
const every = { everyMinor: 1, endsWithMinor: 0 }

const asked = (part: Partial<PriceAsked>): PriceAsked => ({
  cost: ratio(1000),
  fixedFee: ratio(0),
  feeShare: ratio(0),
  marginOnPrice: ratio(0),
  feeTaxShare: ratio(0),
  postageCharged: ratio(0),
  feeOnPostage: false,
  taxInsideShare: ratio(0),
  ...part
})
const exactPrice = (part: Partial<PriceAsked>) => {
  const price = priceAfterFees(asked(part), every)
  if (!price.ok) throw new Error(price.problem.code)
  return price.value.exact
}
const share = fc.integer({ min: 0, max: 45 }).map((percent) => ratio(percent, 100))
const money = fc.integer({ min: 1, max: 1_000_000 }).map((minor) => ratio(minor))

describe('price after fees', () => {
  it('takes the fee on postage and on tax: worked by hand', () => {
    // C 20.00, F 0.30, S 5.00, f 10 %, tax 20 % under the fee, m 30 %: phi = 0.1 x 1.2 = 0.12.
    // P = (20.30 - 5 x 0.88) / (1 - 0.12 - 0.30) = 15.90 / 0.58 = 27.41379...
    const part = { cost: ratio(2000), fixedFee: ratio(30), postageCharged: ratio(500), feeOnPostage: true }
    const shares = { feeShare: ratio(1, 10), feeTaxShare: ratio(1, 5), marginOnPrice: ratio(3, 10) }
    expect(exactPrice({ ...part, ...shares })).toEqual(ratio(159_000, 58))
  })

  it('leaves exactly the wanted margin before rounding: P + S - C - fees = m P', () => {
    const tax = fc.constantFrom(ratio(0), ratio(1, 5), ratioFromDecimal(0.0825))
    fc.assert(
      fc.property(
        money,
        share,
        share,
        tax,
        fc.boolean(),
        (cost, feeShare, marginOnPrice, feeTaxShare, feeOnPostage) => {
          const postage = ratio(cost.num / 3n)
          const inPlay = asked({
            cost,
            fixedFee: ratio(30),
            feeShare,
            marginOnPrice,
            feeTaxShare,
            feeOnPostage,
            postageCharged: postage
          })
          const price = priceAfterFees(inPlay, every)
          if (!price.ok) {
            expect(price.problem.code).toBe('no-price')
            return
          }
          const p = ratioToNumber(price.value.exact)
          const phi = ratioToNumber(feeShare) * (1 + ratioToNumber(feeTaxShare))
          const s = ratioToNumber(postage)
          const fees = phi * (p + (feeOnPostage ? s : 0)) + 30
          expect(p + s - ratioToNumber(cost) - fees).toBeCloseTo(ratioToNumber(marginOnPrice) * p, 3)
        }
      ),
      { seed: SEED, numRuns: 200 }
    )
  })

  it('reduces to (C + F) / (1 - f - m) without postage and tax', () => {
    fc.assert(
      fc.property(money, share, share, (cost, feeShare, marginOnPrice) => {
        const left = ratio(
          100n - (feeShare.num * 100n) / feeShare.den - (marginOnPrice.num * 100n) / marginOnPrice.den,
          100
        )
        const price = exactPrice({ cost, fixedFee: ratio(25), feeShare, marginOnPrice })
        expect(multiplyRatio(price, left)).toEqual(ratio(cost.num + 25n))
      }),
      { seed: SEED, numRuns: 100 }
    )
  })

  it('never falls when cost, fee or margin rises', () => {
    const step = ratio(1, 100)
    const up = (value: { num: bigint; den: bigint }) => ratio(value.num * 100n + value.den, value.den * 100n)
    fc.assert(
      fc.property(money, share, share, (cost, feeShare, marginOnPrice) => {
        expect(up(ratio(0))).toEqual(step)
        const base = { cost, feeShare, marginOnPrice }
        const now = exactPrice(base)
        for (const more of [{ cost: up(cost) }, { feeShare: up(feeShare) }, { marginOnPrice: up(marginOnPrice) }]) {
          expect(compareRatio(exactPrice({ ...base, ...more }), now)).toBeGreaterThan(0)
        }
      }),
      { seed: SEED, numRuns: 100 }
    )
  })

  it('says which share is too high where no price does it', () => {
    const why = (part: Partial<PriceAsked>) => {
      const price = priceAfterFees(asked(part), every)
      return !price.ok && price.problem.code === 'no-price' ? price.problem.figures : null
    }
    expect(why({ feeShare: ratio(1) })?.tooHigh).toBe('fee')
    expect(why({ marginOnPrice: ratio(1) })?.tooHigh).toBe('margin')
    expect(why({ feeShare: ratio(2, 5), marginOnPrice: ratio(3, 5) })).toEqual({
      tooHigh: 'fee-and-margin',
      feePercent: 40,
      marginPercent: 60,
      mostMarginPercent: 60
    })
    expect(why({ cost: ratio(300), postageCharged: ratio(300) })?.tooHigh).toBe('postage-charged')
    expect(why({ feeShare: ratio(9, 10), feeTaxShare: ratio(1, 5) })?.tooHigh).toBe('fee')
  })

  it('puts the ending on what the buyer sees, tax inside', () => {
    // 10.00 / (1 - 0.5) = 20.00; with 20 % inside 24.00, on the ending 24.95; before tax 20.79 (20.7917).
    const price = priceAfterFees(asked({ marginOnPrice: ratio(1, 2), taxInsideShare: ratio(1, 5) }), {
      everyMinor: 100,
      endsWithMinor: 95
    })
    expect(price).toMatchObject({ ok: true, value: { shownMinor: 2495, priceMinor: 2079 } })
  })

  it('refuses shares over 100 % and negative amounts, naming the field', () => {
    const field = (part: Partial<PriceAsked>) => {
      const price = priceAfterFees(asked(part), every)
      return price.ok ? null : [price.problem.code, price.problem.where?.field]
    }
    expect(field({ feeShare: ratio(11, 10) })).toEqual(['out-of-range', 'feeShare'])
    expect(field({ marginOnPrice: ratio(-1, 10) })).toEqual(['out-of-range', 'marginOnPrice'])
    expect(field({ cost: ratio(-1) })).toEqual(['out-of-range', 'cost'])
    expect(field({ taxInsideShare: ratio(2) })).toEqual(['out-of-range', 'taxInsideShare'])
  })
})

describe('price ending', () => {
  it('is the least price on the ending that is not below the amount', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1_000_000 }),
        fc.integer({ min: 1, max: 7 }),
        fc.integer({ min: 1, max: 1000 }),
        fc.integer({ min: 0, max: 2000 }),
        (num, den, everyMinor, endsWithMinor) => {
          const price = priceOnEnding(ratio(num, den), { everyMinor, endsWithMinor })
          expect(price * den).toBeGreaterThanOrEqual(num)
          expect((price - endsWithMinor) % everyMinor).toBe(Math.sign(price - endsWithMinor) === -1 ? -0 : 0)
          expect((price - everyMinor) * den < num || price < everyMinor).toBe(true)
        }
      ),
      { seed: SEED, numRuns: 200 }
    )
  })
})
