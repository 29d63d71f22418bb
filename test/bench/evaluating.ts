import { DEMOS, type Design, editChannels, moveSite, placeChannel, type Workshop } from '../../shared-model/design'
import { type EvaluateOptions, evaluate, type Plan } from '../../shared-model/plan'
import { fortyChannels, sixtyChannels } from './large-designs'
import { type BenchRow, measureWarm } from './measure'

const ON = '2026-11-25'
const MOVING: EvaluateOptions = { cuts: 'left-out' }

/**
 * Times of a whole evaluation: each demo, 40 channels with 400 sites, 60 channels with 2,040 sites.
 *
 * `from nothing`: both documents are new copies (made before the clock starts), of which no part was seen before, with
 * other times for a tool change, so that neither part, sheet plan nor drilling order can be kept. `opened again`: new
 * copies of the same documents, for which the drilling order is known. The rows of one edit are what a hand sees: the edit
 * itself, checked by the parser, and the plan that follows it, with all that the edit leaves alone kept.
 */
export const benchEvaluating = (): readonly BenchRow[] =>
  DEMOS.flatMap(({ id, design, workshop }) => {
    const large = fortyChannels(design)
    const largest = sixtyChannels(design)
    return [
      fromNothing(`${id}, from nothing, with its cut plan`, design, workshop, {}),
      fromNothing(`${id}, from nothing`, design, workshop),
      fromNothing(`${id}, 40 channels and 400 sites, from nothing`, large, workshop),
      openedAgain(`${id}, 40 channels and 400 sites, opened again`, large, workshop),
      oneEdit(`${id}, 40 channels and 400 sites, one channel moved`, large, workshop, moved),
      fromNothing(`${id}, 60 channels and 2,040 sites, from nothing`, largest, workshop),
      oneEdit(`${id}, 60 channels and 2,040 sites, one channel moved`, largest, workshop, moved),
      oneEdit(`${id}, 60 channels and 2,040 sites, one fill line moved`, largest, workshop, filled),
      oneEdit(`${id}, 60 channels and 2,040 sites, one site moved`, largest, workshop, siteMoved)
    ]
  })

const sumOf = ({ totals, findings }: Plan): number => Math.round(totals.litres * 1000) + findings.length

const fromNothing = (name: string, design: Design, workshop: Workshop, options = MOVING): BenchRow =>
  measureWarm(
    name,
    (run) => {
      const times = { ...workshop.times, toolChangeS: workshop.times.toolChangeS + run / 1024 }
      return structuredClone({ design, workshop: { ...workshop, times } })
    },
    (documents) => sumOf(evaluate(documents.design, documents.workshop, ON, options))
  )

const openedAgain = (name: string, design: Design, workshop: Workshop): BenchRow =>
  measureWarm(
    name,
    () => structuredClone({ design, workshop }),
    (documents) => sumOf(evaluate(documents.design, documents.workshop, ON, MOVING))
  )

type Edit = (design: Design, run: number) => ReturnType<typeof placeChannel>

const moved: Edit = (design, run) => placeChannel(design, 'c20', 20 + (run & 7), 960 + (run & 3))
const filled: Edit = (design, run) => editChannels(design, ['c20'], { fillShare: 0.6 + (run & 7) / 100 })
const siteMoved: Edit = (design, run) => moveSite(design, 'c20', 'c20s5', 560 + (run & 7))

const oneEdit = (name: string, design: Design, workshop: Workshop, edit: Edit): BenchRow => {
  let now = design
  return measureWarm(
    name,
    (run) => run + 1_000,
    (run) => {
      const made = edit(now, run)
      if (made.ok) now = made.value
      return sumOf(evaluate(now, workshop, ON, MOVING))
    }
  )
}
