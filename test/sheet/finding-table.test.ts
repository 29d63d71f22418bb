import { describe, expect, test } from 'vitest'
import { DEMOS, type Design } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { type Block, buildSheet } from '../../shared-model/sheet'
import { sayIn, wordsFor } from '../../shared-model/words'

const [kitchen] = DEMOS
if (kitchen === undefined) throw new Error('a demo is wanted')
const { design, workshop } = kitchen

const front = (of: Design): { plan: ReturnType<typeof evaluate>; blocks: readonly Block[] } => {
  const plan = evaluate(of, workshop, '2026-03-14')
  return { plan, blocks: buildSheet(plan, of, workshop, { parts: ['build'] }).sections[0]?.blocks ?? [] }
}

/** Every site drawn twice, 40 mm apart, on a sill of half the length. */
const crowded: Design = {
  ...design,
  sill: { ...design.sill, lengthsMm: [600] },
  channels: design.channels.map((channel) => ({
    ...channel,
    sites: channel.sites.flatMap((site) => [site, { ...site, id: `${site.id}b`, atMm: site.atMm + 40 }])
  }))
}

const rowsOf = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.kind === 'table' && block.name === 'findings' ? block.rows : []))

describe('what stands before the work on the first sheet', () => {
  test('a design with stops says at its head that it is not ready; one without does not', () => {
    const stopped = front(crowded)
    expect(stopped.plan.totals.stops).toBeGreaterThan(0)
    expect(JSON.stringify(stopped.blocks)).toContain('Not ready to build')
    const fine = front(design)
    expect(fine.plan.totals.stops).toBe(0)
    expect(JSON.stringify(fine.blocks)).not.toContain('Not ready to build')
  })

  test('the same headline stands once for all its channels', () => {
    const rows = rowsOf(front(crowded).blocks)
    const heads = rows.map((row) => `${row[1]?.text} ${row[3]?.text}`)
    expect(new Set(heads).size).toBe(heads.length)
    const long = rows.find((row) => row[3]?.text === 'Too long for the sill')
    expect(long?.[2]?.text).toBe('1, 2, 3')
  })

  test('every finding and every hint is there', () => {
    const { plan, blocks } = front(crowded)
    const rows = rowsOf(blocks)
    for (const finding of plan.findings) {
      const words = wordsFor(finding, sayIn(workshop.shows, workshop.currency))
      expect(
        rows.some((row) => row[3]?.text === words.headline && (row[3].under ?? '').includes(words.todo)),
        words.headline
      ).toBe(true)
    }
  })
})
