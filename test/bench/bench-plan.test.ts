import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type BenchInput,
  type BenchPlan,
  benchFindings,
  benchPlan,
  cutterSpeed,
  speedCeiling
} from '../../shared-model/bench'
import { MM_PER_FOOT, mm, mmFromInches } from '../../shared-model/units'
import { channel, hole, input, saw, TIMES } from './a-bench'

const SEED = 55_190

const planned = (given: BenchInput): BenchPlan => {
  const result = benchPlan(given)
  if (!result.ok) throw new Error(result.problem.code)
  return result.value
}

const kinds = (plan: BenchPlan) => plan.steps.map(({ kind }) => kind)

const collar = (
  needId: string,
  outer: number,
  inner: number | null,
  fromSheet: number
): BenchInput['collars'][number] => ({
  needId,
  name: needId,
  material: 'eva-foam',
  thicknessMm: 10,
  outerSawId: `saw-${outer}`,
  innerSawId: inner === null ? null : `saw-${inner}`,
  fromSheet,
  fromCores: []
})

describe('the bench plan', () => {
  it('goes from marking to packing in the order of the trade', () => {
    const plan = planned(input())
    expect(kinds(plan)).toEqual([
      'mark',
      'cut',
      'deburr',
      'mark-holes',
      'saw',
      'saw',
      'wash',
      'fit-end',
      'cure',
      'leak-test',
      'label',
      'pack'
    ])
  })

  it('adds up for one channel with two holes of 51 mm and one of 25 mm', () => {
    const plan = planned(input())
    // Set-up: 600 once, stop 40, first clamping 15, one tool change 60 (the channel stays clamped) = 715 s.
    expect(plan.setUpS).toBe(715)
    // 51 mm: 20 + 10 · (51 − 25.4)/25.4 = 30.0787 s and 4 s for the pilot in the arbor; 25 mm: 20 + 4 s.
    // Mark 20, cut 30, deburr 2 · 10, mark holes 3 · 5, saw 2 · 34.0787 + 24, wash 50, ends 2 · 90, leak 45, label 15, pack 120.
    const sawing = 2 * (20 + (10 * (51 - 25.4)) / 25.4 + 4) + 24
    expect(plan.runS).toBeCloseTo(20 + 30 + 20 + 15 + sawing + 50 + 180 + 45 + 15 + 120, 9)
    expect(plan.workedS).toBeCloseTo(plan.setUpS + plan.runS, 9)
    // Waits: a day's cure and an hour's leak test.
    expect(plan.elapsedS).toBeCloseTo(plan.workedS + 86_400 + 3600, 9)
    expect(plan).toMatchObject({ toolChanges: 1, leastToolChanges: 1, mounts: 1, proven: true, leastProven: true })
  })

  it('sets the stop once for each length, in the order given', () => {
    const channels = [
      channel('a', [], { lengthMm: 500 }),
      channel('b', [], { lengthMm: 900 }),
      channel('c', [], { lengthMm: 500 })
    ]
    const cuts = planned(input({ channels, quantity: 2, stopSettingsMm: [500, 900] })).steps.filter(
      ({ kind }) => kind === 'cut'
    )
    expect(cuts.map(({ figures, count, setUpS, runS }) => [figures.lengthMm, count, setUpS, runS])).toEqual([
      [500, 4, 40, 120],
      [900, 2, 40, 60]
    ])
  })

  it('cuts collars larger, smaller, larger, each step after the one before', () => {
    const plan = planned(input({ channels: [], collars: [collar('ring', 76, 51, 12)], collarSheets: 1 }))
    const steps = plan.steps.filter(({ machine }) => machine === 'drill')
    expect(steps.map(({ kind, toolId, count }) => [kind, toolId, count])).toEqual([
      ['score', 'saw-76', 12],
      ['saw-inner', 'saw-51', 12],
      ['saw-through', 'saw-76', 12]
    ])
    expect(steps[1]?.needs).toContain(steps[0]?.id)
    expect(steps[2]?.needs).toContain(steps[1]?.id)
    expect(plan).toMatchObject({ toolChanges: 2, leastToolChanges: 2, mounts: 1 })
  })

  it('takes a core only after the collar that drops it has been cut inside', () => {
    const small = { ...collar('small', 76, 51, 2), fromCores: [{ needId: 'large', count: 4, sameSaw: true }] }
    const plan = planned(input({ channels: [], collars: [small, collar('large', 102, 76, 4)], collarSheets: 1 }))
    const at = (needId: string, kind: string, about: string) =>
      plan.steps.findIndex((step) => step.kind === kind && step.serves.includes(needId) && step.figures.about === about)
    const core = at('small', 'saw-inner', 'core')
    expect(core).toBeGreaterThan(at('large', 'saw-inner', 'sheet'))
    expect(plan.steps[core]).toMatchObject({ toolId: 'saw-51', count: 4 })
    expect(plan.steps[core]?.needs).toContain(plan.steps[at('large', 'saw-inner', 'sheet')]?.id)
  })

  it('scores a stepped hole with the larger saw, goes through with the smaller, finishes with the larger', () => {
    const stepped = channel('c1', [hole('a', 100, 76, { alsoSawIds: ['saw-51'] })])
    const plan = planned(input({ channels: [stepped] }))
    expect(plan.steps.filter(({ machine }) => machine === 'drill').map(({ kind, toolId }) => [kind, toolId])).toEqual([
      ['score', 'saw-76'],
      ['saw-inner', 'saw-51'],
      ['saw-through', 'saw-76']
    ])
    expect(plan.holes[0]?.concentric).toEqual(['76 mm saw', '51 mm saw', '76 mm saw'])
  })

  it('drills pilots first with a bit of their own where the shop has one', () => {
    const plan = planned(input({ pilotMm: 6.35 }))
    const drilled = plan.steps.filter(({ machine }) => machine === 'drill')
    expect(drilled.map(({ kind }) => kind)).toEqual(['pilot', 'saw', 'saw'])
    expect(plan).toMatchObject({ toolChanges: 2, leastToolChanges: 2 })
  })

  it('bores cup bottoms and cuts risers at their height', () => {
    const risers = [
      { id: 'r1', name: 'bored', material: 'pp', opened: { by: 'bore', sawId: 'saw-38' }, count: 6 },
      { id: 'r2', name: 'cut', material: 'pp', opened: { by: 'cut', belowRimMm: 42 }, count: 5 }
    ] as const
    const plan = planned(input({ risers }))
    expect(plan.steps.find(({ kind }) => kind === 'bore-cup')).toMatchObject({ toolId: 'saw-38', count: 6, runS: 72 })
    expect(plan.steps.find(({ kind }) => kind === 'cut-riser')).toMatchObject({
      count: 5,
      runS: 125,
      figures: { belowRimMm: 42 }
    })
  })

  it('waits for no cure where nothing is glued', () => {
    const dry = channel('c1', [hole('a', 100, 51)], {
      closures: [{ end: 'datum', closureId: 'plug', name: 'plug', joint: 'push-fit' }]
    })
    expect(kinds(planned(input({ channels: [dry] })))).not.toContain('cure')
  })

  it('marks every hole from the datum end, rounded on its own to the graduation', () => {
    // 1/16 in = 1.5875 mm: 100 mm is 62.99 → 63 · 1.5875 = 100.0125; 250 mm is 157.48 → 157 · 1.5875 = 249.2375.
    const plan = planned(input())
    expect(plan.holes.map(({ holeId, markedAtMm }) => [holeId, markedAtMm])).toEqual([
      ['a', 100.0125],
      ['b', 249.2375],
      // 400 mm is 251.97 → 252 · 1.5875 = 400.05.
      ['o', 400.05]
    ])
    expect(plan.largestRoundingMm).toBeCloseTo(0.7625, 9)
    expect(plan.roundingLimitMm).toBe(0.793_75)
  })

  it('gives one unit of a batch its set-up in full and its run time', () => {
    const one = planned(input())
    const batch = planned(input({ quantity: 6 }))
    expect(batch.unit).toEqual(one.unit)
    expect(batch.runS).toBeCloseTo(6 * one.runS, 6)
    expect(batch.setUpS).toBeLessThan(6 * one.setUpS)
  })

  it('takes the order with fewest changes where the shop gives no handling times', () => {
    const times = { ...TIMES, toolChangeS: 0, mountS: 0 }
    expect(planned(input({ times }))).toMatchObject({ soughtBy: 'fewest-changes', toolChanges: 1, proven: true })
  })

  it('puts every step after all that it needs, and serves every hole and collar once', () => {
    const sizes = fc.constantFrom(25, 38, 51, 64, 76)
    const drawn = fc.record({
      channels: fc.array(fc.array(fc.tuple(fc.integer({ min: 60, max: 840 }), sizes), { maxLength: 6 }), {
        minLength: 1,
        maxLength: 4
      }),
      quantity: fc.integer({ min: 1, max: 4 }),
      rings: fc.array(
        fc.tuple(fc.constantFrom(102, 76, 64), fc.constantFrom(51, 38, 25), fc.integer({ min: 1, max: 9 })),
        { maxLength: 4 }
      ),
      drills: fc.integer({ min: 0, max: 4 }),
      pilotMm: fc.constantFrom(null, 6.35)
    })
    fc.assert(
      fc.property(drawn, ({ channels, quantity, rings, drills, pilotMm }) => {
        const given = input({
          channels: channels.map((holes, i) =>
            channel(
              `c${i}`,
              holes.map(([at, d], k) => hole(`h${k}`, at, d))
            )
          ),
          quantity,
          collars: rings.map(([outer, inner, count], i) => collar(`n${i}`, outer, inner, count)),
          collarSheets: 2,
          drills: Array.from({ length: drills }, (_, i) => ({ id: `d${i}`, name: '', kind: 'hand' as const })),
          pilotMm
        })
        const plan = planned(given)
        const seen = new Set<string>()
        for (const { id, needs } of plan.steps) {
          expect(needs.every((need) => seen.has(need))).toBe(true)
          expect(seen.has(id)).toBe(false)
          seen.add(id)
        }
        const count = (...of: readonly string[]) =>
          plan.steps.filter(({ kind }) => of.includes(kind)).reduce((sum, step) => sum + step.count, 0)
        expect(count('saw')).toBe(quantity * channels.flat().length)
        const all = rings.reduce((sum, ring) => sum + ring[2], 0)
        expect([count('score'), count('saw-inner'), count('saw-through')]).toEqual([all, all, all])
        expect(plan.holes.every(({ roundingMm }) => Math.abs(roundingMm) <= plan.roundingLimitMm + 1e-9)).toBe(true)
        expect(plan.toolChanges).toBeGreaterThanOrEqual(plan.leastToolChanges)
        const times = [plan.setUpS, plan.runS, plan.workedS, plan.elapsedS, plan.handlingS, plan.unit.workedS]
        expect(times.every((seconds) => Number.isFinite(seconds) && seconds >= 0)).toBe(true)
      }),
      { seed: SEED, numRuns: 60 }
    )
  })

  it('refuses an unknown saw, a core of nothing, and counts that are a slip', () => {
    expect(benchPlan(input({ saws: [] }))).toMatchObject({ ok: false, problem: { code: 'saw-unknown' } })
    const orphan = { ...collar('small', 76, 51, 0), fromCores: [{ needId: 'gone', count: 1, sameSaw: true }] }
    expect(benchPlan(input({ collars: [orphan] }))).toMatchObject({ ok: false, problem: { code: 'core-unknown' } })
    expect(benchPlan({ ...input(), quantity: 1e9 })).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', figures: { what: 'quantity', least: 0, most: 20_000 } }
    })
    expect(benchPlan(input({ times: { ...TIMES, mountS: Number.NaN } }))).toMatchObject({
      ok: false,
      problem: { code: 'not-finite', figures: { what: 'times.mountS' } }
    })
  })

  it('minds a sheet thicker than its saw cuts, and speeds that nobody publishes', () => {
    const given = input({ collars: [{ ...collar('thick', 76, 51, 1), thicknessMm: 50 }], collarSheets: 1 })
    expect(benchFindings(given, planned(given)).map(({ code }) => code)).toEqual([
      'wall-deeper-than-saw',
      'wall-deeper-than-saw',
      'speed-common-practice'
    ])
  })
})

