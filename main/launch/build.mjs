// Builds what is stale: the headless commands by rolldown, the desktop program and its page by electron-vite.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { isAbsolute, join } from 'node:path'
import { digestOf } from './fresh.mjs'
import { root } from './install.mjs'

const program = ['main', 'shared-model', 'package.json', 'package-lock.json']

/**
 * The folder that holds the built headless program, built now when its sources have changed.
 * Two commands that start at once build side by side; the first to finish wins.
 * @returns {Promise<string>}
 */
export async function builtProgram() {
  const digest = digestOf(program)
  const home = join(root, 'out', 'program')
  const built = join(home, digest)
  if (existsSync(built)) return built
  const { build } = await import('rolldown')
  const draft = join(home, `draft-${process.pid}`)
  mkdirSync(home, { recursive: true })
  await build({
    input: { program: join(root, 'main/program.ts') },
    platform: 'node',
    external: (id) => !id.startsWith('.') && !isAbsolute(id),
    logLevel: 'warn',
    output: { dir: draft, format: 'esm', entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' }
  })
  try {
    renameSync(draft, built)
  } catch (error) {
    rmSync(draft, { recursive: true, force: true })
    if (!existsSync(built)) throw error
  }
  for (const old of readdirSync(home)) {
    if (old !== digest && !old.startsWith('draft-')) rmSync(join(home, old), { recursive: true, force: true })
  }
  return built
}

/**
 * Builds the desktop program and its page into `out/` when their sources have changed.
 * @returns {boolean} false when the build failed; the reason has been printed
 */
export function buildDesktop() {
  const digest = digestOf([...program, 'renderer', 'electron.vite.config.ts'])
  const stamp = join(root, 'out', 'built-from')
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === digest) return true
  console.error('Building the program …')
  const cli = join(root, 'node_modules/electron-vite/bin/electron-vite.js')
  const done = spawnSync(process.execPath, [cli, 'build', '--logLevel', 'warn'], { cwd: root, stdio: ['ignore', 2, 2] })
  if (done.status !== 0) return false
  writeFileSync(stamp, digest)
  return true
}
