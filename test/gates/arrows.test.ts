import { createRequire } from 'node:module'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { cruise, type IConfiguration } from 'dependency-cruiser'
import { describe, expect, it } from 'vitest'
import { filesBelow, withImportsOnly } from './import-skeleton'

const root = fileURLToPath(new URL('../..', import.meta.url))
const bad = fileURLToPath(new URL('./bad', import.meta.url))
const configuration: IConfiguration = createRequire(import.meta.url)('../../.dependency-cruiser.cjs')
const places = ['shared-model', 'main', 'renderer', 'test']

const cruised = (tree: string) =>
  withImportsOnly(tree, places, async (baseDir) => {
    const report = await cruise([...places], {
      ...configuration.options,
      baseDir,
      validate: true,
      ruleSet: { forbidden: configuration.forbidden ?? [] }
    })
    if (typeof report.output === 'string') throw new Error(report.output)
    return report.output
  })

describe('the arrows of the house', () => {
  it('point only up the list of rooms, through their doors, and never in a circle', async () => {
    const seen = await cruised(root)
    const said = seen.summary.violations.map((each) => `${each.rule.name}: ${each.from} -> ${each.to}`)
    expect(said).toEqual([])
    const files = places
      .flatMap((place) => filesBelow(join(root, place)))
      .filter((path) => /\.tsx?$/.test(path) && !path.startsWith(bad))
    const frame = seen.modules.find((each) => each.source === 'renderer/frame/Frame.ts')
    expect(frame?.dependencies.length ?? 0).toBeGreaterThan(5)
    const modules = seen.modules.filter((each) => places.some((place) => each.source.startsWith(`${place}/`)))
    expect(modules.length).toBeGreaterThanOrEqual(files.length)
  })

  it('are refused, each by its rule, where they point the wrong way', async () => {
    const seen = await cruised(bad)
    const fired = new Set(seen.summary.violations.map((each) => each.rule.name))
    expect([...fired].sort()).toEqual(
      [
        'units-imports-only-rooms-above',
        'rooms-through-their-index',
        'hosts-through-a-rooms-index',
        'model-is-pure',
        'model-borrows-types-of-pdfmake-only',
        'solver-in-cutting-only',
        'page-knows-the-bridge-by-type-only',
        'page-imports-no-node',
        'shell-does-not-import-the-page',
        'electron-in-the-shell-only',
        'nothing-imports-tests',
        'no-cycles',
        'everything-resolves'
      ].sort()
    )
  })
})
