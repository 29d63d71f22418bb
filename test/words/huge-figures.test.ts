import { expect, test } from 'vitest'
import { DEMOS, parseDesignText, parseWorkshopText, printDesign, printWorkshop } from '../../shared-model/design'
import { problemText } from '../../shared-model/words'

// Each number of a document in turn made larger than any machine counts exactly: the problem has to be sayable.
test.each(['1e20', '-1e20', '1.5e300'])('a document with %s for any of its numbers is refused in words', (huge) => {
  let refused = 0
  for (const { design, workshop } of DEMOS.slice(0, 1)) {
    for (const [text, parse] of [
      [printDesign(design), parseDesignText],
      [printWorkshop(workshop), parseWorkshopText]
    ] as const) {
      const places = [...text.matchAll(/(?<=: )-?\d+(\.\d+)?/g)].filter((_, at) => at % 9 === 0)
      for (const { 0: was, index } of places) {
        const parsed = parse(text.slice(0, index) + huge + text.slice(index + was.length))
        if (parsed.ok) continue
        refused += 1
        for (const units of ['mm', 'in'] as const)
          for (const problem of parsed.problem) {
            const shows = { units, inchGraduation: 16, mmGraduation: 1, decimalMark: ',' } as const
            expect(problemText(problem, shows)).not.toMatch(/undefined|NaN|Infinity/)
          }
      }
    }
  }
  expect(refused).toBeGreaterThan(20)
})
