import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../..', import.meta.url))
const bad = (name: string): string => fileURLToPath(new URL(`./bad/${name}`, import.meta.url))

/** What the linter says of a fixture that stands at a path of a tree with this project's rules. */
function linted(fixture: string, asPath: string): string {
  const tree = mkdtempSync(join(tmpdir(), 'sillwright-lint-'))
  try {
    cpSync(join(root, '.biome.json'), join(tree, '.biome.json'))
    cpSync(join(root, '.biome'), join(tree, '.biome'), { recursive: true })
    cpSync(bad(fixture), join(tree, asPath), { recursive: true })
    const biome = join(root, 'node_modules/@biomejs/biome/bin/biome')
    const done = spawnSync(process.execPath, [biome, 'lint', '--vcs-enabled=false', '--max-diagnostics=100', '.'], {
      cwd: tree,
      encoding: 'utf8'
    })
    return done.stdout + done.stderr
  } finally {
    rmSync(tree, { recursive: true })
  }
}

describe('the model', () => {
  it('reads no clock, draws no random number and knows no locale', () => {
    const said = linted('clock.ts', 'shared-model/units/clock.ts')
    expect(said.match(/The model draws no random numbers/g)).toHaveLength(2)
    expect(said.match(/The model reads no clock/g)).toHaveLength(3)
    expect(said.match(/The model knows no locale/g)).toHaveLength(3)
  })

  it('may be given a clock by its hosts, where the rule does not hold', () => {
    expect(linted('clock.ts', 'main/files/clock.ts')).not.toContain('The model')
  })

  it('takes no way round the types', () => {
    const said = linted('escapes.ts', 'shared-model/units/escapes.ts')
    expect(said).toContain('noExplicitAny')
    expect(said).toContain('noNonNullAssertion')
  })

  it('sees neither the page nor Node', () => {
    const done = spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', bad('tsconfig.json')], {
      cwd: root,
      encoding: 'utf8'
    })
    expect(done.status).not.toBe(0)
    for (const name of ['window', 'process', 'document']) expect(done.stdout).toContain(`'${name}'`)
  })
})
