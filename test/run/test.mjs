// `npm test`: every check in turn. `--prove` runs the long proofs at their full counts.
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { buildDesktop } from '../../main/launch/build.mjs'
import { ensureInstalled, root } from '../../main/launch/install.mjs'
import { findBrowser } from './browser.mjs'

/** One seed for every random test; another can be given to look further. */
const seed = process.env.SILLWRIGHT_SEED ?? '20261125'
const extra = process.argv.slice(2)
/** @type {{ name: string, ok: boolean, seconds: number }[]} */
const results = []

if (!ensureInstalled()) process.exit(1)
if (extra.includes('--prove')) {
  needs(vitest('test/vitest.config.ts'), 'proofs at full count', { SILLWRIGHT_PROVE: '1' })
} else {
  needs(['node_modules/typescript/bin/tsc', '-b'], 'types')
  needs(['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.'], 'lint')
  needs(['node_modules/knip/bin/knip.js', '--no-progress'], 'nothing unused')
  needs(vitest('test/vitest.config.ts'), 'unit, property, reference, dependency and gate tests')
  await screens()
}
report()

async function screens() {
  const browser = await findBrowser()
  if (browser === null) {
    console.error(
      'The screen tests need a browser and none could be found or installed: install Chromium, Chrome or Edge,'
    )
    console.error('or name one in SILLWRIGHT_BROWSER.')
    results.push({ name: 'screens', ok: false, seconds: 0 })
  } else if (!buildDesktop()) {
    results.push({ name: 'build', ok: false, seconds: 0 })
  } else {
    needs(vitest('test/screens/vitest.config.ts'), 'screens', { SILLWRIGHT_BROWSER: browser })
  }
}

/** @param {string} config */
function vitest(config) {
  return ['node_modules/vitest/vitest.mjs', 'run', '--config', config]
}

/**
 * @param {string[]} command script and its arguments, run by this Node
 * @param {string} name
 * @param {Record<string, string>} env
 */
function needs(command, name, env = {}) {
  console.log(`\n— ${name} (seed ${seed})`)
  const begun = performance.now()
  const [script = '', ...args] = command
  const done = spawnSync(process.execPath, [join(root, script), ...args], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, SILLWRIGHT_SEED: seed, ...env }
  })
  results.push({ name, ok: done.status === 0, seconds: (performance.now() - begun) / 1000 })
}

function report() {
  console.log('')
  for (const { name, ok, seconds } of results)
    console.log(`${ok ? 'ok    ' : 'FAILED'} ${name} (${seconds.toFixed(0)} s)`)
  const passed = results.filter((each) => each.ok).length
  console.log(`${passed} passed, ${results.length - passed} failed`)
  process.exitCode = passed === results.length ? 0 : 1
}
