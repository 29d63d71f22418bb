import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { placeOn, readPlace, type WindowPlace, writePlace } from '../../../main/shell/window-place'

const desk = { x: 0, y: 0, width: 1920, height: 1040 }
const left = { x: -1280, y: 0, width: 1280, height: 984 }
const place = (x: number, y: number, width = 1200, height = 800): WindowPlace => ({
  x,
  y,
  width,
  height,
  maximized: false
})

describe('where a window opens', () => {
  it('is where the last one stood', () => {
    expect(placeOn([desk, left], place(300, 100), 1)).toEqual(place(300, 100))
    expect(placeOn([desk, left], place(-1250, 40), 1)).toEqual(place(-1250, 40))
  })

  it('is on a display that is there, when the one it stood on is gone', () => {
    // Moved right until its left edge is the display's: x from -1250 to 0.
    expect(placeOn([desk], place(-1250, 40), 1)).toEqual(place(0, 40))
  })

  it('is a step from the first for a further window, and no larger than the display', () => {
    expect(placeOn([desk], place(300, 100), 2)).toEqual(place(332, 132))
    expect(placeOn([desk], place(0, 0, 5000, 5000), 1)).toEqual(place(0, 0, 1920, 1040))
  })

  it('is left to the system the first time, in a usual size', () => {
    expect(placeOn([desk], null, 1)).toEqual({ width: 1440, height: 900, maximized: false })
  })

  it('is whole inside one display, whatever was kept', () => {
    const area = fc.record({
      x: fc.integer({ min: -4000, max: 4000 }),
      y: fc.integer({ min: -4000, max: 4000 }),
      width: fc.integer({ min: 640, max: 4000 }),
      height: fc.integer({ min: 480, max: 2200 })
    })
    const kept = fc.record({
      x: fc.integer({ min: -100_000, max: 100_000 }),
      y: fc.integer({ min: -100_000, max: 100_000 }),
      width: fc.integer({ min: -100_000, max: 100_000 }),
      height: fc.integer({ min: -100_000, max: 100_000 }),
      maximized: fc.boolean()
    })
    fc.assert(
      fc.property(fc.array(area, { minLength: 1, maxLength: 4 }), kept, fc.nat(9), (displays, last, number) => {
        const { x = 0, y = 0, width = 0, height = 0 } = placeOn(displays, last, number + 1)
        expect(
          displays.some(
            (on) => x >= on.x && y >= on.y && x + width <= on.x + on.width && y + height <= on.y + on.height
          )
        ).toBe(true)
      }),
      { seed: 4_711 }
    )
  })

  it('is read back as it was written, and not at all where the record is torn', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'sillwright-place-'))
    const file = join(folder, 'window.json')
    expect(await readPlace(file)).toBeNull()
    await writePlace(file, place(1, 2))
    expect(await readPlace(file)).toEqual(place(1, 2))
    for (const torn of ['{"x":1', '{"x":1e999,"y":0,"width":1,"height":1,"maximized":false}', '[]']) {
      await writeFile(file, torn)
      expect(await readPlace(file)).toBeNull()
    }
    await rm(folder, { recursive: true })
  })
})
