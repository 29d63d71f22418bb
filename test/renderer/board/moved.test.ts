import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { moved, pulled, type Snapping, slid } from '../../../renderer/board/gesture/moved'
import { sillLines } from '../../../renderer/board/snapping'
import { nm } from '../../../shared-model/units'

const snapping: Snapping = { lines: sillLines(1000, 200, 3), reachMm: 5, graduationMm: 1, graduation: nm(1_000_000) }

describe('a gesture on the board', () => {
  it('moves exactly as the hand does while snapping is held off', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), (x) => {
        const start = { xMm: 10, yMm: 20, lengthMm: 300, depthMm: 60 }
        expect(moved(start, { x, y: 1.25 }, null)).toEqual({ dxMm: x, dyMm: 1.25, lines: [] })
      }),
      { seed: 4 }
    )
  })

  it('pulls the far end to the fit clearance, and the length down to the graduation', () => {
    // 300 long from 100, far face at 402 with its closure; pulled 593.4 to the right the face is at 995.4, 1.6 from the
    // clearance at 997. Length then 300 + 593.4 + 1.6 = 895 on the graduation.
    const to = pulled({ heading: 0, end: 'far', startMm: 300, faceMm: 402, by: { x: 593.4, y: 0 } }, snapping)
    expect(to.lines[0]?.atMm).toBe(997)
    expect(to.lengthMm).toBe(895)
  })

  it('grows a channel when its datum end is pulled away from it', () => {
    const to = pulled({ heading: 0, end: 'datum', startMm: 300, faceMm: 398, by: { x: -50, y: 0 } }, null)
    expect(to.lengthMm).toBe(350)
  })

  it('grows a channel that runs towards the glass by a movement towards the glass', () => {
    expect(pulled({ heading: 90, end: 'far', startMm: 100, faceMm: 150, by: { x: 7, y: 12 } }, null).lengthMm).toBe(112)
    expect(pulled({ heading: 270, end: 'far', startMm: 100, faceMm: 50, by: { x: 0, y: -12 } }, null).lengthMm).toBe(
      112
    )
  })

  it('never makes a channel shorter than a millimetre', () => {
    expect(pulled({ heading: 0, end: 'far', startMm: 300, faceMm: 400, by: { x: -900, y: 0 } }, null).lengthMm).toBe(1)
  })

  it('slides a site along its channel, on the graduation and within it', () => {
    expect(slid(100, 180, { x: -20.4, y: 3 }, 700, snapping)).toBe(120)
    expect(slid(100, 0, { x: 9999, y: 0 }, 700, snapping)).toBe(700)
    expect(slid(100, 0, { x: -9999, y: 0 }, 700, null)).toBe(0)
  })
})
