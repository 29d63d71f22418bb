import fc from 'fast-check'
import { parseDesign, parseWorkshop } from '../../shared-model/design'
import { evaluate, type Plan } from '../../shared-model/plan'
import { sayIn, wordsFor } from '../../shared-model/words'
import { anyDesign, anyWorkshop } from '../designs/arbitrary'
import { barsThatDoNotAddUp, notFinite, piecesNotCutOnce } from './figures'
import { type Tally, taking } from './tally'

const QUICK = { budget: { work: 200, stop: () => false } }
const ON = '2026-05-01'

/**
 * So many random designs, each in a random workshop: passed by the parser, worked out without a throw, NaN or Infinity,
 * findings in words, no length, piece or litre lost. Throws on the first that is not, made as small as it goes.
 */
export function randomDesigns(seed: number, runs: number): Tally {
  const { count, timed, tally } = taking()
  let run = 0
  fc.assert(
    fc.property(anyDesign, anyWorkshop, (design, workshop) => {
      for (const parsed of [parseDesign(design), parseWorkshop(workshop)])
        if (!parsed.ok) throw new Error(`the parser refuses it: ${JSON.stringify(parsed.problem)}`)
      run += 1
      timed(`seed ${seed}, design ${run}`, () => {
        const plan = evaluate(design, workshop, ON, QUICK)
        const wrong = [
          notFinite(plan),
          ...barsThatDoNotAddUp(plan),
          ...piecesNotCutOnce(plan, design.atBench),
          litresLost(plan),
          channelsLost(plan, design.channels.length),
          ...wordsMissing(plan, workshop)
        ].filter((each) => each !== null)
        if (wrong.length > 0) throw new Error(wrong.join('; '))
        count('worked out')
        if (plan.totals.stops > 0) count('with a stop')
        if (plan.problems.length > 0) count('with a problem')
      })
    }),
    { seed, numRuns: runs }
  )
  return tally()
}

const litresLost = (plan: Plan): string | null => {
  const litres = plan.channels.reduce((sum, { water }) => sum + water.litres, 0)
  return Math.abs(plan.totals.litres - litres) < 5e-10 ? null : `${plan.totals.litres} L in all, ${litres} L by channel`
}

const channelsLost = (plan: Plan, drawn: number): string | null =>
  plan.channels.length + plan.problems.length >= drawn ? null : `${drawn} channels drawn, ${plan.channels.length} told`

const wordsMissing = (plan: Plan, workshop: Parameters<typeof evaluate>[1]): readonly string[] => {
  const say = sayIn(workshop.shows, workshop.currency)
  return [...plan.findings, ...plan.problems].flatMap((about) => {
    const { headline, todo } = wordsFor(about, say)
    const bad = headline === '' || /undefined|NaN|Infinity|no number|\[object/.test(`${headline} ${todo}`)
    return bad ? [`${about.code} is said as “${headline} ${todo}”`] : []
  })
}
