import { describe, expect, it } from 'vitest'
import { benchPlan, measuredTime } from '../../shared-model/bench'
import { channel, hole, input, TIMES } from './a-bench'

const asked = input({ channels: [channel('c1', [hole('a', 100, 51), hole('b', 250, 51)])], quantity: 3 })
const planned = benchPlan(asked)
if (!planned.ok) throw new Error(planned.problem.code)
const { steps } = planned.value

describe('a time taken at the bench', () => {
  it('makes the step, planned again, take just as long', () => {
    for (const step of steps) {
      const takenS = step.setUpS + step.runS + 30
      const time = measuredTime(step, TIMES, takenS)
      if (time === null) continue
      if (!time.ok) throw new Error(time.problem.code)
      const again = benchPlan({ ...asked, times: { ...TIMES, [time.value.key]: time.value.seconds } })
      const same = again.ok ? again.value.steps.find(({ id }) => id === step.id) : undefined
      // The time for each is kept to a tenth of a second.
      expect(Math.abs((same?.setUpS ?? 0) + (same?.runS ?? 0) - takenS)).toBeLessThanOrEqual(0.05 * step.count + 1e-9)
    }
    // Three pieces at 20 s planned, after a set-up of 600 s: 720 s taken is 40 s for each.
    const mark = steps.find(({ kind }) => kind === 'mark')
    expect(mark && measuredTime(mark, TIMES, 720)).toEqual({ ok: true, value: { key: 'markPerPieceS', seconds: 40 } })
  })

  it('shorter than what does not change is refused with both bounds', () => {
    const mark = steps.find(({ kind }) => kind === 'mark')
    expect(mark && measuredTime(mark, TIMES, 500)).toMatchObject({
      problem: { code: 'out-of-range', figures: { what: 'time taken', value: 500, least: 600, most: 1_000_000 } }
    })
    expect(mark && measuredTime(mark, TIMES, Number.NaN)).toMatchObject({ problem: { code: 'not-finite' } })
  })

  it('is not asked of a wait', () => {
    const cure = steps.find(({ kind }) => kind === 'cure')
    expect(cure && measuredTime(cure, TIMES, 60)).toBeNull()
  })
})
