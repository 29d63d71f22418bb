import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { create } from 'fontkit'
import { describe, expect, test } from 'vitest'
import { FONT_FILES, FONT_FOLDER, FONT_PACKAGE } from '../../shared-model/paper'
import { lineWidthEm, textLines } from '../../shared-model/paper/text-lines'

const folder = join(dirname(createRequire(import.meta.url).resolve(`${FONT_PACKAGE}/package.json`)), FONT_FOLDER)
const [plain, bold] = FONT_FILES.map(({ file }) => {
  const face = create(readFileSync(join(folder, file)))
  if (!('hasGlyphForCodePoint' in face)) throw new Error(`${file} is a collection`)
  return face
})
if (plain === undefined || bold === undefined) throw new Error('two faces are wanted')

describe('the width of words in the sheet’s face', () => {
  test('is that of its hmtx table, to a thousandth of an em, for each sign of ASCII (OpenType, hmtx)', () => {
    for (let code = 0x20; code <= 0x7e; code += 1) {
      const advance = plain.glyphForCodePoint(code).advanceWidth / plain.unitsPerEm
      expect(lineWidthEm(String.fromCodePoint(code)), String.fromCodePoint(code)).toBeCloseTo(advance, 3)
    }
  })

  test('is never less than that of the table for the letters and signs of the sheet', () => {
    for (const sign of 'äöüßéèñçÄÖÜŒÆæœ·–—…→≤×Ø½¼²’“”−☐') {
      const advance = plain.glyphForCodePoint(sign.codePointAt(0) ?? 0).advanceWidth / plain.unitsPerEm
      expect(lineWidthEm(sign), sign).toBeGreaterThanOrEqual(advance - 0.001)
    }
  })

  test('of bold words is never less than that of the bold face', () => {
    for (const words of ['WARNING:', 'Card for the buyer: Two-foot basil planter', '12 3/16 in', 'Take care.']) {
      const wide = [...words].reduce(
        (sum, sign) => sum + bold.glyphForCodePoint(sign.codePointAt(0) ?? 0).advanceWidth,
        0
      )
      expect(lineWidthEm(words, true), words).toBeGreaterThanOrEqual(wide / bold.unitsPerEm - 0.005)
    }
  })
})

describe('words as lines', () => {
  test('lose none of their letters', () => {
    const words = 'Keep plugs, strips and lamps above or beside the water, never under it: 12 1/2 in of cord.'
    const lines = textLines(words, 40, 9)
    expect(lines.length).toBeGreaterThan(2)
    expect(lines.join('').replaceAll('\u00a0', ' ')).toBe(words)
  })

  test('keep a figure and its unit on one line', () => {
    expect(textLines('Keep 125 mm', 12, 9)).toEqual(['Keep ', '125\u00a0mm'])
  })
})
