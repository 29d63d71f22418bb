import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { spreadAlong } from '../../shared-model/sheet/spread-along'

describe('labels along a line', () => {
  test('stay where they are wanted when they do not touch', () => {
    expect(
      spreadAlong(
        [
          { atMm: 10, halfMm: 2 },
          { atMm: 15, halfMm: 2 }
        ],
        1,
        100
      )
    ).toEqual([10, 15])
  })

  test('are pushed on to the right where they would run into each other', () => {
    // 10 + 2 + 1 + 2 = 15.
    expect(
      spreadAlong(
        [
          { atMm: 10, halfMm: 2 },
          { atMm: 12, halfMm: 2 }
        ],
        1,
        100
      )
    ).toEqual([10, 15])
  })

  test('are pushed back from the end of the room', () => {
    // The last ends at 20: its middle at 18; the one before at 18 − 2 − 1 − 2 = 13.
    expect(
      spreadAlong(
        [
          { atMm: 17, halfMm: 2 },
          { atMm: 19, halfMm: 2 }
        ],
        1,
        20
      )
    ).toEqual([13, 18])
  })

  test('never touch, keep their order and stay within a room that holds them all', () => {
    const labels = fc.array(
      fc.record({ atMm: fc.double({ min: 0, max: 100, noNaN: true }), halfMm: fc.constantFrom(1, 2, 3) }),
      {
        maxLength: 12
      }
    )
    fc.assert(
      fc.property(labels, (some) => {
        const wanted = [...some].sort((a, b) => a.atMm - b.atMm)
        const placed = spreadAlong(wanted, 1, 110)
        for (const [index, one] of wanted.entries()) {
          const before = wanted[index - 1]
          const at = placed[index] ?? Number.NaN
          expect(at + one.halfMm).toBeLessThanOrEqual(110 + 1e-9)
          if (before !== undefined)
            expect(at - one.halfMm - 1).toBeGreaterThanOrEqual((placed[index - 1] ?? 0) + before.halfMm - 1e-9)
        }
      }),
      { seed: 20_261_125 }
    )
  })
})
