import { beforeAll, describe, expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import { docDefinition, type Paper } from '../../shared-model/paper'
import { evaluate, type Plan } from '../../shared-model/plan'
import { buildSheet } from '../../shared-model/sheet'
import { lengthOf } from '../sheet/read-build'
import { type Box, boxOf, type Lettering, readPdf, type Sheet } from '../sheet/read-pdf'
import { demoFor, demoPlan, demoSheet } from './demo-sheet'

const PAPERS: readonly Paper[] = ['letter', 'a4']
/** The strokes of a template are exact to this, a printer is not. */
const TEMPLATE_MM = 0.05
const BAR_MM = 0.02

describe.each(PAPERS)('full-size templates on %s', (paper) => {
  let tiles: Sheet[]
  let plan: Plan
  const { units, decimalMark } = demoFor(paper).workshop.shows
  const mm = (words: string): number => lengthOf(words, units, decimalMark)
  beforeAll(async () => {
    plan = demoPlan(paper)
    const { sheets } = await readPdf(
      await writePdf(docDefinition(demoSheet(paper, { parts: ['templates'] }), { paper }))
    )
    tiles = sheets.filter((sheet) => sheet.lettering.some((one) => /: tile \d+ of \d+/.test(one.text)))
  })

  test('have check bars of 6 in and 150 mm along and down, and a 1 in square, on every page', () => {
    expect(tiles.length).toBeGreaterThan(0)
    for (const sheet of tiles) {
      const boxes = sheet.paths.map(boxOf)
      const level = (lengthMm: number) =>
        boxes.some((box) => flat(box) && Math.abs(box.right - box.left - lengthMm) < BAR_MM)
      const down = (lengthMm: number) =>
        boxes.some((box) => upright(box) && Math.abs(box.bottom - box.top - lengthMm) < BAR_MM)
      // 1 in = 25.4 mm exactly (NIST Handbook 44, appendix C).
      expect(level(152.4) && level(150) && down(152.4) && down(150)).toBe(true)
      expect(
        boxes.some(
          (box) => Math.abs(box.right - box.left - 25.4) < BAR_MM && Math.abs(box.bottom - box.top - 25.4) < BAR_MM
        )
      ).toBe(true)
    }
  })

  test('have each hole of the plan at its distance from the datum end, by the strokes of the baseline', () => {
    const found = tiles.flatMap((sheet) => holesOn(sheet, mm))
    const flatHoles = plan.bench.holes.filter((hole) => ['top', 'front', 'back', 'bottom'].includes(hole.face))
    expect(flatHoles.length).toBeGreaterThan(0)
    for (const hole of flatHoles) {
      const drawn = found.find((one) => one.mark === hole.mark)
      expect(drawn, `hole ${hole.mark}`).toBeDefined()
      expect(Math.abs((drawn?.atMm ?? 0) - hole.atMm), `hole ${hole.mark}`).toBeLessThan(TEMPLATE_MM)
      // Along the pipe an unrolled outline is as long as the hole is wide, on a flat face it is the circle itself.
      expect(Math.abs((drawn?.alongMm ?? 0) - hole.diameterMm), `size of ${hole.mark}`).toBeLessThan(TEMPLATE_MM)
    }
  })

  test('meet at match lines that stand at the same distance on both pages', () => {
    const joined = new Map<string, number[]>()
    for (const sheet of tiles) {
      for (const strip of stripsOn(sheet)) {
        for (const label of strip.lettering.filter((one) => one.text.startsWith('match '))) {
          const line = nearest(
            sheet.paths.map(boxOf).filter((box) => upright(box) && box.bottom - box.top > 30),
            label.xMm < sheet.widthMm / 3 ? label.xMm + 2 : label.xMm + label.widthMm - 2
          )
          const at = (line?.left ?? Number.NaN) - offsetOf(strip.lettering, sheet, mm)
          const key = `${strip.title.replace(/: tile.*/, '')} ${label.text}`
          joined.set(key, [...(joined.get(key) ?? []), at])
        }
      }
    }
    for (const [key, places] of joined) {
      expect(places.length, key).toBe(2)
      expect(Math.abs((places[0] ?? 0) - (places[1] ?? 1)), key).toBeLessThan(0.1)
    }
  })
})

test('a channel too wide for the page is tiled across as well: both tiles have their match line at the same place', async () => {
  const { design, workshop } = demoFor('a4')
  const channels = design.channels.slice(0, 1)
  const profiles = design.parts.profiles.map((profile) => ({ ...profile, widthMm: 250 }))
  const wide = { ...design, channels, parts: { ...design.parts, profiles } }
  const plan = evaluate(wide, workshop, '2026-03-14')
  const sheet = buildSheet(plan, wide, workshop, { parts: ['templates'] })
  const { sheets } = await readPdf(await writePdf(docDefinition(sheet, { paper: 'a4' })))
  /** By the words on a match line: how far the centre line or the edge of the face is from it, on each tile. */
  const apart = new Map<string, number[]>()
  for (const page of sheets) {
    const level = page.paths.map(boxOf).filter((box) => flat(box) && box.right - box.left > 60)
    for (const label of page.lettering.filter((one) => one.text.includes('from the centre line'))) {
      const match = level.toSorted((one, two) => Math.abs(one.top - label.yMm) - Math.abs(two.top - label.yMm))[0]
      // The last tile of a row may be too short to tell its lines from a hole's.
      if (match === undefined || Math.abs(match.top - label.yMm) > 5) continue
      const above = match.top > label.yMm
      const other = level
        .filter((box) => (above ? box.top < match.top - 20 : box.top > match.top + 20))
        .filter((box) => box.left <= match.left + 8)
        .toSorted((one, two) => Math.abs(one.top - match.top) - Math.abs(two.top - match.top))[0]
      if (other === undefined) continue
      apart.set(label.text, [...(apart.get(label.text) ?? []), Math.abs(other.top - match.top)])
    }
  }
  expect(apart.size).toBeGreaterThan(0)
  for (const [words, distances] of apart) {
    const least = Math.min(...distances)
    const most = Math.max(...distances)
    for (const one of distances) expect(Math.min(one - least, most - one), words).toBeLessThan(TEMPLATE_MM)
    // From the centre line over the seam to the edge of a face 250 mm wide: 125 mm.
    expect(Math.abs(least + most - 125), words).toBeLessThan(0.1)
  }
})

const flat = (box: Box): boolean => box.bottom - box.top < 0.001
const upright = (box: Box): boolean => box.right - box.left < 0.001

interface Strip {
  readonly title: string
  readonly lettering: readonly Lettering[]
}

/** Lettering of each strip of a page: from its title down to the next. */
const stripsOn = (sheet: Sheet): Strip[] => {
  const titles = sheet.lettering.filter((one) => /: tile \d+ of \d+/.test(one.text)).sort((a, b) => a.yMm - b.yMm)
  return titles.map((title, index) => {
    const until = titles[index + 1]?.yMm ?? sheet.heightMm - 12.7 - 31
    return {
      title: title.text,
      lettering: sheet.lettering.filter((one) => !one.turned && one.yMm > title.yMm + 1 && one.yMm < until + 4)
    }
  })
}

const nearest = (boxes: readonly Box[], xMm: number): Box | undefined =>
  [...boxes].sort((a, b) => Math.abs(a.left - xMm) - Math.abs(b.left - xMm))[0]

/** Where the datum end lies on the page, by the stroke under a figure of the baseline. */
const offsetOf = (lettering: readonly Lettering[], sheet: Sheet, mm: (words: string) => number): number => {
  const figure = lettering.find((one) => /^[\d.,]+ (mm|in)$/.test(one.text))
  if (figure === undefined) throw new Error('no figure on the baseline')
  const strokes = sheet.paths.map(boxOf).filter((box) => upright(box) && Math.abs(box.bottom - box.top - 2) < 0.01)
  const stroke = nearest(strokes, figure.xMm + figure.widthMm / 2)
  if (stroke === undefined) throw new Error('no stroke on the baseline')
  return stroke.left - mm(figure.text)
}

const holesOn = (sheet: Sheet, mm: (words: string) => number) =>
  stripsOn(sheet).flatMap(({ lettering }) =>
    lettering.flatMap((label) => {
      const found = /^(\S+) · (.+) · Ø (.+)$/.exec(label.text)
      if (found === null) return []
      const [, mark = '', at = '', diameter = ''] = found
      const offset = offsetOf(lettering, sheet, mm)
      const wanted = { xMm: mm(at) + offset, sizeMm: mm(diameter) }
      const round = sheet.paths
        .filter((path) => path.points.length > 4)
        .map(boxOf)
        .filter((box) => Math.abs(box.right - box.left - wanted.sizeMm) < 0.6)
      const box = [...round].sort((a, b) => centre(a, wanted.xMm, label.yMm) - centre(b, wanted.xMm, label.yMm))[0]
      return box === undefined
        ? []
        : [{ mark, atMm: (box.left + box.right) / 2 - offset, alongMm: box.right - box.left }]
    })
  )

const centre = (box: Box, xMm: number, yMm: number): number =>
  Math.abs((box.left + box.right) / 2 - xMm) + 0.2 * Math.abs((box.top + box.bottom) / 2 - yMm)
