// `npm audit` at high severity, in bounded time, where the registry answers.
import { spawnSync } from 'node:child_process'
import { root } from '../../main/launch/install.mjs'

const LIMIT_MS = 10_000

/**
 * What an audit came to. `no-answer`: nothing is known, and nothing may be counted as passed.
 * @typedef {{ readonly outcome: 'clean' | 'found' | 'no-answer', readonly words: string }} Audit
 */

/** @returns {Audit} */
export function auditPackages() {
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm'
  const done = spawnSync(npm, ['audit', '--json', '--fetch-retries=0', `--fetch-timeout=${LIMIT_MS}`], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'ignore'],
    encoding: 'utf8',
    timeout: LIMIT_MS,
    killSignal: 'SIGKILL',
    maxBuffer: 64 * 1024 * 1024,
    shell: process.platform === 'win32'
  })
  return readAudit(done.stdout ?? '')
}

/**
 * Reads the report of `npm audit --json`: counts by severity below `metadata.vulnerabilities`; anything else is no answer.
 * @param {string} report
 * @returns {Audit}
 */
export function readAudit(report) {
  const counts = countsIn(report)
  if (counts === null) return { outcome: 'no-answer', words: 'the registry gave no answer' }
  const [high, critical] = counts
  if (high + critical === 0) return { outcome: 'clean', words: 'no advisory of high or critical severity' }
  return { outcome: 'found', words: `${high} of high and ${critical} of critical severity: see npm audit` }
}

/**
 * @param {string} report
 * @returns {readonly [number, number] | null} how many are high, how many critical
 */
function countsIn(report) {
  try {
    const { high, critical } = JSON.parse(report).metadata.vulnerabilities
    return Number.isSafeInteger(high) && Number.isSafeInteger(critical) ? [high, critical] : null
  } catch {
    return null
  }
}
