// Finds the Electron runtime by looking at files only: requiring the package would start a download.
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './install.mjs'

const home = join(root, 'node_modules', 'electron')
const refusal = join(root, 'node_modules', '.sillwright-no-electron')
const DAY_MS = 86_400_000
/** A person waits this long for a runtime at most. */
const DOWNLOAD_LIMIT_MS = 120_000

/** @returns {string | null} path of the runtime's executable, or null where it is absent */
export function electronRuntime() {
  const pathFile = join(home, 'path.txt')
  const given = process.env.ELECTRON_OVERRIDE_DIST_PATH
  const name = existsSync(pathFile) ? readFileSync(pathFile, 'utf8').trim() : defaultName()
  const path = given === undefined ? join(home, 'dist', name) : join(given, name)
  return existsSync(path) ? path : null
}

/** Fetches the runtime, bounded in time, only for a person at a terminal and not again for a day after a failure. */
export function fetchElectronRuntime() {
  if (!process.stdin.isTTY || process.env.CI !== undefined) return null
  if (existsSync(refusal) && Date.now() - statSync(refusal).mtimeMs < DAY_MS) return null
  console.error('Fetching the Electron runtime …')
  spawnSync(process.execPath, [join(home, 'install.js')], { cwd: home, stdio: 'ignore', timeout: DOWNLOAD_LIMIT_MS })
  const path = electronRuntime()
  if (path === null) writeFileSync(refusal, '')
  return path
}

function defaultName() {
  if (process.platform === 'win32') return 'electron.exe'
  return process.platform === 'darwin' ? 'Electron.app/Contents/MacOS/Electron' : 'electron'
}
