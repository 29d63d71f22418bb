// `npm test`: every check in turn.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import { performance } from 'node:perf_hooks'
import { buildDesktop } from '../../main/launch/build.mjs'
import { ensureInstalled, root } from '../../main/launch/install.mjs'
import { auditPackages } from './audit.mjs'
import { findBrowser } from './browser.mjs'

/** One seed for every random test; another can be given to look further. */
const seed = process.env.SILLWRIGHT_SEED ?? '20261125'
/** @type {{ name: string, ok: boolean, seconds: number }[]} */
const results = []
/**
 * Checks that could not be run here, and why: neither passed nor failed.
 * @type {string[]}
 */
const notRun = []
/**
 * Tests that failed, with what they said: repeated at the end, where they are looked for.
 * @type {string[]}
 */
const failures = []
const scratch = mkdtempSync(join(tmpdir(), 'sillwright-test-'))

if (!ensureInstalled()) process.exit(1)
needs(['node_modules/typescript/bin/tsc', '-b'], 'types')
needs(['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.'], 'lint')
needs(['node_modules/knip/bin/knip.js', '--no-progress'], 'nothing unused')
tests('test/vitest.config.ts', 'unit, property, reference, dependency and gate tests')
await screens()
audit()
report()
rmSync(scratch, { recursive: true, force: true })

function audit() {
  const name = 'npm audit, high severity'
  console.log(`\n— ${name}`)
  const begun = performance.now()
  const { outcome, words } = auditPackages()
  console.log(outcome === 'no-answer' ? `not run: ${words}` : words)
  if (outcome === 'no-answer') notRun.push(`${name}: ${words}`)
  else results.push({ name, ok: outcome === 'clean', seconds: (performance.now() - begun) / 1000 })
}

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
    tests('test/screens/vitest.config.ts', 'screens', { SILLWRIGHT_BROWSER: browser })
  }
}

/**
 * @param {string} config
 * @param {string} name
 * @param {Record<string, string>} env
 */
function tests(config, name, env = {}) {
  const record = join(scratch, `${results.length}.json`)
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${record}`]
  needs(['node_modules/vitest/vitest.mjs', 'run', '--config', config, ...reporters], name, env)
  if (results.at(-1)?.ok === false) failures.push(...failedIn(record))
}

/** @param {string} record what the runner wrote of each test, in its JSON form */
function failedIn(record) {
  if (!existsSync(record)) return []
  /** @type {{ testResults: { name: string, message: string, assertionResults: { status: string, fullName: string, failureMessages: string[] }[] }[] }} */
  const { testResults } = JSON.parse(readFileSync(record, 'utf8'))
  return testResults.flatMap((file) => {
    const failed = file.assertionResults.filter((each) => each.status === 'failed')
    const said = failed.map((each) => `${each.fullName}: ${each.failureMessages.join(' ').slice(0, 1_200)}`)
    return [...said, ...(failed.length === 0 && file.message !== '' ? [file.message.slice(0, 1_200)] : [])].map(
      (each) => `${relative(root, file.name)}: ${each}`
    )
  })
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
  for (const each of failures) console.log(`\nfailed: ${each}`)
  console.log('')
  for (const { name, ok, seconds } of results)
    console.log(`${ok ? 'ok    ' : 'FAILED'} ${name} (${seconds.toFixed(0)} s)`)
  for (const each of notRun) console.log(`not run ${each}`)
  const passed = results.filter((each) => each.ok).length
  console.log(
    `${passed} passed, ${results.length - passed} failed${notRun.length > 0 ? `, ${notRun.length} not run` : ''}`
  )
  process.exitCode = passed === results.length ? 0 : 1
}
