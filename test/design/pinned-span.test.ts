import { expect, test } from 'vitest'
import { DEMOS, pinnedSpan } from '../../shared-model/design'

const design = DEMOS[0]?.design
if (design === undefined) throw new Error('the demo designs are missing')
const [channel] = design.channels
if (channel === undefined) throw new Error('the demo design has no channel')
const sill = { lengthMm: 1482, depthMm: 250 }

test('a dimension between the side edges is the length of the sill', () => {
  const span = pinnedSpan(design, sill, { from: { kind: 'sill', edge: 'left' }, to: { kind: 'sill', edge: 'right' } })
  expect(span).toMatchObject({ valueMm: 1482, upright: false })
})

test('a dimension between front and glass is the depth of the sill', () => {
  const span = pinnedSpan(design, sill, { from: { kind: 'sill', edge: 'front' }, to: { kind: 'sill', edge: 'back' } })
  expect(span).toMatchObject({ valueMm: 250, upright: true })
})

test('a side edge and the front have no distance between them', () => {
  expect(
    pinnedSpan(design, sill, { from: { kind: 'sill', edge: 'left' }, to: { kind: 'sill', edge: 'front' } })
  ).toBeNull()
})

test('from the sill’s left edge to a channel’s datum end is how far its cut end stands from there', () => {
  const to = { kind: 'channel', channelId: channel.id, end: 'datum' } as const
  const span = pinnedSpan(design, sill, { from: { kind: 'sill', edge: 'left' }, to })
  // The datum end's place is the channel's own x; the edge is at 0.
  expect(span?.valueMm).toBe(channel.xMm)
  expect(pinnedSpan(design, sill, { from: { kind: 'sill', edge: 'front' }, to })?.valueMm).toBe(channel.yMm)
})

test('between two ends of one channel lies its cut length', () => {
  const end = (which: 'datum' | 'far') => ({ kind: 'channel', channelId: channel.id, end: which }) as const
  expect(pinnedSpan(design, sill, { from: end('datum'), to: end('far') })?.valueMm).toBe(channel.lengthMm)
})

test('a dimension to a thing that is gone is not drawn', () => {
  const gone = { kind: 'channel', channelId: 'none', end: 'far' } as const
  expect(pinnedSpan(design, sill, { from: { kind: 'sill', edge: 'left' }, to: gone })).toBeNull()
})
