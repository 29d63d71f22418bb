import { describe, expect, test } from 'vitest'
import { svgTemplate } from '../../shared-model/paper'
import { demoFor, demoPlan, demoSheet } from './demo-sheet'

describe.each(['letter', 'a4'] as const)('SVG templates of the demo for %s', (paper) => {
  const sheet = demoSheet(paper)
  const plan = demoPlan(paper)

  test('are one for each channel and one more for each other face with holes', () => {
    const channels = new Set(sheet.templates.filter((one) => one.face === 'top').map((one) => one.channelId))
    expect([...channels]).toEqual(demoFor(paper).design.channels.map((channel) => channel.id))
  })

  test('have one user unit to the millimetre', () => {
    for (const template of sheet.templates) {
      const svg = svgTemplate(template, sheet.shows)
      const [, width = '', height = '', boxWidth, boxHeight] =
        /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? []
      expect(boxWidth).toBe(width)
      expect(boxHeight).toBe(height)
      expect(Number(width)).toBeGreaterThanOrEqual(template.lengthMm)
    }
  })

  test('have every hole of a flat face as a circle at its distance from the datum line', () => {
    for (const template of sheet.templates.filter((one) => !one.wraps)) {
      const svg = svgTemplate(template, sheet.shows)
      const circles = [...svg.matchAll(/<circle cx="([\d.]+)" cy="[\d.]+" r="([\d.]+)"/g)].map(([, x, r]) => ({
        // The datum line stands 10 mm from the left edge.
        atMm: Number(x) - 10,
        diameterMm: 2 * Number(r)
      }))
      for (const hole of plan.bench.holes.filter(
        (one) => one.channelId === template.channelId && one.face === template.face
      )) {
        expect(
          circles.some(
            (one) => Math.abs(one.atMm - hole.atMm) < 0.001 && Math.abs(one.diameterMm - hole.diameterMm) < 0.001
          )
        ).toBe(true)
      }
    }
  })

  test('have the check bars of 6 in and 150 mm', () => {
    const [template] = sheet.templates
    const svg = template === undefined ? '' : svgTemplate(template, sheet.shows)
    const level = [...svg.matchAll(/<path d="M([\d.]+),([\d.]+) L([\d.]+),([\d.]+)"/g)]
      .filter(([, , y1, , y2]) => y1 === y2)
      .map(([, x1, , x2]) => Number(x2) - Number(x1))
    expect(level.some((length) => Math.abs(length - 152.4) < 0.0001)).toBe(true)
    expect(level.some((length) => Math.abs(length - 150) < 0.0001)).toBe(true)
  })
})
