import { MATERIAL_IDS } from '../materials'
import type { BenchInput } from './bench-input'
import type { BenchPlan } from './bench-plan'
import type { BenchFinding } from './codes'
import { sawOf } from './saw-of'
import { speedCeiling } from './speed-ceiling'

/** What the bench plan has to say: walls too thick for their saw, speeds without a published figure, order not proven. */
export const benchFindings = (input: BenchInput, plan: BenchPlan): readonly BenchFinding[] => [
  ...shallow(input),
  ...speeds(input),
  ...(plan.leastProven || plan.soughtBy === 'fewest-changes' ? [] : [notProven(plan)])
]

const notProven = (plan: BenchPlan): BenchFinding => ({
  code: 'order-not-proven',
  severity: 'note',
  figures: { handlingS: plan.handlingS, lowerBoundS: plan.leastHandlingS },
  where: { field: 'drills' }
})

const shallow = (input: BenchInput): readonly BenchFinding[] => {
  const found = new Map<string, BenchFinding>()
  for (const { innerSawId, outerSawId, thicknessMm } of input.collars) {
    for (const id of [outerSawId, ...(innerSawId === null ? [] : [innerSawId])]) {
      const saw = sawOf(input, id)
      if (!saw || saw.depthMm >= thicknessMm) continue
      found.set(id, {
        code: 'wall-deeper-than-saw',
        severity: 'warn',
        figures: { sawName: saw.name, depthMm: saw.depthMm, needsMm: thicknessMm },
        where: { field: `saws.${id}.depthMm` }
      })
    }
  }
  return [...found.values()]
}

/** One for each channel material whose ceiling is common practice, at its widest saw. */
const speeds = (input: BenchInput): readonly BenchFinding[] =>
  MATERIAL_IDS.flatMap((material): BenchFinding[] => {
    const used = new Set<string>()
    for (const channel of input.channels)
      if (channel.material === material) for (const { sawId } of channel.holes) if (sawId !== null) used.add(sawId)
    const diameters = [...used].map((id) => sawOf(input, id)?.diameterMm ?? 0)
    const ceiling = diameters.length > 0 ? speedCeiling(material, Math.max(...diameters)) : null
    if (!ceiling || ceiling.grade === 'published') return []
    return [
      {
        code: 'speed-common-practice',
        severity: 'note',
        figures: { material, rpm: ceiling.rpm },
        where: { field: 'saws' },
        source: 'speed-plastics'
      }
    ]
  })
