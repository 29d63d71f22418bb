import { describe, expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import { DEMOS } from '../../shared-model/design'
import { docDefinition } from '../../shared-model/paper'
import { evaluate, type PlanFinding } from '../../shared-model/plan'
import { buildSheet } from '../../shared-model/sheet'
import { findingText } from '../../shared-model/words'
import { readPdf } from '../sheet/read-pdf'

const SHOWS = { units: 'mm', inchGraduation: 16, mmGraduation: 1, decimalMark: '.' } as const
const HEBREW = 'שורה ליד החלון'
const ARABIC = 'الصف الأول'

const clash = (other: string): PlanFinding => ({
  code: 'channels-clash',
  severity: 'stop',
  figures: { other, overlapMm: 12.5 },
  where: { channelId: 'c1' }
})

describe('a name written from right to left in a sentence', () => {
  // Unicode Standard Annex 9, 2.4: U+2068 FIRST STRONG ISOLATE, U+2069 POP DIRECTIONAL ISOLATE.
  test.each([HEBREW, ARABIC])('is isolated, so that the figures after it stand as they are: %s', (name) => {
    expect(findingText(clash(name), SHOWS)).toBe(
      `Stands in the way of \u2068${name}\u2069. They overlap by 12.5 mm. Move one of them.`
    )
  })

  test('is left alone where it is written from left to right', () => {
    expect(findingText(clash('Fenêtre 12'), SHOWS)).toBe(
      'Stands in the way of Fenêtre 12. They overlap by 12.5 mm. Move one of them.'
    )
  })

  test('cannot end its isolation with a sign of its own', () => {
    expect(findingText(clash(`${HEBREW}\u2069 12 mm`), SHOWS)).toContain(`\u2068${HEBREW}\uFFFD 12 mm\u2069`)
  })
})

test('on paper figures beside such a name keep their order, and no sign of isolation is printed', async () => {
  const [kitchen] = DEMOS
  if (kitchen === undefined) throw new Error('a demo is wanted')
  const { workshop } = kitchen
  const design = {
    ...kitchen.design,
    channels: kitchen.design.channels.map((channel) => ({ ...channel, name: HEBREW, openings: [] }))
  }
  const plan = evaluate(design, workshop, '2026-03-14')
  const sheet = buildSheet(plan, design, workshop, { parts: ['build', 'drilling'] })
  const { sheets } = await readPdf(await writePdf(docDefinition(sheet, { paper: 'a4' })))
  const words = sheets.flatMap(({ lettering }) => lettering.map(({ text }) => text))
  expect(words.join('\n')).not.toMatch(/[\u2066-\u2069\uFFFD]/)
  for (const channel of plan.channels) {
    const length = `${Math.round(channel.layout.cutLengthMm)} mm`
    expect(words.some((text) => text.replaceAll('\u00a0', ' ') === length)).toBe(true)
  }
})
