import { describe, expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import { docDefinition } from '../../shared-model/paper'
import { FILL_GREYS, HEAD_GROUND, INK, PAPER, RULE, SIGNAL_GROUND } from '../../shared-model/paper/palette'
import { demoSheet } from './demo-sheet'

const shareOf = (hex: string, at: number): number => Number.parseInt(hex.slice(1 + 2 * at, 3 + 2 * at), 16) / 255

/** WCAG 2.2, "relative luminance" and "contrast ratio". */
const luminance = (hex: string): number => {
  const [red = 0, green = 0, blue = 0] = [0, 1, 2].map((at) => {
    const share = shareOf(hex, at)
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}
const contrast = (one: string, other: string): number => {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

describe('the sheet on a grey printer', () => {
  test('WCAG’s own examples come out: black on white 21, and #777777 on white 4.48 (WCAG 2.2, understanding 1.4.3)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5)
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2)
  })

  test('has no colour in it: every colour that the PDF sets has as much red as green and blue', async () => {
    const bytes = await writePdf(docDefinition(demoSheet('a4'), { paper: 'a4', uncompressed: true }))
    const raw = Buffer.from(bytes).toString('latin1')
    const set = [...raw.matchAll(/^([\d.]+) ([\d.]+) ([\d.]+) (?:scn|SCN|rg|RG)$/gm)]
    expect(set.length).toBeGreaterThan(100)
    const coloured = set.filter(([, red, green, blue]) => red !== green || green !== blue).map(([words]) => words)
    expect(coloured).toEqual([])
    // ISO 32000-1 table 74: the other operators that set a colour of more than one part, CMYK.
    expect(raw).not.toMatch(/^[\d.]+ [\d.]+ [\d.]+ [\d.]+ [kK]$/m)
  }, 60_000)

  // WCAG 2.2, 1.4.3: 4.5 for lettering, 7 for 1.4.6.
  test.each([
    ['on paper', INK, PAPER],
    ['on the head of a table', INK, HEAD_GROUND],
    ['of a grave signal word', PAPER, INK],
    ['of another signal word', INK, SIGNAL_GROUND],
    ['on a pale area', INK, FILL_GREYS.pale],
    ['on a tinted area', INK, FILL_GREYS.tint]
  ])('letters stand out %s', (_where, letters, ground) => {
    expect(contrast(letters, ground)).toBeGreaterThan(7)
  })

  test('grave signal words stand out from the others by their ground, and rules from the paper (WCAG 2.2, 1.4.11: 3)', () => {
    expect(contrast(INK, SIGNAL_GROUND)).toBeGreaterThan(3)
    expect(contrast(RULE, PAPER)).toBeGreaterThan(3)
    expect(contrast(FILL_GREYS.dark, PAPER)).toBeGreaterThan(3)
    expect(contrast(FILL_GREYS.dark, FILL_GREYS.tint)).toBeGreaterThan(2.8)
  })

  test('areas get darker in their order, each by a step that shows beside the one before (common practice, no source)', () => {
    const { paper, pale, tint, dark, ink } = FILL_GREYS
    const steps = [paper, pale, tint, dark, ink]
    for (const [index, grey] of steps.entries()) {
      const before = steps[index - 1]
      if (before !== undefined) expect(contrast(before, grey), `${before} ${grey}`).toBeGreaterThan(1.15)
      if (before !== undefined) expect(luminance(grey)).toBeLessThan(luminance(before))
    }
  })
})
