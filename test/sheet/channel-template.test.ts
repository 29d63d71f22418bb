import { expect, test } from 'vitest'
import type { ServiceOpening } from '../../shared-model/layout'
import { CATALOGUE } from '../../shared-model/parts'
import { evaluate } from '../../shared-model/plan'
import { buildSheet } from '../../shared-model/sheet'
import { randomBuild } from './random-design'

test('a hole in the side of a channel lies on its template where its height puts it', () => {
  let seen = 0
  for (let seed = 1; seed <= 40; seed += 1) {
    const { design, workshop } = randomBuild(seed, 'mm')
    const plan = evaluate(design, workshop, '2026-03-14')
    const { templates } = buildSheet(plan, design, workshop, { parts: ['templates'] })
    for (const row of plan.bench.holes.filter((hole) => hole.heightMm !== null)) {
      const section = plan.channels.find(({ channelId }) => channelId === row.channelId)?.layout.section
      const template = templates.find((one) => one.channelId === row.channelId && one.face === row.face)
      const hole = template?.holes.find((one) => one.mark === row.mark)
      if (section === undefined || hole === undefined) throw new Error(`no template for ${row.mark}`)
      const upMm = (row.heightMm ?? 0) + section.averageWallMm
      const radiusMm = section.widthMm / 2
      // Rolled up again about the pipe's widest line, or measured down a flat face from its upper edge.
      const got =
        section.shape === 'round'
          ? radiusMm + radiusMm * Math.sin(-hole.acrossMm / radiusMm)
          : section.heightMm - hole.acrossMm
      expect(got).toBeCloseTo(upMm, 6)
      seen += 1
    }
  }
  expect(seen).toBeGreaterThan(5)
})

const bored = (): ReturnType<typeof randomBuild> => {
  const { design, workshop } = randomBuild(1, 'mm')
  const pipe = CATALOGUE.profiles.find(({ id }) => id === 'en1329-110')
  const box = CATALOGUE.profiles.find(({ id }) => id === 'downspout-plain-4in')
  const [channel] = design.channels
  if (pipe === undefined || box === undefined || channel === undefined) throw new Error('two profiles are wanted')
  const overflow: ServiceOpening = {
    id: 'o1',
    kind: 'overflow',
    face: 'far-end',
    atMm: 0,
    heightMm: 40,
    diameterMm: 19.05,
    sawId: 'saw-in-3-4',
    closure: 'bulkhead'
  }
  const channels = [box, pipe].map((profile, index) => ({
    ...channel,
    id: `c${index + 1}`,
    profileId: profile.id,
    openings: [overflow]
  }))
  return { design: { ...design, channels, parts: { ...design.parts, profiles: [box, pipe] } }, workshop }
}

test('an end that is bored has a template of its own, its hole at its height up from the underside', () => {
  const { design, workshop } = bored()
  const plan = evaluate(design, workshop, '2026-03-14')
  const { templates } = buildSheet(plan, design, workshop, { parts: ['templates'] })
  const ends = templates.filter(({ face }) => face === 'far-end')
  expect(ends.map(({ mark }) => mark)).toEqual(['1', '2'])
  for (const end of ends) {
    const section = plan.channels.find(({ channelId }) => channelId === end.channelId)?.layout.section
    // 40 mm above the inside floor, and the wall below it.
    expect(end.holes[0]?.atMm).toBeCloseTo(40 + (section?.averageWallMm ?? Number.NaN), 6)
    expect(end.lengthMm).toBeCloseTo(section?.heightMm ?? Number.NaN, 6)
    expect(end.holes[0]?.acrossMm).toBe(0)
  }
})

test('a template of a pipe reaches round as far as its widest saddle, and its band once round the pipe', () => {
  const { design, workshop } = bored()
  const plan = evaluate(design, workshop, '2026-03-14')
  const { templates } = buildSheet(plan, design, workshop, { parts: ['templates'] })
  const top = templates.find(({ wraps, face }) => wraps && face === 'top')
  const reach = Math.max(...(top?.holes ?? []).flatMap(({ diameterMm }) => 55 * Math.asin(diameterMm / 110)))
  expect(reach).toBeGreaterThan(0)
  expect(top?.toYMm).toBeGreaterThan(reach)
  expect(top?.fromYMm).toBeLessThan(-reach)
  // A pipe of 110 mm is 345.58 mm round (π d); four quarters are marked after the crown.
  const band = templates.find(({ face }) => face === 'around')
  const marks = (band?.shapes ?? []).flatMap((shape) =>
    shape.kind === 'line' && shape.fromMm.xMm === shape.toMm.xMm ? [shape.fromMm.xMm] : []
  )
  for (const quarter of [1, 2, 3, 4]) {
    expect(marks.some((at) => Math.abs(at - (quarter * 345.575) / 4) < 0.01)).toBe(true)
  }
})
