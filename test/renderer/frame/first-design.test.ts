import { describe, expect, test } from 'vitest'
import { firstDesign } from '../../../renderer/frame/first-design'
import { CROPS } from '../../../shared-model/crops'
import { defaultWorkshop, editSill, newDesign } from '../../../shared-model/design'
import { CATALOGUE } from '../../../shared-model/parts'
import { evaluate } from '../../../shared-model/plan'

const DAY = '2025-03-01'

/** Sills from a bathroom's to a long bench's; invented. */
const SILLS = [
  { lengthsMm: [900], depthsMm: [220], clearHeightMm: 600 },
  { lengthsMm: [450], depthsMm: [140], clearHeightMm: 350 },
  { lengthsMm: [2400], depthsMm: [400], clearHeightMm: 1200 }
]

describe('a first design from the three steps', () => {
  for (const [at, sill] of SILLS.entries()) {
    test(`carries no stop with any stock, or is not drawn: sill ${sill.lengthsMm[0]} mm long, ${at === 0 ? 'any crop' : 'two crops'}`, () => {
      const workshop = defaultWorkshop()
      const bare = editSill(newDesign('d'), sill)
      if (!bare.ok) throw new Error(bare.problem.code)
      const stopped: string[] = []
      const drawn: string[] = []
      for (const profile of CATALOGUE.profiles) {
        for (const crop of at === 0 ? CROPS : CROPS.slice(0, 2)) {
          const made = firstDesign(bare.value, workshop, DAY, { cropId: crop.id, profileId: profile.id })
          if (!('design' in made)) continue
          drawn.push(profile.id)
          const plan = evaluate(made.design, workshop, DAY, { cuts: 'left-out' })
          const stops = plan.findings.filter((each) => each.severity === 'stop').map((each) => each.code)
          if (stops.length + plan.problems.length > 0) {
            stopped.push(`${profile.id} × ${crop.id}: ${[...stops, ...plan.problems.map((each) => each.code)].join()}`)
          }
        }
      }
      expect(stopped).toEqual([])
      // A 2 in cup in a 4 in pipe, the commonest build: common practice, no source.
      expect(drawn).toContain('pvc-schedule-40-4in')
    })
  }
})
