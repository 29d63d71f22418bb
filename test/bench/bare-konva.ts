import type { Page } from 'playwright-core'

export interface BareWish {
  readonly width: number
  readonly height: number
  readonly circles: number
  readonly frames: number
}

/** Konva as the page has it, by the few members that are used here. */
interface Shape {
  readonly x: (to?: number) => number
}
interface BareKonva {
  readonly Stage: new (config: object) => { readonly add: (layer: object) => void }
  readonly Layer: new (config: object) => { readonly add: (shape: object) => void; readonly batchDraw: () => void }
  readonly Circle: new (config: object) => Shape
}

/** A circle in so many belongs to the row that is dragged. */
const ROWS = 60

/** Frames of Konva alone: one layer of circles that does not listen, a row of them moved, the layer drawn. */
export const bareFrames = (page: Page, wish: BareWish): Promise<number[]> =>
  page.evaluate(
    async ({ width, height, circles, frames, rows }) => {
      const { Konva } = globalThis as unknown as { Konva: BareKonva }
      const container = document.body.appendChild(document.createElement('div'))
      const stage = new Konva.Stage({ container, width, height, listening: false })
      const layer = new Konva.Layer({ listening: false })
      stage.add(layer)
      const inRow = Math.ceil(circles / rows)
      const all = Array.from({ length: circles }, (_, at) => {
        const x = 40 + ((width - 80) * (at % inRow)) / inRow
        const y = 40 + ((height - 80) * Math.floor(at / inRow)) / rows
        const circle = new Konva.Circle({ x, y, radius: 5, fill: '#ddd', stroke: '#333', strokeWidth: 1 })
        layer.add(circle)
        return circle
      })
      const row = all.slice(inRow * 30, inRow * 31)
      const starts = row.map((circle) => circle.x())
      const times: number[] = []
      for (let frame = 0; frame < frames + 30; frame += 1) {
        const begun = performance.now()
        row.forEach((circle, at) => {
          circle.x((starts[at] ?? 0) + 40 * Math.sin(frame / 9))
        })
        layer.batchDraw()
        await new Promise((resolve) => requestAnimationFrame(resolve))
        await new Promise((resolve) => setTimeout(resolve))
        if (frame >= 30) times.push(performance.now() - begun)
      }
      return times
    },
    { ...wish, rows: ROWS }
  )
