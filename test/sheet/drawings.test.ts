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

  test('become SVG text without a figure that is not one, and with their scale in words', () => {
    for (const drawing of drawings) {
      const svg = svgPicture(drawing)
      expect(svg).not.toMatch(/NaN|Infinity|undefined/)
      expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" width="[\d.]+mm" height="[\d.]+mm"/)
      expect(drawing.alt).not.toBe('')
    }
  })
})
