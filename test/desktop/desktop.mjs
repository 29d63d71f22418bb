// `npm run test:desktop`: drives the desktop window where there is an Electron runtime and a display. Where there is none
// it says so; that is not a pass.
import assert from 'node:assert/strict'
import { existsSync } from 'node:fs'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildDesktop } from '../../main/launch/build.mjs'
import { electronRuntime } from '../../main/launch/electron-runtime.mjs'
import { ensureInstalled, root } from '../../main/launch/install.mjs'

if (!ensureInstalled()) process.exit(1)
const packaged = packagedProgram()
const executablePath = packaged ?? electronRuntime()
const display = process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY)
if (executablePath === null) console.log('The desktop window was not run: there is no Electron runtime here.')
else if (!display) console.log('The desktop window was not run: there is no display here.')
else if (packaged !== null || buildDesktop()) await drive(executablePath)
else process.exitCode = 1

/** @param {string} executablePath */
async function drive(executablePath) {
  const { _electron } = await import('playwright-core')
  const home = await mkdtemp(join(tmpdir(), 'sillwright-desktop-'))
  const start = () =>
    _electron.launch({
      executablePath,
      args: [...(packaged === null ? [root] : []), `--user-data-dir=${home}`],
      timeout: 60_000
    })
  try {
    const app = await start()
    const page = await app.firstWindow()
    await page.waitForLoadState('domcontentloaded')
    assert.equal(page.url(), 'app://bundle/index.html')
    await page.getByRole('button').first().waitFor({ timeout: 30_000 })

    const seen = await page.evaluate(async () => ({
      node: typeof Reflect.get(globalThis, 'require') + typeof Reflect.get(globalThis, 'process'),
      bridge: Object.keys(Reflect.get(globalThis, 'sillwright')).sort(),
      network: await fetch('https://sills.example/').then(
        () => 'answered',
        () => 'refused'
      ),
      evaluated: (() => {
        try {
          return Reflect.construct(Function, ['return 1'])()
        } catch {
          return 'refused'
        }
      })(),
      opened: window.open('https://sills.example/') === null
    }))
    assert.deepEqual(seen, {
      node: 'undefinedundefined',
      bridge: ['listen', 'send'],
      network: 'refused',
      evaluated: 'refused',
      opened: true
    })

    const file = join(home, 'kitchen.sillwright')
    await writeFile(file, await readFile(join(root, 'test/designs/corpus/kitchen-sill.schema-1.design.json')))
    await app.evaluate(({ app: main }, path) => main.emit('open-file', { preventDefault: () => undefined }, path), file)
    await page.waitForFunction(
      async () => {
        const recent = await Reflect.get(globalThis, 'sillwright').send('recent:list', null)
        return recent.value[0]?.name === 'kitchen.sillwright'
      },
      null,
      { timeout: 30_000 }
    )
    await app.close()
    console.log('ok: the desktop window opened, is closed to Node, network and evaluated text, and opened a design.')
  } finally {
    await rm(home, { recursive: true, force: true })
  }
}

/** The program as `npm run package -- --for-test` leaves it, or null. */
function packagedProgram() {
  const folder = join(root, 'out', 'desktop-test')
  const places = [
    'linux-unpacked/sillwright',
    'linux-arm64-unpacked/sillwright',
    'win-unpacked/Sillwright.exe',
    'mac/Sillwright.app/Contents/MacOS/Sillwright',
    'mac-arm64/Sillwright.app/Contents/MacOS/Sillwright'
  ]
  return places.map((place) => join(folder, place)).find((path) => existsSync(path)) ?? null
}
