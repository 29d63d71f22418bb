import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CoverKind, leastCover } from '../../shared-model/rings/sheet-cover'

/** Every choice of up to nine sheets of each kind. */
const byForce = (kinds: readonly CoverKind[], demand: number): number => {
  const [kind, ...rest] = kinds
  if (!kind) return demand <= 0 ? 0 : Number.POSITIVE_INFINITY
  let best = Number.POSITIVE_INFINITY
  for (let n = 0; n <= Math.min(kind.count ?? 9, 9); n++) {
    best = Math.min(best, n * kind.cost + byForce(rest, demand - n * kind.holds))
  }
  return best
}

describe('the cheapest cover', () => {
  it('equals the best of all choices and adds up', () => {
    const kind = fc.record({
      cost: fc.integer({ min: 0, max: 50 }),
      holds: fc.integer({ min: 2, max: 12 }),
      count: fc.constantFrom(null, 0, 1, 2, 5)
    })
    fc.assert(
      fc.property(fc.array(kind, { minLength: 1, maxLength: 3 }), fc.integer({ min: 0, max: 18 }), (kinds, demand) => {
        const cover = leastCover(kinds, demand)
        const best = byForce(kinds, demand)
        if (!cover) return best === Number.POSITIVE_INFINITY
        const held = cover.taken.reduce((sum, n, k) => sum + n * (kinds[k]?.holds ?? 0), 0)
        const cost = cover.taken.reduce((sum, n, k) => sum + n * (kinds[k]?.cost ?? 0), 0)
        const kept = cover.taken.every((n, k) => n <= (kinds[k]?.count ?? n))
        return cover.cost === best && cost === best && held >= demand && kept
      }),
      { seed: 90_001, numRuns: 400 }
    )
  })

  it('says so when all sheets together do not hold the demand', () => {
    expect(leastCover([{ cost: 1, holds: 3, count: 2 }], 7)).toBeNull()
  })
})
