import { describe, expect, it } from 'vitest'
import { DEMOS, type Demo } from '../../shared-model/design'
import { evaluate, type Plan } from '../../shared-model/plan'

const ON = '2026-05-01'
const demo = (k: number): Demo => {
  const found = DEMOS[k]
  if (found === undefined) throw new Error('no demo')
  return found
}
const planOf = ({ design, workshop }: Demo): Plan => evaluate(design, workshop, ON)
const at = <T>(list: readonly T[], k: number): T => {
  const found = list[k]
  if (found === undefined) throw new Error(`no item ${k}`)
  return found
}
const line = (plan: Plan, id: string): Plan['bill']['lines'][number] => {
  const found = plan.bill.lines.find((each) => each.id === id)
  if (found === undefined) throw new Error(id)
  return found
}

it.each(DEMOS)('$name has nothing that stops it', (each) => {
  const plan = planOf(each)
  expect(plan.findings.filter(({ severity }) => severity === 'stop')).toEqual([])
  expect(plan.problems).toEqual([])
})

describe('the kitchen windowsill, worked by hand', () => {
  const plan = planOf(demo(0))
  const [c1, c2, c3] = [at(plan.channels, 0), at(plan.channels, 1), at(plan.channels, 2)]

  it('takes the least reading of the reveal', () => {
    expect(plan.sill).toEqual({ lengthMm: 1_482, depthMm: 250 })
  })

  it('hangs a 2 in cup on its rim in the face', () => {
    // Rim 60, body 49, saw 52: land (60 − 52)/2 = 4, play (52 − 49)/2 = 1.5.
    // Face 76 + 2 = 78 above the floor, rim 2 thick, cup 50 high: underside 78 + 2 − 50 = 30.
    const [cup] = at(c1.seats, 0).interfaces
    expect(cup).toMatchObject({ hold: 'hangs-on-rim', landMm: 4, playMm: 1.5, undersideMm: 30, topMm: 80 })
  })

  it('wedges a riser in a 48 mm hole and hangs the cup in it', () => {
    // Drinking cup: 53 under the rim to 41 at the bottom over 57 − 2.5 = 54.5, so 12/54.5 on the diameter for each mm.
    // It measures 48 at (53 − 48)·54.5/12 = 22.708 below the rim band; with the band 25.208 proud.
    // Pressed 0.5 mm on the diameter: 0.5/(2·(6/54.5)) = 2.271 deeper. Proud 25.208 − 2.271 = 22.9375.
    const [riser, cup] = at(c2.seats, 0).interfaces
    expect(riser?.hold).toBe('wedges')
    expect(riser?.proudMm).toBeCloseTo(22.9375, 4)
    // Mouth 53 − 2·0.35 = 52.3: land (60 − 52.3)/2 = 3.85. Underside 78 + 22.9375 + 2 − 50 = 52.9375.
    expect(cup?.hold).toBe('hangs-on-rim')
    expect(cup?.landMm).toBeCloseTo(3.85, 6)
    expect(cup?.undersideMm).toBeCloseTo(52.9375, 4)
  })

  it('presses a foam collar flush into the pipe and wedges a 3 in cup in it', () => {
    // Collar: 101.6 − 2·1.905 = 97.79 outside; 85 % of it is 83.1, so a 90 mm hole takes it.
    // Crown: bore 110 − 2·3.52 = 102.96, top of the pipe 106.48 above the floor.
    // Cup 77 under the rim, 52 at the bottom over 72.5: it measures 76.2 at (77 − 76.2)·72.5/25 = 2.32 below the band of 2.5.
    // Underside 106.48 + 2.32 + 2.5 − 75 = 36.30.
    const [collar, cup] = at(c3.seats, 0).interfaces
    expect(collar).toMatchObject({ hold: 'pressed-in', proudMm: 0 })
    expect(cup?.hold).toBe('wedges')
    expect(cup?.proudMm).toBeCloseTo(4.82, 2)
    expect(cup?.undersideMm).toBeCloseTo(36.3, 2)
  })

  it('fills the first channel with 2.46 L', () => {
    // Level 0.62·76 = 47.12. Area 76·47.12 less two corners of radius 3: 2·(1 − π/4)·9 = 3.86, so 3577.26 mm².
    // Over 700 mm 2.5041 L; the sill's fall of 0.5 mm/m takes 76·0.175·700 = 0.0093 L.
    // Each cup below the level: frustum 35 to 39.99 over 17.12 high = 18 930 mm³, less 45 % of its inside of 15 580 mm³,
    // leaves 11 920 mm³; three of them 0.0358 L. 2.5041 − 0.0093 − 0.0358 = 2.459 L.
    expect(c1.water.levelMm).toBeCloseTo(47.12, 9)
    expect(c1.water.litres).toBeCloseTo(2.459, 3)
    // 30 − 47.12 = −17.12 at the low end; the first site stands 130 mm from it, 0.065 mm higher.
    // Its bottom of 35 lies with the channel: the low edge is 0.0005 · 17.5 nearer to the surface.
    expect(c1.water.leastGapMm).toBeCloseTo(-17.06375, 6)
  })

  it('measures the overall lengths with the caps', () => {
    // Caps add 2 mm each to the downpipes and 3.2 + 1 = 4.2 mm each to the pipe.
    expect(plan.channels.map(({ layout }) => layout.overallLengthMm)).toEqual([704, 724, 1_248.4])
  })

  it('cuts both downpipes from one new bar and the pipe from the rack', () => {
    // 2500 − 5 trim − 720 − 700 − 2 kerfs of 1.5 = 1072, kept. 1895 less 50 % of 1895·1072/2500 = 406: 1489.
    // 720 from the offcut instead: 290 + 1895 − 680 = 1505, dearer.
    const [pipes, drains] = plan.cuts
    expect(pipes?.bars.map(({ stockId, leftoverMm }) => [stockId, leftoverMm])).toEqual([['downpipe-80-2500', 1_072]])
    expect(pipes).toMatchObject({ value: 1_489, lowerBound: 1_489, proven: true })
    // The offcut of 1290 is worth 380; a new 2 m less what is kept would be 1290 − 243 = 1047. 1290 − 1240 − 1.5 = 48.5.
    expect(drains?.bars.map(({ stockId, leftoverMm, keep }) => [stockId, leftoverMm, keep])).toEqual([
      ['off2', 48.5, false]
    ])
  })

  it('doses the feed on top of what the tap water has', () => {
    // (1.5 − 0.3)/(1.6 − 0.3) = 0.923 of 4 mL/L = 3.692 mL/L.
    expect(plan.firstFill.concentrateMl).toBeCloseTo((plan.totals.litres * 4 * 1.2) / 1.3, 6)
  })

  it('bills whole packs, and to the unit only its share', () => {
    // Seven cups of a pack of ten at 4.90: pay 4.90, carry 3.43.
    expect(line(plan, 'cup:cup-2in')).toMatchObject({ needed: 7, left: 3, totalMinor: 490, usedMinor: 343 })
    expect(line(plan, 'closure:end-cap-downpipe-80')).toMatchObject({ needed: 4, totalMinor: 980 })
    // 1895 + 980 + 490 + 290 + 1050 + 320 + 620 + 450 + 380 + 2·690 + 640 + 750 + 280 + 420 = 9945.
    expect(plan.bill.totalMinor).toBe(9_945)
    expect(plan.bill.missing).toEqual([])
  })

  it('orders a collar’s saws: the larger scores, the smaller goes through, the larger finishes', () => {
    const saws = plan.bench.steps.filter(({ toolId }) => toolId === 'saw-in-4' || toolId === 'saw-in-3')
    expect(saws.map(({ kind, toolId }) => `${kind} ${toolId}`)).toEqual([
      'score saw-in-4',
      'saw-inner saw-in-3',
      'saw-through saw-in-4'
    ])
  })

  it('prices the work by the hour and rounds the price up to its ending', () => {
    const { cost, ways } = plan.pricing
    const labour = Math.round((plan.bench.workedS * 1_800) / 3_600)
    expect(cost?.labourMinor).toBe(labour)
    const parts = cost === null ? 0 : cost.materialMinor + cost.labourMinor + cost.toolWearMinor + cost.overheadMinor
    expect(cost?.totalMinor).toBe(parts)
    // A margin of 15 %: cost ÷ 0.85, up to whole euros.
    expect(ways[0]?.priceMinor).toBe(Math.ceil(parts / 0.85 / 100) * 100)
  })
})

