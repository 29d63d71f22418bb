import { describe, expect, it } from 'vitest'
import { DEMOS, type Design, defaultWorkshop, newDesign, type Workshop } from '../../shared-model/design'
import { CATALOGUE } from '../../shared-model/parts'
import { evaluate, type Plan } from '../../shared-model/plan'

const ON = '2026-05-01'
const [kitchen] = DEMOS
if (kitchen === undefined) throw new Error('no demo')
const { design, workshop } = kitchen

const codes = (plan: Plan): readonly string[] => plan.findings.map(({ code }) => code)
const found = (plan: Plan, code: string) => plan.findings.find((finding) => finding.code === code)

const withChannel = (id: string, changes: Partial<Design['channels'][number]>): Design => ({
  ...design,
  channels: design.channels.map((channel) => (channel.id === id ? { ...channel, ...changes } : channel))
})

describe('what is wrong with a design', () => {
  it('names an over-long channel, with the room there is, and still plans the rest', () => {
    const plan = evaluate(withChannel('c3', { lengthMm: 1_600, xMm: 20 }), workshop, ON)
    // 1600 + 2·4.2 = 1608.4 overall in 1482 − 2·3 = 1476.
    expect(found(plan, 'too-long-for-sill')).toMatchObject({
      severity: 'stop',
      where: { channelId: 'c3' },
      figures: { overallMm: 1_608.4, roomMm: 1_476 }
    })
    expect(plan.channels).toHaveLength(3)
    expect(plan.bench.holes).toHaveLength(16)
  })

  it('names a hole that is wider than the face', () => {
    const wide = CATALOGUE.saws.find(({ id }) => id === 'saw-mm-83')
    if (wide === undefined) throw new Error('no saw')
    const plan = evaluate(
      {
        ...design,
        parts: { ...design.parts, saws: [...design.parts.saws, wide] },
        seats: design.seats.map((seat) => (seat.id === 'seat1' ? { ...seat, sawId: wide.id } : seat))
      },
      workshop,
      ON
    )
    // Flat of the face: 80 − 2·5 = 70.
    expect(found(plan, 'hole-wider-than-face')).toMatchObject({ severity: 'stop', figures: { holeMm: 83, flatMm: 70 } })
    expect(found(plan, 'part-drops-through')).toMatchObject({ severity: 'stop', figures: { openingMm: 83, rimMm: 60 } })
    expect(found(plan, 'saw-not-owned')).toMatchObject({ severity: 'warn', figures: { diameterMm: 83 } })
  })

  it('names a piece that no bar is long enough for, and the longest bar', () => {
    const short: Workshop = {
      ...workshop,
      rack: [],
      stock: workshop.stock.filter(({ id }) => id !== 'drain-110-2000')
    }
    const plan = evaluate(design, short, ON)
    // A bar of 1000 less 5 of trim; a piece to the very end needs no kerf.
    expect(found(plan, 'piece-too-long')).toMatchObject({
      severity: 'stop',
      where: { channelId: 'c3' },
      figures: { mark: '3', lengthMm: 1_240, longestMm: 995 }
    })
    expect(plan.cuts.flatMap(({ uncut }) => uncut.map(({ pieceId }) => pieceId))).toEqual(['c3.1'])
    expect(plan.bench.steps.some(({ kind }) => kind === 'cut')).toBe(true)
  })

  it('names a missing price, and gives no cost rather than a wrong one', () => {
    const plan = evaluate(design, { ...workshop, offers: workshop.offers.filter(({ id }) => id !== 'cups-3') }, ON)
    expect(found(plan, 'price-missing')).toMatchObject({ severity: 'stop', figures: { partId: 'cup-3in' } })
    expect(plan.bill.totalMinor).toBeNull()
    expect(plan.pricing.cost).toBeNull()
    expect(plan.bill.missing.map(({ partId }) => partId)).toEqual(['cup-3in'])
    expect(plan.bill.lines.length).toBe(evaluate(design, workshop, ON).bill.lines.length)
  })

  it('says when it had to take the built-in workshop', () => {
    const plan = evaluate(design, defaultWorkshop(), ON)
    expect(found(plan, 'workshop-built-in')).toMatchObject({
      severity: 'note',
      figures: { saws: CATALOGUE.saws.length }
    })
    expect(codes(plan)).toContain('prices-none')
    expect(plan.totals.stops).toBe(0)
    expect(plan.cuts.every(({ uncut }) => uncut.length === 0)).toBe(true)
  })

  it('is a whole plan for an empty design', () => {
    const plan = evaluate(newDesign('d1'), defaultWorkshop(), ON)
    expect(codes(plan)).toContain('nothing-to-build')
    expect(plan.problems).toEqual([])
    expect(plan.bench.steps).toEqual([])
    expect(plan.totals).toMatchObject({ plants: 0, litres: 0, holes: 0, stops: 0 })
  })

  it('asks for sizes to be measured that no source publishes', () => {
    const parts = evaluate(design, workshop, ON).findings.filter(({ code }) => code === 'part-unmeasured')
    expect(parts.map(({ where }) => where.partId)).toContain('cup-2in')
    const measured: Design = {
      ...design,
      parts: {
        ...design.parts,
        cups: design.parts.cups.map((cup) => ({
          ...cup,
          evidence: Object.fromEntries(
            Object.keys(cup.evidence).map((field) => [field, { grade: 'measured', source: 'user', on: ON } as const])
          )
        }))
      }
    }
    const after = evaluate(measured, workshop, ON).findings.filter(({ code }) => code === 'part-unmeasured')
    expect(after.map(({ where }) => where.partId)).not.toContain('cup-2in')
  })
})

