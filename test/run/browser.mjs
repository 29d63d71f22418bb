// A browser for the screen tests: one that is installed, else one that can be installed, else a failure in plain words.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { root } from '../../main/launch/install.mjs'

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge', 'msedge']
const places = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe'
]

/** @returns {Promise<string | null>} path of a browser's executable */
export async function findBrowser() {
  return process.env.SILLWRIGHT_BROWSER ?? installed() ?? (await fromPlaywright()) ?? fromDebian()
}

function installed() {
  const folders = (process.env.PATH ?? '').split(process.platform === 'win32' ? ';' : ':')
  const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)))
  return [...onPath, ...places].find((path) => existsSync(path)) ?? null
}

async function fromPlaywright() {
  const { chromium } = await import('playwright-core')
  if (existsSync(chromium.executablePath())) return chromium.executablePath()
  if (isRootOnDebian()) return null
  console.log('No browser is installed: trying to install one for the screen tests …')
  const cli = join(root, 'node_modules/playwright-core/cli.js')
  spawnSync(process.execPath, [cli, 'install', 'chromium'], { stdio: 'inherit', timeout: 600_000 })
  return existsSync(chromium.executablePath()) ? chromium.executablePath() : null
}

function fromDebian() {
  if (!isRootOnDebian()) return null
  console.log('No browser is installed: installing the system package chromium for the screen tests …')
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  /** @param {string[]} args */
  const apt = (args) => spawnSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'], env, timeout: 900_000 })
  apt(['update', '-qq'])
  apt(['install', '-y', '-qq', '--no-install-recommends', 'chromium'])
  return installed()
}

function isRootOnDebian() {
  return process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')
}
