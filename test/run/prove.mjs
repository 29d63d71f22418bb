// `npm run prove`: the long proofs at their full counts. `npm run prove -- NAME…` does those named, `--share 5` so many in a hundred.
import { fork, spawnSync } from 'node:child_process'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { pathToFileURL } from 'node:url'
import { buildDesktop } from '../../main/launch/build.mjs'
import { ensureInstalled, root } from '../../main/launch/install.mjs'
import { findBrowser } from './browser.mjs'

/** Proofs that are test files of their own: names, and what they prove. */
const FILES = new Map([
  ['killed-saves', ['test/proofs/killed-saves.test.ts']],
  ['full-disk', ['test/proofs/full-disk.test.ts']],
  ['laws', ['test/plan/laws.test.ts']],
  ['kept', ['test/plan/kept.test.ts']],
  ['cures', ['test/plan/fixes.test.ts']],
  ['sheets', ['test/sheet/rebuild.test.ts']],
  ['random-user', ['test/screens/random-user.screen.ts']]
])
/** Of these, those that do so many in a hundred when asked; the others then do the sample of `npm test`. */
const IN_SHARES = ['sheets']
/** One name for the two of them. */
const MUTATED = ['mutated-designs', 'mutated-workshops']
const TELL_EVERY_MS = 15_000

if (!ensureInstalled()) process.exit(1)
process.env.SILLWRIGHT_SEED ??= '20261125'
const seed = Number(process.env.SILLWRIGHT_SEED)
const program = await built()
/** @type {typeof import('../proofs/all')} */
const { SHARED_PROOFS, NONE, added, sharesOf, told } = await import(pathToFileURL(join(program, 'all.mjs')).href)
/** @type {{ line: string, ok: boolean }[]} */
const outcomes = []

const asked = askedFor()
if (asked === null) process.exit(2)
for (const name of asked.names) {
  const begun = performance.now()
  const files = FILES.get(name)
  const { ok, figures } = files === undefined ? await shared(name) : await wholeFile(name, files)
  const seconds = ((performance.now() - begun) / 1000).toFixed(0)
  outcomes.push({ ok, line: `${ok ? 'proved' : 'FAILED'} ${name}: seed ${seed}, ${figures} (${seconds} s)` })
  console.log(outcomes.at(-1)?.line)
}
console.log('')
for (const { line } of outcomes) console.log(line)
const failed = outcomes.filter(({ ok }) => !ok).length
console.log(`${outcomes.length - failed} proved, ${failed} failed`)
process.exitCode = failed === 0 ? 0 : 1

/** @returns {{ names: string[], share: number } | null} */
function askedFor() {
  const all = [...FILES.keys(), ...Object.keys(SHARED_PROOFS)]
  const words = process.argv.slice(2)
  const at = words.indexOf('--share')
  const share = at < 0 ? 100 : Number(words[at + 1])
  const given = at < 0 ? words : words.filter((_, k) => k !== at && k !== at + 1)
  const names = given.flatMap((name) => (name === 'mutated' ? MUTATED : [name]))
  const unknown = names.find((name) => !all.includes(name))
  if (unknown === undefined && share > 0 && share <= 100) return { names: names.length === 0 ? all : names, share }
  console.error(
    unknown === undefined
      ? '--share: a number of hundredths from 1 to 100 is wanted'
      : `There is no proof ${unknown}; there are mutated, ${all.join(', ')}.`
  )
  return null
}

/**
 * A proof in shares, over every processor; each share has its own seed, so the figures are the same on any machine.
 * @param {string} name
 * @returns {Promise<{ ok: boolean, figures: string }>}
 */
async function shared(name) {
  const proof = SHARED_PROOFS[name]
  if (proof === undefined || asked === null) throw new Error(`there is no proof ${name}`)
  const runs = Math.ceil((proof.full * asked.share) / 100)
  const waiting = [...sharesOf(proof, seed, runs)]
  let tally = NONE
  let done = 0
  let told_at = performance.now()
  /** @type {string | null} */
  let wrong = null
  const begun = performance.now()
  const one = () =>
    /** @type {Promise<void>} */ (
      new Promise((resolve) => {
        const child = fork(join(program, 'worker.mjs'), { stdio: 'inherit' })
        /** @type {import('../proofs/shares').Share | undefined} */
        let doing
        const next = () => {
          doing = wrong === null ? waiting.shift() : undefined
          if (doing === undefined) child.disconnect()
          else child.send({ proof: name, ...doing })
        }
        child.on('message', (/** @type {{ tally?: import('../proofs/tally').Tally, failed?: string }} */ answer) => {
          if (answer.tally === undefined) wrong ??= answer.failed ?? 'nothing was answered'
          else tally = added(tally, answer.tally)
          done += doing?.runs ?? 0
          if (performance.now() - told_at > TELL_EVERY_MS) {
            told_at = performance.now()
            const minutes = (((told_at - begun) / done) * (runs - done)) / 60_000
            console.log(`  ${name}: ${done} of ${runs}, about ${minutes.toFixed(1)} min to go`)
          }
          next()
        })
        child.on('exit', (code) => {
          if (code !== 0) wrong ??= `a process ended with ${code}`
          resolve()
        })
        next()
      })
    )
  console.log(`\n— ${name}: ${runs} of ${proof.full} (seed ${seed})`)
  await Promise.all(Array.from({ length: Math.min(availableParallelism(), waiting.length) }, one))
  if (wrong !== null) console.error(wrong)
  return { ok: wrong === null && done === runs, figures: `${done} of ${proof.full}: ${told(tally)}` }
}

/**
 * @param {string} name
 * @param {readonly string[]} files
 * @returns {Promise<{ ok: boolean, figures: string }>}
 */
async function wholeFile(name, files) {
  console.log(`\n— ${files.join(', ')} (seed ${seed})`)
  const vitest = join(root, 'node_modules/vitest/vitest.mjs')
  const share = asked?.share ?? 100
  const sample = share < 100
  const onScreen = files.some((file) => file.endsWith('.screen.ts'))
  if (onScreen && !buildDesktop()) return { ok: false, figures: 'the page could not be built' }
  if (onScreen) process.env.SILLWRIGHT_BROWSER ??= (await findBrowser()) ?? ''
  const config = onScreen ? 'test/screens/vitest.config.ts' : 'test/vitest.config.ts'
  const done = spawnSync(process.execPath, [vitest, 'run', '--config', config, ...files], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: {
      ...process.env,
      ...(sample ? {} : { SILLWRIGHT_PROVE: '1' }),
      ...(IN_SHARES.includes(name) ? { SILLWRIGHT_SHARE: String(share) } : {})
    }
  })
  const part = IN_SHARES.includes(name) ? `${share} in a hundred` : 'the sample of two in a hundred'
  return { ok: done.status === 0, figures: sample ? part : 'the full count' }
}

/** The shared proofs as plain programs: without the test runner's wrapping they do the same work in less time. */
async function built() {
  const { build } = await import('rolldown')
  const out = join(root, 'out', 'proofs')
  await build({
    input: { worker: join(root, 'test/proofs/worker.ts'), all: join(root, 'test/proofs/all.ts') },
    platform: 'node',
    external: [/^node:/, 'highs', 'fast-check'],
    logLevel: 'silent',
    output: { dir: out, format: 'esm', entryFileNames: '[name].mjs', chunkFileNames: '[name].mjs' }
  })
  return out
}