describe('working a plan out', () => {
  it('keeps the parts of channels that have not changed, and works out the one that has', () => {
    const before = evaluate(design, workshop, ON)
    const after = evaluate(withChannel('c1', { fillShare: 0.5 }), workshop, ON)
    expect(after.channels[1]?.water).toBe(before.channels[1]?.water)
    expect(after.channels[0]?.water).not.toBe(before.channels[0]?.water)
  })

  it('leaves the bars out when asked, and takes finished ones', () => {
    const without = evaluate(design, workshop, ON, { cuts: 'left-out' })
    expect(without.cuts).toEqual([])
    const whole = evaluate(design, workshop, ON)
    const given = evaluate(design, workshop, ON, { cuts: { cuts: whole.cuts, findings: [] } })
    expect(given.cuts).toBe(whole.cuts)
    expect(given.bill.totalMinor).toBe(whole.bill.totalMinor)
  })

  it('leaves out what is made of it when asked: the board is the same, its findings among the others', () => {
    const whole = evaluate(design, workshop, ON, { cuts: 'left-out' })
    const board = evaluate(design, workshop, ON, { cuts: 'left-out', making: 'left-out' })
    expect({ channels: board.channels, load: board.load, sill: board.sill }).toEqual({
      channels: whole.channels,
      load: whole.load,
      sill: whole.sill
    })
    expect(board.bench.steps).toEqual([])
    expect(board.findings.length).toBeGreaterThan(0)
    expect(board.findings.length).toBeLessThan(whole.findings.length)
    expect(whole.findings).toEqual(expect.arrayContaining([...board.findings]))
  })

  it('sets a piece on the graduation downwards, so that it still goes in', () => {
    const plan = evaluate(withChannel('c1', { lengthMm: 700.9 }), workshop, ON)
    expect(plan.pieces[0]).toMatchObject({ id: 'c1.1', mark: '1', lengthMm: 700 })
    const inches = evaluate(
      withChannel('c1', { lengthMm: 700.9 }),
      { ...workshop, shows: { ...workshop.shows, units: 'in' } },
      ON
    )
    // 700.9/25.4 = 27.594 in, 27 9/16 in = 700.0875 mm.
    expect(inches.pieces[0]?.lengthMm).toBeCloseTo(700.0875, 9)
  })

  it('gives the same plan every time', () => {
    expect(evaluate(structuredClone(design), structuredClone(workshop), ON)).toEqual(evaluate(design, workshop, ON))
  })
})
