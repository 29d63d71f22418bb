import { describe, expect, it } from 'vitest'
import { DEMOS, parseDesign } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { cautionText, findingText, problemText, sayIn, wordsFor } from '../../shared-model/words'

const MM = { units: 'mm', inchGraduation: 16, mmGraduation: 1, decimalMark: ',' } as const
const INCHES = { units: 'in', inchGraduation: 16, mmGraduation: 1, decimalMark: '.' } as const

describe('words for findings and problems', () => {
  it('give each figure in the reader’s own units', () => {
    const finding = {
      code: 'land-thin',
      severity: 'warn',
      figures: { part: 'Slotted cup', landMm: 1.27, leastMm: 1.5 },
      where: {}
    } as const
    expect(findingText(finding, MM)).toBe(
      'Slotted cup hangs on a narrow land. Only 1,3 mm of rim rests on the edge; keep at least 1,5 mm. Take the next smaller saw.'
    )
    expect(findingText(finding, INCHES)).toContain('Only 0.05 in of rim rests on the edge; keep at least 0.06 in.')
  })

  it('say lengths to cut on the shop’s graduation', () => {
    const finding = {
      code: 'piece-too-long',
      severity: 'stop',
      figures: { mark: '2', profileId: 'p', lengthMm: 3_060.7, longestMm: 3_048 },
      where: {}
    } as const
    expect(findingText(finding, INCHES)).toBe(
      'No bar is long enough for piece 2. It is 120 1/2 in; the longest bar gives 120 in. Shorten it, or add a longer bar to the workshop.'
    )
  })

  it('say money in its currency', () => {
    const finding = {
      code: 'sells-at-a-loss',
      severity: 'warn',
      figures: { way: 'Own stall', lossMinor: 150 },
      where: {}
    } as const
    expect(findingText(finding, MM, 'EUR')).toBe(
      'Own stall loses 1,50 EUR on each unit. Ask more, or sell another way.'
    )
  })

  it('name the field of a document that is wrong, and both bounds', () => {
    const parsed = parseDesign({ ...DEMOS[0]?.design, quantity: 0 })
    if (parsed.ok) throw new Error('it should not pass')
    expect(parsed.problem.map((problem) => problemText(problem))).toEqual([
      'Quantity is out of range. It is 0; it must be 1 to 1000.'
    ])
  })

  it('keep headlines short', () => {
    for (const { design, workshop } of DEMOS) {
      const plan = evaluate(design, workshop, '2030-01-01')
      for (const finding of plan.findings)
        expect(wordsFor(finding, sayIn(workshop.shows)).headline.length, finding.code).toBeLessThan(90)
    }
  })

  it('put figures into a caution', () => {
    const caution = { text: 'Filled weight is {filledWeight}. Place it empty.', figures: { filledWeightG: 9_071.847 } }
    expect(cautionText(caution, sayIn(INCHES))).toBe('Filled weight is 20 lb. Place it empty.')
    expect(cautionText(caution, sayIn(MM))).toBe('Filled weight is 9,07 kg. Place it empty.')
    for (const { design, workshop } of DEMOS)
      for (const each of evaluate(design, workshop, '2026-05-01').cautions)
        expect(cautionText(each, sayIn(MM))).not.toContain('{')
  })
})
