import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { OVERLAP_MM, type Stretch, tilesOf } from '../../shared-model/paper/tiles'
import type { ChannelTemplate } from '../../shared-model/sheet'

const templateOf = (
  lengthMm: number,
  atsMm: readonly number[],
  diameterMm: number,
  halfMm: number
): ChannelTemplate => ({
  channelId: 'c1',
  mark: '1',
  name: '',
  face: 'top',
  wraps: false,
  zero: { label: 'DATUM END', from: 'datum' },
  lengthMm,
  fromYMm: -halfMm,
  toYMm: halfMm,
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
    roomMm: fc.integer({ min: 160, max: 250 }),
    halfMm: fc.integer({ min: 20, max: 400 }),
    acrossMm: fc.integer({ min: 100, max: 210 })
  })
  .map(({ lengthMm, pitchMm, diameterMm, roomMm, halfMm, acrossMm }) => {
    const ats: number[] = []
    for (let at = pitchMm / 2; at + pitchMm / 2 <= lengthMm; at += pitchMm) ats.push(at)
    return { template: templateOf(lengthMm, ats, Math.min(diameterMm, pitchMm - 3), halfMm), roomMm, acrossMm }
  })

const joined = (stretches: readonly Stretch[], roomMm: number): void => {
  for (const [index, one] of stretches.entries()) {
    expect(one.toMm - one.fromMm).toBeLessThanOrEqual(roomMm + 1e-9)
    const next = stretches[index + 1]
    if (next !== undefined) {
      expect(one.toMm - next.fromMm).toBeCloseTo(OVERLAP_MM, 9)
      expect(next.matchBeforeMm).toBe(one.matchAfterMm)
    }
  }
}

describe('tiles of a template', () => {
  test('each fit the page along and down, lie over each other by the overlap both ways, and come to an end', () => {
    fc.assert(
      fc.property(drawn, ({ template, roomMm, acrossMm }) => {
        const tiles = tilesOf(template, roomMm, acrossMm)
        const rows = [...new Set(tiles.map(({ across }) => across))]
        for (const row of rows) {
          joined(
            tiles.filter(({ across }) => across === row).map(({ along }) => along),
            roomMm
          )
        }
        joined(rows, acrossMm)
        // The whole width is printed, from edge to edge.
        expect(rows[0]?.fromMm).toBe(template.fromYMm)
        expect(rows[rows.length - 1]?.toMm).toBe(template.toYMm)
        expect(tiles.map(({ index }) => index)).toEqual(tiles.map((_, index) => index))
        expect(tiles.every(({ count }) => count === tiles.length)).toBe(true)
      }),
      { seed: 20260314, numRuns: 300 }
    )
  })

  test('hold every hole: whole on one tile where a web is wide enough, its centre on some tile always', () => {
    fc.assert(
      fc.property(drawn, ({ template, roomMm, acrossMm }) => {
        const tiles = tilesOf(template, roomMm, acrossMm)
        const [first, second] = template.holes
        const diameterMm = first?.diameterMm ?? 0
        const webMm = first === undefined || second === undefined ? 0 : second.atMm - first.atMm - diameterMm
        const wide = webMm >= OVERLAP_MM + 2 && (second?.atMm ?? 0) - (first?.atMm ?? 0) < roomMm / 2 - OVERLAP_MM
        const low = diameterMm < acrossMm / 2 - OVERLAP_MM - 2
        for (const { atMm, acrossMm: atYMm } of template.holes) {
          const reach = wide ? diameterMm / 2 : 0
          const reachY = low ? diameterMm / 2 : 0
          expect(
            tiles.some(
              ({ along, across }) =>
                along.fromMm <= atMm - reach &&
                along.toMm >= atMm + reach &&
                across.fromMm <= Math.max(template.fromYMm, atYMm - reachY) &&
                across.toMm >= Math.min(template.toYMm, atYMm + reachY)
            )
          ).toBe(true)
        }
      }),
      { seed: 20260315, numRuns: 300 }
    )
  })
})