describe('the market batch, worked by hand', () => {
  const plan = planOf(demo(1))

  it('cuts eighteen pieces from the offcut, one 15 ft and two 10 ft bars', () => {
    // 23.75 in = 603.25 mm, on the 1/16 in graduation. Kerf 2.4, trim 6.
    // 15 ft: 4572 − 6 − 7·(603.25 + 2.4) = 326.45, kept. 10 ft: 3048 − 6 − 5·605.65 = 13.75. Offcut: 660.4 − 605.65 = 54.75.
    // 300 + 3395 + 2·2350 − 60 % of 3395·326.45/4572 (145) = 8250.
    const [cut] = plan.cuts
    expect(cut?.bars.map(({ stockId, pieces }) => `${stockId} ${pieces.length}`).sort()).toEqual([
      'downspout-10ft 5',
      'downspout-10ft 5',
      'downspout-15ft 7',
      'off1 1'
    ])
    const left = cut?.bars.map(({ leftoverMm }) => leftoverMm).sort((a, b) => a - b) ?? []
    expect(left.map((each) => Math.round(each * 100) / 100)).toEqual([13.75, 13.75, 54.75, 326.45])
    expect(cut).toMatchObject({ value: 8_250, lowerBound: 8_250, proven: true })
    expect(plan.pieces.map(({ mark }) => mark).slice(0, 2)).toEqual(['1/1', '1/2'])
  })

  it('buys the cheapest packs', () => {
    // 36 caps: three boxes of 12 at 26.40 against 36 at 2.75. 54 cups: three bags of 25 at 7.99 against one of 100 at 24.50.
    expect(line(plan, 'closure:end-cap-downspout-4in-plain').totalMinor).toBe(7_920)
    expect(line(plan, 'cup:cup-2in').totalMinor).toBe(2_397)
    // Eighteen boxes at 3.85; twenty-five at 3.40 would be 85.00.
    expect(line(plan, 'packing').totalMinor).toBe(6_930)
  })

  it('seals each cap with a bead around the downspout', () => {
    // 2·(101.6 + 76.2) − (8 − 2π)·3 = 350.45 mm; 5 × 5 mm bead: 8.761 mL; 36 caps: 315.4 mL, two cartridges of 299.
    const sealant = line(plan, 'sealant:silicone-neutral')
    expect(sealant.needed).toBeCloseTo(315.4, 1)
    expect(sealant.totalMinor).toBe(2 * 899)
  })

  it('asks at the stall what leaves a quarter, and online what fees and postage take on top', () => {
    const unit = plan.pricing.cost?.totalMinor ?? Number.NaN
    const ending = (price: number): number => Math.ceil((price - 99) / 100) * 100 + 99
    const [stall, online, shop] = plan.pricing.ways
    expect(stall?.priceMinor).toBe(ending(unit / 0.75))
    // φ = 0.065·1.07 = 0.06955: (C + 12.40 + 0.30 − 9.95·(1 − φ))/(1 − φ − 0.25).
    const fee = 0.065 * 1.07
    expect(online?.priceMinor).toBe(ending((unit + 1_240 + 30 - 995 * (1 - fee)) / (1 - fee - 0.25)))
    expect(shop?.priceMinor).toBe(5_200)
    expect(shop?.profitMinor).toBe(5_200 - unit)
  })

  it('packs a planter with 38 mm of padding on every side', () => {
    // 607.25 + 76, 101.6 + 76, 76.2 + 76; length and girth 683.25 + 2·(177.6 + 152.2) = 1342.85.
    const { parcel } = plan.pricing
    expect(parcel?.sidesMm.map((side) => Math.round(side * 100) / 100)).toEqual([683.25, 177.6, 152.2])
    expect(parcel?.lengthPlusGirthMm).toBeCloseTo(1_342.85, 6)
  })

  it('cuts fifty-four stem collars from one tile', () => {
    expect(plan.rings.needs.map(({ count }) => count)).toEqual([54])
    expect(plan.rings.sheets).toHaveLength(1)
    expect(plan.rings.uncut).toEqual([])
  })
})
