import { expect, test } from 'vitest'
import { anchorAt } from '../../../renderer/board/pinned/anchor-at'
import { anchorKey, namedAnchors } from '../../../renderer/board/pinned/anchor-names'
import { DEMOS } from '../../../shared-model/design'

const SILL = { lengthMm: 1000, depthMm: 200 }

test('a click near the sill’s end measures from that end, one in the middle of nothing from nothing', () => {
  expect(anchorAt([], SILL, { x: 6, y: 100 }, 10)).toEqual({ kind: 'sill', edge: 'left' })
  expect(anchorAt([], SILL, { x: 500, y: 195 }, 10)).toEqual({ kind: 'sill', edge: 'back' })
  expect(anchorAt([], SILL, { x: 500, y: 100 }, 10)).toBeNull()
})

test('every edge, end and site can be measured to, each under a name of its own', () => {
  const channels = DEMOS[0]?.design.channels ?? []
  const named = namedAnchors(channels)
  const sites = channels.reduce((sum, channel) => sum + channel.sites.length, 0)
  // Four edges, two ends of each channel, each site.
  expect(named).toHaveLength(4 + 2 * channels.length + sites)
  expect(new Set(named.map((each) => each.label)).size).toBe(named.length)
  expect(new Set(named.map((each) => anchorKey(each.anchor))).size).toBe(named.length)
})
