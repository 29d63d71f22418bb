import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runPlan } from '../../main/commands/plan'
import { DEMOS, printDesign, printWorkshop } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'

const [kitchen] = DEMOS
if (kitchen === undefined) throw new Error('no demo')
let folder = ''
let file = ''
let shop = ''

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'plan-'))
  file = join(folder, 'kitchen.json')
  shop = join(folder, 'workshop.json')
  await writeFile(file, printDesign(kitchen.design))
  await writeFile(shop, printWorkshop(kitchen.workshop))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

const run = async (argv: readonly string[]) => {
  const out: string[] = []
  const err: string[] = []
  const code = await runPlan(argv, { out: (line) => out.push(line), err: (line) => err.push(line) })
  return { code, out, err }
}

describe('plan FILE.json', () => {
  it('prints the plan as one JSON object and exits with 0', async () => {
    const { code, out, err } = await run([file, '--workshop', shop, '--date', '2026-05-01'])
    expect(err).toEqual([])
    expect(code).toBe(0)
    expect(out).toHaveLength(1)
    const budget = { work: 400_000, stop: () => false }
    const plan = evaluate(kitchen.design, kitchen.workshop, '2026-05-01', { budget })
    expect(JSON.parse(out[0] ?? '')).toEqual(JSON.parse(JSON.stringify(plan)))
  })

  it('takes the built-in workshop where none is given, and says so in the plan', async () => {
    const { code, out } = await run([file, '--date', '2026-05-01'])
    expect(code).toBe(0)
    const plan = JSON.parse(out[0] ?? '') as { readonly findings: readonly { readonly code: string }[] }
    expect(plan.findings.map((finding) => finding.code)).toContain('workshop-built-in')
  })

  it('exits with 1 for a design with a stop finding', async () => {
    const wrong = join(folder, 'wrong.json')
    const channels = kitchen.design.channels.map((channel) => ({ ...channel, yMm: 100 }))
    await writeFile(wrong, JSON.stringify({ ...kitchen.design, channels }))
    const { code, out } = await run([wrong, '--workshop', shop, '--date', '2026-05-01'])
    expect(code).toBe(1)
    expect(out).toHaveLength(1)
  })

  it.each([
    ['no file', [], /FILE\.json/],
    ['a file that is not there', ['none.json'], /none\.json/],
    ['a folder', ['.'], /\./],
    ['an unknown option', ['a.json', '--fast'], /--fast/],
    ['a day that is none', ['a.json', '--date', '2026-02-30'], /--date/],
    ['two files', ['a.json', 'b.json'], /b\.json/]
  ] as const)('exits with 2 and one line for %s', async (_, argv, names) => {
    const { code, out, err } = await run(argv)
    expect(code).toBe(2)
    expect(out).toEqual([])
    expect(err).toHaveLength(1)
    expect(err[0]).toMatch(names)
    expect(err[0]).not.toContain('\n')
  })

  it('names the field that cannot be used', async () => {
    const wrong = join(folder, 'field.json')
    await writeFile(wrong, JSON.stringify({ ...kitchen.design, quantity: -3 }))
    const { code, err } = await run([wrong])
    expect(code).toBe(2)
    expect(err[0]).toMatch(/quantity.*-3.*1 to 1000/)
  })
})
