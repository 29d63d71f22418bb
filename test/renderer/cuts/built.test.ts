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

test('what the packs left over is on the shelf, and the next batch of the same takes it before it buys', () => {
  const market = DEMOS.find(({ id }) => id === 'market-batch')
  if (market === undefined) throw new Error('there is no such demo')
  const { design } = market
  const plan = evaluate(design, market.workshop, ON)
  const after = done(plan, design, market.workshop)
  const over = plan.bill.lines.filter(({ need, left }) => need !== 'stock' && need !== 'sheet' && left > 0)
  expect(over.length).toBeGreaterThan(0)
  for (const { need, partId, left, restMinor } of over)
    expect(after.shelf).toContainEqual({ need, partId, amount: left, worthMinor: restMinor })
  const next = evaluate(design, after, ON)
  for (const { id, left, needed } of over)
    expect(next.bill.lines.find((line) => line.id === id)?.fromShelf).toBeCloseTo(Math.min(left, needed), 6)
  expect(next.bill.totalMinor ?? 0).toBeLessThan(plan.bill.totalMinor ?? 0)
})

test('a rest that was charged to the batch is worth nothing to the next one', () => {
  const market = DEMOS.find(({ id }) => id === 'market-batch')
  if (market === undefined) throw new Error('there is no such demo')
  const workshop: Workshop = {
    ...market.workshop,
    pricing: { ...market.workshop.pricing, chargePackRestTo: 'batch' }
  }
  const after = done(evaluate(market.design, workshop, ON), market.design, workshop)
  expect(after.shelf.length).toBeGreaterThan(0)
  for (const { worthMinor } of after.shelf) expect(worthMinor).toBe(0)
})

test('kept pieces of a foam sheet leave the batch at their stated worth and are on offer to the next at that', () => {
  const market = DEMOS.find(({ id }) => id === 'market-batch')
  if (market === undefined) throw new Error('there is no such demo')
  const { design } = market
  const workshop: Workshop = { ...market.workshop, sheetSetup: { ...market.workshop.sheetSetup, keptWorthPercent: 50 } }
  const plan = evaluate(design, workshop, ON)
  const cut = plan.rings.sheets[0]
  const offer = workshop.sheets.find(({ id }) => id === cut?.sheetId)
  if (cut === undefined || offer?.offer.priceMinor == null) throw new Error('no sheet is cut')
  expect(cut.offcuts.length).toBeGreaterThan(0)
  const shareOf = (kept: { readonly widthMm: number; readonly heightMm: number }) =>
    (kept.widthMm * kept.heightMm) / (cut.widthMm * cut.heightMm)
  const { priceMinor } = offer.offer
  const worths = plan.rings.sheets.flatMap((each) =>
    each.offcuts.map((kept) => Math.floor((priceMinor * shareOf(kept)) / 2))
  )
  const line = plan.bill.lines.find(({ need }) => need === 'sheet')
  expect(line?.restMinor).toBe(worths.reduce((sum, worth) => sum + worth, 0))
  expect((line?.usedMinor ?? 0) + (line?.restMinor ?? 0)).toBe((line?.totalMinor ?? 0) + (line?.fromShelfMinor ?? 0))
  const racked = done(plan, design, workshop).sheets.filter(({ isOffcut }) => isOffcut)
  expect(racked.map(({ offer: { priceMinor: worth } }) => worth ?? 0)).toEqual(worths)
})
