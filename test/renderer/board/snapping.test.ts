import { describe, expect, it } from 'vitest'
import { channelLines, sillLines, snapAxis } from '../../../renderer/board/snapping'

const lines = sillLines(1000, 200, 3)

describe('snapping on the board', () => {
  it('draws the near edge of a channel to the fit clearance', () => {
    // 700 long from 5: the left edge is 2 away from the clearance at 3; the right one, 705, is near nothing.
    expect(snapAxis('x', 5, 700, lines, 4, 1)).toEqual({
      shiftMm: -2,
      line: { axis: 'x', atMm: 3, what: 'clearance' }
    })
  })

  it('draws the far edge to the far end of the sill', () => {
    // 700 long from 302: the right edge is at 1002, the sill ends at 1000 and its clearance at 997.
    const snapped = snapAxis('x', 302, 700, lines, 4, 1)
    expect(snapped.line).toEqual({ axis: 'x', atMm: 1000, what: 'edge' })
    expect(snapped.shiftMm).toBe(-2)
  })

  it('draws centre to centre only', () => {
    // 700 long from 151: the centre is at 501, the sill's at 500; no edge is near.
    expect(snapAxis('x', 151, 700, lines, 4, 1)).toEqual({
      shiftMm: -1,
      line: { axis: 'x', atMm: 500, what: 'centre' }
    })
    // An edge at 501 is not drawn to the centre line.
    expect(snapAxis('x', 501, 90, lines, 4, 0.5).line).toBeNull()
  })

  it('puts a thing that is near nothing on the graduation', () => {
    const sixteenth = 25.4 / 16
    const { shiftMm, line } = snapAxis('x', 50, 100, lines, 2, sixteenth)
    expect(line).toBeNull()
    expect((50 + shiftMm) / sixteenth).toBeCloseTo(Math.round(50 / sixteenth), 9)
  })

  it('draws to the edges and centres of other channels', () => {
    const others = channelLines([{ xMm: 100, yMm: 20, lengthMm: 300, depthMm: 60 }])
    expect(snapAxis('x', 402, 50, others, 4, 1).line?.atMm).toBe(400)
    expect(snapAxis('y', 83, 60, others, 4, 1).line?.atMm).toBe(80)
  })

  it('takes the nearest of two lines', () => {
    const two = [
      { axis: 'x', atMm: 10, what: 'edge' },
      { axis: 'x', atMm: 13, what: 'edge' }
    ] as const
    expect(snapAxis('x', 12, 500, two, 5, 1).line?.atMm).toBe(13)
  })
})
