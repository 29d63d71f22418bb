import { describe, expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { svgPicture } from '../../shared-model/paper'
import { evaluate } from '../../shared-model/plan'
import { buildSheet, type Drawing, type PointMm, type Shape, textWidthMm } from '../../shared-model/sheet'
import { randomBuild } from './random-design'

const pointsOf = (shape: Shape): readonly PointMm[] => {
  switch (shape.kind) {
    case 'line':
      return [shape.fromMm, shape.toMm]
    case 'rect':
      return [
        { xMm: shape.xMm, yMm: shape.yMm },
        { xMm: shape.xMm + shape.widthMm, yMm: shape.yMm + shape.heightMm }
      ]
    case 'circle':
      return [-1, 1].map((side) => ({
        xMm: shape.centreMm.xMm + side * shape.radiusMm,
        yMm: shape.centreMm.yMm + side * shape.radiusMm
      }))
    case 'polygon':
      return shape.pointsMm
    case 'text': {
      const width = shape.turned ? 0 : textWidthMm(shape.text, shape.sizePt, shape.bold)
      const left = shape.anchor === 'start' ? 0 : shape.anchor === 'middle' ? width / 2 : width
      return [
        { xMm: shape.atMm.xMm - left, yMm: shape.atMm.yMm },
        { xMm: shape.atMm.xMm - left + width, yMm: shape.atMm.yMm }
      ]
    }
  }
}

/** Lettering is measured by a mean width, so a drawing may seem to pass its edge by a letter or two. */
const SLACK_MM = 2.5

const builds = [
  ...DEMOS.map(({ name, design, workshop }) => ({ name, design, workshop })),
  ...[3, 5, 8, 13, 21].map((seed) => ({
    name: `random build ${seed}`,
    ...randomBuild(seed, seed % 2 === 0 ? 'in' : 'mm')
  }))
]

describe.each(builds)('drawings of $name', ({ design, workshop }) => {
  const sheet = buildSheet(evaluate(design, workshop, '2026-03-14'), design, workshop)
  const drawings = sheet.sections
    .flatMap((section) => section.blocks)
    .flatMap((block): Drawing[] => (block.kind === 'figure' ? [block.drawing] : []))

  test('stay in their own room and on the page', () => {
    expect(drawings.length).toBeGreaterThan(3)
    for (const drawing of drawings) {
      expect(drawing.widthMm).toBeLessThanOrEqual(182)
      expect(drawing.heightMm).toBeLessThanOrEqual(195)
      for (const shape of drawing.shapes) {
        for (const { xMm, yMm } of pointsOf(shape)) {
          const where = `${drawing.alt}: ${JSON.stringify(shape).slice(0, 160)}`
          expect(xMm, where).toBeGreaterThanOrEqual(-SLACK_MM)
          expect(xMm, where).toBeLessThanOrEqual(drawing.widthMm + SLACK_MM)
          expect(yMm, where).toBeGreaterThanOrEqual(-SLACK_MM)
          expect(yMm, where).toBeLessThanOrEqual(drawing.heightMm + SLACK_MM)
        }
      }
    }
  })

  test('keep pinned dimensions and notes on the picture, however far off they were put', () => {
    const channelId = design.channels[0]?.id ?? ''
    const end = (which: 'datum' | 'far') => ({ kind: 'channel', channelId, end: which }) as const
    const edge = (which: 'left' | 'front') => ({ kind: 'sill', edge: which }) as const
    const pairs = [
      [end('datum'), end('far')],
      [edge('left'), end('datum')],
      [edge('front'), end('datum')]
    ] as const
    const dimensions = pairs.flatMap(([from, to], pair) =>
      [-4000, -300, 300, 4000].map((offMm) => ({ id: `d${pair}${offMm}`, from, to, offMm }))
    )
    const notes = [-4000, 20, 4000].map((at) => ({ id: `n${at}`, xMm: at, yMm: at, text: 'The tap is on this side' }))
    const pinned = { ...design, dimensions, notes }
    const made = buildSheet(evaluate(pinned, workshop, '2026-03-14'), pinned, workshop)
    const sill = made.sections
      .flatMap((section) => section.blocks)
      .flatMap((block): Drawing[] => (block.kind === 'figure' ? [block.drawing] : []))
      .find(({ alt }) => alt.startsWith('The sill from above'))
    if (sill === undefined) throw new Error('the sill is drawn')
    for (const { xMm, yMm } of sill.shapes.flatMap(pointsOf)) {
      expect(xMm).toBeGreaterThanOrEqual(-SLACK_MM)
      expect(xMm).toBeLessThanOrEqual(sill.widthMm + SLACK_MM)
      expect(yMm).toBeGreaterThanOrEqual(-SLACK_MM)
      expect(yMm).toBeLessThanOrEqual(sill.heightMm + SLACK_MM)
    }
  })

  test('become SVG text without a figure that is not one, and with their scale in words', () => {
    for (const drawing of drawings) {
      const svg = svgPicture(drawing)
      expect(svg).not.toMatch(/NaN|Infinity|undefined/)
      expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" width="[\d.]+mm" height="[\d.]+mm"/)
      expect(drawing.alt).not.toBe('')
    }
  })
})
