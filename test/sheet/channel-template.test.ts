import { expect, test } from 'vitest'
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
