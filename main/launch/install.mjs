// Bare Node: makes node_modules match the lockfile before anything else is imported.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../..', import.meta.url))
const stamp = join(root, 'node_modules', '.sillwright-lock')

/**
 * Installs the locked packages when they are missing or the lockfile has changed. Everything it says goes to stderr.
 * @returns {boolean} false when the install failed; the reason has been printed
 */
export function ensureInstalled() {
  if (!nodeIsNewEnough()) return false
  const lock = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex')
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return true
  console.error('Installing the locked packages (first run, or the lockfile changed) …')
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm'
  const done = spawnSync(npm, ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32'
  })
  if (done.status !== 0) {
    console.error('The packages could not be installed: npm ci failed. Check the network and run the command again.')
    return false
  }
  writeFileSync(stamp, lock)
  return true
}

function nodeIsNewEnough() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return true
  console.error(`Node ${process.versions.node} is too old: Sillwright needs Node 20.19 or newer.`)
  return false
}