describe('cutter speed', () => {
  it.each([
    // Trade magazine on hole saws in hand drills: 3/4 in at 80 ft/min, printed 410 (to the next ten).
    { feet: 80, inches: 0.75, printed: 410, within: 5 },
    // Published hole-saw table, aluminium column, 1-1/2 in: 345 rpm, to its half digit of 5 rpm.
    { feet: 135, inches: 1.5, printed: 345, within: 2.5 }
  ])('$inches in at $feet ft/min turns $printed rpm', ({ feet, inches, printed, within }) => {
    const speed = cutterSpeed(feet * MM_PER_FOOT, mmFromInches(inches))
    expect(speed.ok && Math.abs(speed.value.rpm - printed)).toBeLessThanOrEqual(within)
  })

  it('falls as the saw grows, and says what plastics rest on', () => {
    const small = speedCeiling('pvc', saw(51).diameterMm)
    const large = speedCeiling('pvc', saw(76).diameterMm)
    expect(small?.grade).toBe('common-practice')
    expect(large?.rpm).toBeLessThan(small?.rpm ?? 0)
    expect(speedCeiling('aluminium', 51)?.grade).toBe('published')
  })

  it('has no speed for a cutter of no width', () => {
    expect(cutterSpeed(1000, mm(0))).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', figures: { least: 0.5, most: 300 } }
    })
    expect(speedCeiling('pvc', 0)).toBeNull()
  })
})
