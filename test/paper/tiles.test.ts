import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { OVERLAP_MM, tilesOf } from '../../shared-model/paper/tiles'
import type { ChannelTemplate } from '../../shared-model/sheet'

const templateOf = (lengthMm: number, atsMm: readonly number[], diameterMm: number): ChannelTemplate => ({
  channelId: 'c1',
  mark: '1',
  name: '',
  face: 'top',
  wraps: false,
  lengthMm,
  fromYMm: -40,
  toYMm: 40,
  holes: atsMm.map((atMm, index) => ({
    mark: `${index + 1}`,
    atMm,
    acrossMm: 0,
    diameterMm,
    label: '',
    outlineMm: []
  })),
  shapes: []
})

const drawn = fc
  .record({
    lengthMm: fc.integer({ min: 100, max: 6000 }),
    pitchMm: fc.integer({ min: 60, max: 400 }),
    diameterMm: fc.integer({ min: 12, max: 150 }),
    roomMm: fc.integer({ min: 160, max: 250 })
  })
  .map(({ lengthMm, pitchMm, diameterMm, roomMm }) => {
    const ats: number[] = []
    for (let at = pitchMm / 2; at + pitchMm / 2 <= lengthMm; at += pitchMm) ats.push(at)
    return { template: templateOf(lengthMm, ats, Math.min(diameterMm, pitchMm - 3)), roomMm }
  })

describe('tiles of a template', () => {
  test('each fit the page, lie over each other by the overlap, and come to an end', () => {
    fc.assert(
      fc.property(drawn, ({ template, roomMm }) => {
        const tiles = tilesOf(template, roomMm)
        for (const [index, tile] of tiles.entries()) {
          expect(tile.toMm - tile.fromMm).toBeLessThanOrEqual(roomMm + 1e-9)
          const next = tiles[index + 1]
          if (next !== undefined) {
            expect(tile.toMm - next.fromMm).toBeCloseTo(OVERLAP_MM, 9)
            expect(next.matchBeforeMm).toBe(tile.matchAfterMm)
          }
        }
      }),
      { seed: 20260314, numRuns: 300 }
    )
  })

  test('hold every hole: whole on one tile where a web is wide enough, its centre on some tile always', () => {
    fc.assert(
      fc.property(drawn, ({ template, roomMm }) => {
        const tiles = tilesOf(template, roomMm)
        const [first, second] = template.holes
        const webMm = first === undefined || second === undefined ? 0 : second.atMm - first.atMm - first.diameterMm
        const wide = webMm >= OVERLAP_MM + 2 && (second?.atMm ?? 0) - (first?.atMm ?? 0) < roomMm / 2 - OVERLAP_MM
        for (const hole of template.holes) {
          const reach = wide ? hole.diameterMm / 2 : 0
          expect(tiles.some((tile) => tile.fromMm <= hole.atMm - reach && tile.toMm >= hole.atMm + reach)).toBe(true)
        }
      }),
      { seed: 20260315, numRuns: 300 }
    )
  })
})
