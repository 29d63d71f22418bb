import fc from 'fast-check'
import { expect, test } from 'vitest'
import { DEMOS, pinDimension, standOff, standOffBounds, standOffWithin } from '../../shared-model/design'
import { sillSize } from '../../shared-model/layout'

const sill = { lengthMm: 1482, depthMm: 250 }
const at = (xMm: number, yMm: number) => ({ xMm, yMm })

test('a line along the sill stands at most 250 mm in front of it and 250 mm behind the glass', () => {
  // The channel's middle is 60 from the front: 60 + 250 towards the room, 250 - 60 + 250 towards the glass (less than 0).
  const span = { from: at(100, 60), to: at(700, 60), upright: false }
  expect(standOffBounds(span, sill)).toEqual({ leastMm: -440, mostMm: 310 })
  expect(standOffWithin(span, sill, 4000)).toBe(310)
  expect(standOffWithin(span, sill, -4000)).toBe(-440)
  expect(standOffWithin(span, sill, 40)).toBe(40)
})

test('a line across the sill stands at most 250 mm beside either end of it', () => {
  // 100 from the left: 100 + 250 to the left (less than 0), 1482 - 100 + 250 to the right.
  const span = { from: at(100, 0), to: at(100, 250), upright: true }
  expect(standOffBounds(span, sill)).toEqual({ leastMm: -350, mostMm: 1632 })
})

test('what is measured outside the sill takes the bounds with it', () => {
  // 400 in front of the sill's front edge, so the line may stand 250 in front of that.
  const span = { from: at(0, -400), to: at(500, -400), upright: false }
  expect(standOffBounds(span, sill)).toEqual({ leastMm: -900, mostMm: 250 })
})

test('a dimension line put anywhere in the design stands within its bounds, and there again when put there', () => {
  const design = DEMOS[0]?.design
  const channelId = design?.channels[0]?.id
  if (design === undefined || channelId === undefined) throw new Error('the demo design has no channel')
  const size = sillSize(design.sill)
  const end = (which: 'datum' | 'far') => ({ kind: 'channel', channelId, end: which }) as const
  const pinned = pinDimension(design, end('datum'), end('far'))
  const id = pinned.dimensions.at(-1)?.id ?? ''
  const offOf = (offMm: number): number => standOff(pinned, id, offMm).dimensions.at(-1)?.offMm ?? Number.NaN
  expect(size.ok).toBe(true)
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (offMm) => {
      const put = offOf(offMm)
      expect(Math.abs(put)).toBeLessThan(2000)
      expect(offOf(put)).toBe(put)
    }),
    { seed: 20261125 }
  )
})
