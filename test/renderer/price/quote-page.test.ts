import { expect, test } from 'vitest'
import { quoteBlocks, quoteOf } from '../../../renderer/screens/price/quote-page'
import { DEMOS } from '../../../shared-model/design'
import { evaluate } from '../../../shared-model/plan'
import { sayIn } from '../../../shared-model/words'

const demo = DEMOS.at(-1)
if (demo === undefined) throw new Error('there is no demo')
const { design, workshop } = demo
const plan = evaluate(design, workshop, '2025-05-01')
const say = sayIn(workshop.shows, workshop.currency)
const way = plan.pricing.ways[0]
if (way === undefined) throw new Error('the demo has no way of selling')

test('a quote asks for the price the buyer sees, for as many as are made', () => {
  const made = quoteOf(plan, design, workshop, way.wayId)
  if (!made.ok || made.value === null) throw new Error('there is no quote')
  expect(made.value.rows[0]).toMatchObject({ count: design.quantity, eachMinor: way.shownMinor })
  const sum = made.value.rows.reduce((total, row) => total + row.totalMinor, 0)
  expect(sum).toBe(made.value.totalMinor)
})

test('nothing of the cost, profit, margin or suppliers stands on the page', () => {
  const made = quoteOf(plan, design, workshop, way.wayId)
  if (!made.ok || made.value === null) throw new Error('there is no quote')
  const page = JSON.stringify(quoteBlocks(made.value, design, plan.on, say))
  expect(page).toContain(say.money(made.value.totalMinor))
  const cost = plan.pricing.cost
  if (cost === null) throw new Error('the demo has no cost')
  for (const figure of [cost.totalMinor, cost.batchMinor, way.profitMinor]) {
    expect(page).not.toContain(say.money(figure))
  }
  expect(page).not.toMatch(/cost|profit|margin|supplier/i)
})

test('a way of selling that has no price gives no quote', () => {
  expect(quoteOf(plan, design, workshop, 'no-such-way')).toEqual({ ok: true, value: null })
})
