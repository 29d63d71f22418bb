import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { create } from 'fontkit'
import { describe, expect, test } from 'vitest'
import { FONT_FILES, FONT_FOLDER, FONT_PACKAGE } from '../../shared-model/paper'
import { SOURCES } from '../../shared-model/sources'
import { demoSheet } from './demo-sheet'

const folder = join(dirname(createRequire(import.meta.url).resolve(`${FONT_PACKAGE}/package.json`)), FONT_FOLDER)
const faces = FONT_FILES.map(({ name, file }) => {
  const face = create(readFileSync(join(folder, file)))
  if (!('hasGlyphForCodePoint' in face)) throw new Error(`${file} is a collection`)
  return { name, face }
})

const missing = (words: string): string[] =>
  faces.flatMap(({ name, face }) =>
    [...new Set(words)]
      .filter((letter) => letter >= ' ' && !face.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0))
      .map((letter) => `${letter} in ${name}`)
  )

describe('the faces of the sheet', () => {
  test('have the PostScript names that drawings ask for', () => {
    expect(faces.map(({ face }) => face.postscriptName)).toEqual(FONT_FILES.map(({ name }) => name))
  })

  test('have every sign of a workshop', () => {
    expect(
      missing('½¼¾⅓⅔⅛⅜⅝⅞ 11⁄16 ⁰¹²³⁴⁵⁶⁷⁸⁹ ₀₁₂₃₄₅₆₇₈₉ ′ ″ Ø ⌀ ² ³ ° µ ± × ÷ ≤ ≥ ≈ → ← ↑ ↓ ☐ ☑ ✓ · – — … [ ] € £')
    ).toEqual([])
  })

  test('have accented letters', () => {
    expect(
      missing(
        'ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÑÒÓÔÕÖØÙÚÛÜÝß àáâãäåæçèéêëìíîïñòóôõöøùúûüýÿ ĄĆĘŁŃŚŹŻ ąćęłńśźż ČĎĚŇŘŠŤŮŽ čďěňřšťůž ŐŰőű ĞİŞğış'
      )
    ).toEqual([])
  })

  test.each(['letter', 'a4'] as const)('have every letter of the sheet on %s', (paper) => {
    expect(missing(JSON.stringify(demoSheet(paper)))).toEqual([])
  })

  test('have every letter of the register of sources', () => {
    expect(missing(JSON.stringify(SOURCES))).toEqual([])
  })
})
