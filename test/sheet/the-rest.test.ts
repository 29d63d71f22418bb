import { describe, expect, test } from 'vitest'
import { cutPiece, DEMOS, type Design, drillPiece, spoilPiece } from '../../shared-model/design'
import { evaluate, type Plan } from '../../shared-model/plan'
import { buildSheet, type SheetData, type SheetPart } from '../../shared-model/sheet'

const ON = '2026-03-14'
const demo = DEMOS.find(({ design }) => design.quantity > 1)
if (!demo) throw new Error('no demo is a batch')
const { design, workshop } = demo
const planOf = (of: Design): Plan => evaluate(of, workshop, ON)
const words = (sheet: SheetData, part: SheetPart): string =>
  JSON.stringify(sheet.sections.find((section) => section.part === part))
const tableRows = (sheet: SheetData, part: SheetPart, name: string) =>
  sheet.sections
    .filter((section) => section.part === part)
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) => (block.kind === 'table' && block.name === name ? block.rows : []))

/** The first bar's first piece cut and drilled, its second spoiled. */
const begun = (() => {
  const [cut] = planOf(design).cuts
  const bar = cut?.bars.find(({ pieces }) => pieces.length > 1)
  const [first, second] = bar?.pieces ?? []
  if (!cut || !bar || !first || !second) throw new Error('the batch has no bar with two pieces')
  const of = { ...bar, profileId: cut.profileId }
  const made = [
    (now: Design) => drillPiece(now, of, first.pieceId),
    (now: Design) => cutPiece(now, of, second.pieceId),
    (now: Design) => spoilPiece(now, of, second.pieceId, 0)
  ].reduce((now, step) => {
    const after = step(now)
    if (!after.ok) throw new Error(after.problem.code)
    return after.value
  }, design)
  return { design: made, first, second, key: bar.key }
})()

describe('a sheet printed again when the bench has begun', () => {
  const plan = planOf(begun.design)
  const sheet = buildSheet(plan, begun.design, workshop)
  const whole = buildSheet(planOf(design), design, workshop)

  test('carries a new revision and says that it stands in place of the old one', () => {
    expect(sheet.titleBlock.revision).not.toBe(whole.titleBlock.revision)
    expect(words(sheet, 'build')).toContain(`Revision ${sheet.titleBlock.revision} stands in place`)
    expect(words(sheet, 'build')).toContain(`1 of ${plan.pieces.length} pieces are cut, 1 drilled`)
  })

  test('lists the pieces that are still to cut, the spoiled one again, and none that is cut', () => {
    const marks = tableRows(sheet, 'cuts', 'cuts').map((row) => row[3]?.text)
    expect(marks).toHaveLength(plan.pieces.length - 1)
    expect(marks).toContain(begun.second.mark)
    expect(marks).not.toContain(begun.first.mark)
    expect(tableRows(whole, 'cuts', 'cuts')).toHaveLength(plan.pieces.length)
  })

  test('says which pieces are still to drill, and gives their steps alone', () => {
    expect(words(sheet, 'drilling')).toContain('Still to drill: ')
    const counted = (of: Plan['bench'], kind: string) =>
      of.steps.filter((step) => step.kind === kind).reduce((sum, { count }) => sum + count, 0)
    expect(plan.rest?.toDrill).toHaveLength(plan.pieces.length - 1)
    expect(counted(plan.rest?.bench ?? plan.bench, 'cut')).toBe(plan.pieces.length - 1)
    expect(counted(plan.bench, 'cut')).toBe(plan.pieces.length)
  })

  test('what is cut keeps its place on its bar, and the price still counts the whole batch', () => {
    const bar = plan.cuts[0]?.bars.find(({ key }) => key === begun.key)
    expect(bar?.pieces.slice(0, 2).map(({ pieceId, state }) => [pieceId, state])).toEqual([
      [begun.first.pieceId, 'drilled'],
      [begun.second.pieceId, 'spoiled']
    ])
    expect(plan.bench.workedS).toBeCloseTo(planOf(design).bench.workedS, 6)
  })

  test('can be printed whole all the same', () => {
    const again = buildSheet(plan, begun.design, workshop, { doneToo: true })
    expect(words(again, 'build')).not.toContain('What is left to do')
  })
})
