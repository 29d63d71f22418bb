import { describe, expect, test } from 'vitest'
import { afterBuilt, builtOf } from '../../../renderer/screens/cuts/built'
import { addOffcut, DEMOS, parseWorkshop, type Workshop } from '../../../shared-model/design'
import { evaluate, type Plan } from '../../../shared-model/plan'

const ON = '2025-05-01'
const done = (plan: Plan, design: Parameters<typeof afterBuilt>[1], workshop: Workshop): Workshop => {
  const made = afterBuilt(plan, design, workshop)
  if (!made.ok) throw new Error(made.problem.code)
  return made.value
}

describe.each(DEMOS.map((demo) => [demo.design.title, demo] as const))('%s marked as built', (title, demo) => {
  const plan = evaluate(demo.design, demo.workshop, ON)
  const after = done(plan, demo.design, demo.workshop)

  test('leaves a workshop that its own parser takes', () => {
    expect(parseWorkshop(after)).toMatchObject({ ok: true })
  })

  test('has what is kept of each bar on the rack, with where and when it came from', () => {
    const kept = plan.cuts.flatMap(({ bars }) => bars).filter(({ keep, pieces }) => keep && pieces.length > 0)
    const on = after.rack.filter(({ id }) => !demo.workshop.rack.some((each) => each.id === id))
    expect(on.map(({ lengthMm }) => lengthMm)).toEqual(kept.map(({ leftoverMm }) => leftoverMm))
    for (const offcut of on) expect(offcut).toMatchObject({ cameFrom: title, cameOn: ON })
  })

  test('has no offcut left that was cut', () => {
    const cut = plan.cuts.flatMap(({ bars }) => bars).filter(({ isOffcut, pieces }) => isOffcut && pieces.length > 0)
    for (const { stockId } of cut) expect(after.rack.some(({ id }) => id === stockId)).toBe(false)
  })
})

test('an offcut on the rack that holds every piece is used and comes off', () => {
  const [demo] = DEMOS
  if (demo === undefined) throw new Error('there is no demo')
  const { design } = demo
  const profileId = design.channels[0]?.profileId ?? ''
  // 12 m is the longest bar that can be entered: longer than the pieces of one windowsill together.
  const racked = addOffcut(demo.workshop, { profileId, lengthMm: 12_000 })
  if (!racked.ok) throw new Error(racked.problem.code)
  const plan = evaluate(design, racked.value, ON)
  const offcut = racked.value.rack.at(-1)
  expect(builtOf(plan, design, racked.value).bars.used).toContainEqual(offcut)
  expect(
    done(plan, design, racked.value).rack.some(({ id, lengthMm }) => id === offcut?.id && lengthMm === 12_000)
  ).toBe(false)
})
