import { describe, expect, it } from 'vitest'
import { notDominated, rowsThatFit } from '../../shared-model/fits'
import { stockForRows } from '../../shared-model/fits/stock-for-rows'
import cases from '../reference/bench-cases.json'

// Sill layouts solved by full enumeration outside this project: bench-cases.json, `layouts`. Prices there are in whole
// currency units with one decimal; here they are minor units.
describe.each(cases.layouts)('sill layout $case.id, solved by enumeration', ({ case: sill, solution }) => {
  const rows = rowsThatFit({
    roomLengthMm: sill.sill_length,
    roomDepthMm: sill.sill_depth,
    acrossMm: sill.channel_width,
    rowGapMm: sill.row_gap,
    leastEndMm: sill.end_margin,
    pitchMm: sill.spacing,
    closuresAddMm: 0
  })
  if (!rows.ok) throw new Error(rows.problem.code)
  const shop = {
    profileId: 'p',
    stock: sill.stocks.map(([lengthMm = 0, price = 0]) => ({
      id: String(lengthMm),
      profileId: 'p',
      lengthMm,
      count: null,
      offer: { priceMinor: Math.round(price * 100), supplier: '', pricedOn: '', taxInside: false }
    })),
    rack: [],
    setup: {
      tool: 'hand_saw' as const,
      toolName: '',
      kerfMm: sill.kerf,
      endTrimMm: 0,
      keepFromMm: 100_000,
      keptWorthPercent: 0,
      joinsAllowed: false
    },
    stop: () => false
  }
  const layouts = rows.value.flatMap((choice) => {
    const stock = stockForRows(
      choice.map((row) => row.lengthMm),
      shop
    )
    const plants = choice.reduce((sum, row) => sum + row.sitesAtMm.length, 0)
    if (stock?.costMinor == null) return []
    const costMinor =
      stock.costMinor + Math.round(choice.length * sill.fixed_per_channel * 100 + plants * sill.cost_per_site * 100)
    return [{ plants, costMinor, lengths: choice.map((row) => row.lengthMm) }]
  })

  it('has as many layouts as the enumeration, the empty sill apart', () => {
    expect(rows.value.length + 1).toBe(solution.n_enumerated)
  })

  it('has the same least cost for each number of plants that nothing beats', () => {
    const front = layouts
      .filter((one) => !layouts.some((other) => other.plants >= one.plants && other.costMinor < one.costMinor))
      .filter((one) => !layouts.some((other) => other.plants > one.plants && other.costMinor === one.costMinor))
    const costs = new Map(front.map(({ plants, costMinor }) => [plants, costMinor / 100]))
    expect([...costs].sort(([a], [b]) => a - b)).toEqual(solution.pareto.map(({ plants, cost }) => [plants, cost]))
  })

  it('holds at most as many plants as the enumeration found', () => {
    expect(Math.max(...layouts.map((each) => each.plants))).toBe(solution.max_plants.plants)
  })
})

describe('layouts that no other beats', () => {
  it('leave out what costs more for each plant and is better in nothing', () => {
    const cheap = { plants: 10, costMinor: 1000, leftOverMm: 50, load: 5 }
    const dear = { plants: 10, costMinor: 1100, leftOverMm: 50, load: 5 }
    const tidy = { plants: 10, costMinor: 1100, leftOverMm: 10, load: 5 }
    const more = { plants: 12, costMinor: 1500, leftOverMm: 90, load: 9 }
    expect(notDominated([dear, cheap, tidy, more, { ...cheap }])).toEqual([more, cheap, tidy])
  })
})
