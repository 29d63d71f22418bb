import { expect, test } from 'vitest'
import { batchAt } from '../../../renderer/workers/batch-at'
import { DEMOS } from '../../../shared-model/design'
import { evaluate } from '../../../shared-model/plan'
import { ladder } from '../../../shared-model/pricing'

const ON = '2025-05-01'
const BUDGET = { work: 20_000, stop: () => false }

test('each step of the ladder is the plan of a batch of that size', () => {
  const demo = DEMOS[0]
  if (demo === undefined) throw new Error('there is no demo')
  const { design, workshop } = demo
  const steps = ladder([1, 3], batchAt(design, workshop, ON, BUDGET))
  if (!steps.ok) throw new Error(steps.problem.code)
  const [one, three] = steps.value
  const plan = evaluate({ ...design, quantity: 3 }, workshop, ON, { budget: BUDGET })
  expect(three?.unitCostMinor).toBe(plan.pricing.cost?.totalMinor)
  expect(three?.toolChanges).toBe(plan.bench.toolChanges)
  // Three of a build never take fewer new bars than one, and more bars are told as opened.
  expect(three?.bars ?? 0).toBeGreaterThanOrEqual(one?.bars ?? 0)
  expect(three?.opensStock).toBe((three?.bars ?? 0) > (one?.bars ?? 0))
  expect(one?.opensStock).toBe(false)
})
