import { describe, expect, test } from 'vitest'
import { proofState } from '../../../renderer/screens/cuts/proof-words'
import type { BarProgress, CutPlan } from '../../../shared-model/cutting'
import { DEMOS } from '../../../shared-model/design'
import { evaluate } from '../../../shared-model/plan'

const [, market] = DEMOS
if (market === undefined) throw new Error('the demo is missing')
const plan = evaluate(market.design, market.workshop, '2026-05-01')
const [planned] = plan.cuts
if (planned === undefined) throw new Error('there is no cut plan')

/** The same bars, known to be at most so much above the least. */
const above = (gap: number): CutPlan => ({ ...planned, proven: false, lowerBound: planned.value - gap })
const found = (part: Partial<BarProgress>): BarProgress => ({
  state: 'proving',
  cost: planned.value,
  lowerBound: 0,
  gap: planned.value,
  bars: planned.bars.length,
  ...part
})
const money = (minor: number): string => `${minor}`
// The dearest new bar of the plan: what one bar more can cost at most.
const dearest = Math.max(...planned.bars.map(({ isOffcut, costMinor }) => (isOffcut ? 0 : (costMinor ?? 0))))

describe('how good a cut plan is', () => {
  test('is said as proven where the bound meets it', () => {
    expect(proofState(planned, undefined, false, money)).toEqual({ proven: true, words: 'Proven least' })
  })

  test('is said in whole bars and money while the proof is looked for', () => {
    expect(proofState(above(dearest), undefined, true, money).words).toBe(
      `At most one bar above least (${dearest}), still proving`
    )
    expect(proofState(above(dearest + 1), undefined, true, money).words).toBe(
      `At most two bars above least (${dearest + 1}), still proving`
    )
  })

  test('says that the search is stopped, and how far it came', () => {
    const progress = found({ lowerBound: planned.value - 7, gap: 7 })
    expect(proofState(above(2 * dearest), progress, false, money).words).toBe(
      'Stopped; at most one bar above least (7)'
    )
  })

  test('is not said as proven when what is proven is a cheaper plan that is not shown yet', () => {
    const progress = found({ state: 'proven-least', cost: planned.value - 7, lowerBound: planned.value - 7, gap: 0 })
    expect(proofState(above(dearest), progress, true, money).proven).toBe(false)
  })
})
