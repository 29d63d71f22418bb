import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  fitted,
  joined,
  LEAST_SCALE,
  MOST_SCALE,
  panned,
  scaleName,
  TRUE_SIZE,
  toMm,
  toPx,
  zoomedAt
} from '../../../renderer/board/scale'

const scales = fc.record({
  pxPerMm: fc.double({ min: LEAST_SCALE, max: MOST_SCALE, noNaN: true }),
  originX: fc.double({ min: -5000, max: 5000, noNaN: true }),
  originY: fc.double({ min: -5000, max: 5000, noNaN: true })
})
const places = fc.record({
  x: fc.double({ min: -3000, max: 3000, noNaN: true }),
  y: fc.double({ min: -3000, max: 3000, noNaN: true })
})

describe('the scale of the board', () => {
  it('brings every place on the sill back from its pixel', () => {
    fc.assert(
      fc.property(scales, places, (scale, place) => {
        const back = toMm(scale, toPx(scale, place.x, place.y))
        expect(Math.abs(back.x - place.x)).toBeLessThan(1e-6)
        expect(Math.abs(back.y - place.y)).toBeLessThan(1e-6)
      }),
      { seed: 1 }
    )
  })

  it('draws the glass side above the room side', () => {
    const scale = { pxPerMm: 1, originX: 0, originY: 100 }
    expect(toPx(scale, 0, 50).y).toBeLessThan(toPx(scale, 0, 0).y)
  })

  it('keeps the millimetre under the pointer where it is while zooming', () => {
    fc.assert(
      fc.property(scales, places, fc.double({ min: 0.2, max: 5, noNaN: true }), (scale, at, factor) => {
        const before = toMm(scale, at)
        const after = toMm(zoomedAt(scale, at, factor), at)
        expect(Math.abs(after.x - before.x)).toBeLessThan(1e-6)
        expect(Math.abs(after.y - before.y)).toBeLessThan(1e-6)
      }),
      { seed: 2 }
    )
  })

  it('goes from 1:20 to 4:1 and no further', () => {
    const at = { x: 0, y: 0 }
    const scale = { pxPerMm: 1, originX: 0, originY: 0 }
    expect(scaleName(zoomedAt(scale, at, 1e-6))).toBe('1:20')
    expect(scaleName(zoomedAt(scale, at, 1e6))).toBe('4:1')
    // CSS Values 4, absolute lengths: 1in = 96px, so true size is 96/25.4 pixels to the millimetre.
    expect(scaleName({ ...scale, pxPerMm: 96 / 25.4 })).toBe('1:1')
    expect(TRUE_SIZE).toBeCloseTo(3.7795, 4)
  })

  it('fits the sill inside the picture with its margin', () => {
    const sill = { xMm: 0, yMm: 0, lengthMm: 1482, depthMm: 250 }
    const picture = { width: 960, height: 400 }
    const scale = fitted(sill, picture, 60)
    const left = toPx(scale, 0, 250)
    const right = toPx(scale, 1482, 0)
    expect(left.x).toBeGreaterThanOrEqual(60 - 1e-6)
    expect(right.x).toBeLessThanOrEqual(900 + 1e-6)
    // In the middle: as far from the left as from the right.
    expect(left.x).toBeCloseTo(960 - right.x, 6)
    expect(left.y).toBeCloseTo(400 - right.y, 6)
  })

  it('pans by pixels', () => {
    expect(panned({ pxPerMm: 2, originX: 1, originY: 2 }, 10, -5)).toEqual({ pxPerMm: 2, originX: 11, originY: -3 })
  })

  it('joins extents to the one that holds them all', () => {
    expect(
      joined([
        { xMm: 0, yMm: 10, lengthMm: 100, depthMm: 20 },
        { xMm: -5, yMm: 50, lengthMm: 20, depthMm: 5 }
      ])
    ).toEqual({ xMm: -5, yMm: 10, lengthMm: 105, depthMm: 45 })
    expect(joined([])).toBeNull()
  })
})
