// `npm start`: the desktop window, or the same built page in the browser where there is no Electron runtime.
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { buildDesktop, builtProgram } from './build.mjs'
import { electronRuntime, fetchElectronRuntime } from './electron-runtime.mjs'
import { ensureInstalled, root } from './install.mjs'

/** A window that closes sooner than this with an error never opened. */
const STARTED_MS = 5000

if (!ensureInstalled() || !buildDesktop()) process.exit(1)
const windowed = process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY)
const runtime = windowed ? (electronRuntime() ?? fetchElectronRuntime()) : null
if (runtime === null) {
  await serve(windowed ? 'The Electron runtime is not here' : 'There is no display for a window')
} else {
  const begun = Date.now()
  const child = spawn(runtime, [root, ...process.argv.slice(2)], { stdio: 'inherit' })
  child.on('error', () => serve('The Electron runtime did not start'))
  child.on('exit', (code) => {
    if (code && Date.now() - begun < STARTED_MS) serve('The Electron runtime did not start')
    else process.exitCode = code ?? 0
  })
}

/** @param {string} why */
async function serve(why) {
  const built = await builtProgram()
  const { servePage } = await import(pathToFileURL(join(built, 'program.mjs')).href)
  await servePage({ folder: join(root, 'out', 'renderer'), why, open: process.env.SILLWRIGHT_NO_OPEN === undefined })
}
