import { describe, expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { type Block, buildSheet, SHEET_PARTS, type SheetData, type SheetPart } from '../../shared-model/sheet'
import { cautionText, sayIn } from '../../shared-model/words'

const ON = '2026-03-14'
const demos = DEMOS.map((demo) => ({ ...demo, plan: evaluate(demo.design, demo.workshop, ON) }))

const wordsOf = (value: unknown): string => JSON.stringify(value)
const part = (sheet: SheetData, name: SheetPart): readonly Block[] =>
  sheet.sections.find((section) => section.part === name)?.blocks ?? []

describe.each(demos)('the build sheet of $name', ({ design, workshop, plan }) => {
  const sheet = buildSheet(plan, design, workshop)

  test('has its parts in the order of the bench, the card for the buyer last', () => {
    expect(sheet.sections.map((section) => section.part)).toEqual(SHEET_PARTS)
  })

  test('leaves out each part that is not wanted, and nothing else', () => {
    for (const left of SHEET_PARTS) {
      const parts = SHEET_PARTS.filter((one) => one !== left)
      const less = buildSheet(plan, design, workshop, { parts })
      expect(less.sections).toEqual(sheet.sections.filter((section) => section.part !== left))
      expect(less.templates.length === 0).toBe(left === 'templates')
    }
  })

  test('prints every caution that holds, with its source or the words common practice', () => {
    const cautions = part(sheet, 'cautions').filter((block) => block.kind === 'caution')
    expect(cautions.map((one) => one.text).sort()).toEqual(
      plan.cautions.map((one) => cautionText(one, sayIn(workshop.shows))).sort()
    )
    for (const one of cautions) expect(one.sources).toMatch(/^(\[\d+\] ?)+$|common practice/)
    expect(wordsOf(cautions)).not.toMatch(/\{\w+\}/)
  })

  test('orders cautions by their signal word, the gravest first (ANSI Z535.4: danger, warning, caution, notice)', () => {
    const rank = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE', 'SAFETY INSTRUCTIONS']
    const ranks = part(sheet, 'cautions').flatMap((block) =>
      block.kind === 'caution' ? [rank.indexOf(block.signalWord)] : []
    )
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
  })

  test('puts local codes first and promises no sill load', () => {
    const [first] = part(sheet, 'cautions')
    expect(wordsOf(first)).toMatch(/Local codes .* come first/)
    expect(wordsOf(first)).toMatch(/No load that a sill can bear is promised/)
  })

  test('never shows gloves beside a turning tool', () => {
    const steps = part(sheet, 'steps').flatMap((block) => (block.kind === 'table' ? block.rows : []))
    const drilling = steps.filter((row) => /Saw|Drill|Score|Finish|Bore/.test(row[2]?.text ?? ''))
    expect(drilling.length).toBeGreaterThan(0)
    for (const row of drilling) expect(row[6]?.text ?? '').not.toMatch(/(wear|put on)[^.]*gloves/i)
  })

  test('has a step on paper for each step of the bench plan, in its order', () => {
    const table = part(sheet, 'steps').find((block) => block.kind === 'table')
    expect(table?.kind === 'table' ? table.rows.length : 0).toBe(plan.bench.steps.length)
  })

  test('names no price on the card for the buyer, nor anywhere when prices are left out', () => {
    const money = new RegExp(`\\d ?${workshop.currency}\\b`)
    expect(wordsOf(sheet)).toMatch(money)
    expect(wordsOf(part(sheet, 'buyers-card'))).not.toMatch(money)
    expect(wordsOf(buildSheet(plan, design, workshop, { cost: false }))).not.toMatch(money)
  })

  test('prints the filled weight large', () => {
    const big = sheet.sections.flatMap((section) => section.blocks).filter((block) => block.kind === 'big')
    expect(wordsOf(big)).toContain('Filled weight')
  })

  test('has a row for each serial in the batch record', () => {
    const table = part(sheet, 'batch-record').find((block) => block.kind === 'table')
    expect(table?.kind === 'table' ? table.rows.length : 0).toBe(design.quantity)
  })

  test('has a label for each channel that says not for drinking', () => {
    const labels = part(sheet, 'labels').flatMap((block) => (block.kind === 'labels' ? block.labels : []))
    expect(labels.length).toBe(design.channels.length)
    for (const label of labels) expect(wordsOf(label)).toContain('NOT FOR DRINKING')
  })

  test('gives the exact figure behind every printed length', () => {
    const tables = sheet.sections.flatMap((section) => section.blocks).filter((block) => block.kind === 'table')
    for (const table of tables) {
      for (const row of table.rows) {
        for (const [index, column] of table.columns.entries()) {
          const cell = row[index]
          if (column.exactUnit !== 'mm' || cell === undefined || !/\d (mm|in)$/.test(cell.text)) continue
          expect(Number.isFinite(cell.exact), `${table.name}: ${column.head}`).toBe(true)
        }
      }
    }
  })

  test('holds no figure that is not one', () => {
    expect(wordsOf(sheet)).not.toMatch(/NaN|Infinity|undefined|null,"text"/)
  })

  test('is the same for the same plan', () => {
    expect(buildSheet(plan, design, workshop)).toEqual(sheet)
  })
})
